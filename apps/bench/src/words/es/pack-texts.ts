import type { SameCodes } from '@shearline/jobfile'
import type { packTextWords as english } from '../en/pack-texts.ts'

export const packTextWords: SameCodes<typeof english> = {
  'pack-text.neutral': 'valores neutros',
  'pack-text.example-eu': 'ejemplo: Unión Europea, según el derecho alemán',
  'pack-text.example-uk': 'ejemplo: Reino Unido',
  'pack-text.example-us': 'ejemplo: Estados Unidos',
  'pack-text.anywhere': 'cualquiera',
  'pack-text.eu-germany': 'Unión Europea (Alemania)',
  'pack-text.uk': 'Reino Unido',
  'pack-text.us': 'Estados Unidos (cambia según el estado)',
  'pack-text.common-practice': 'práctica habitual; compruebe su ley',
  'pack-text.eu-papers':
    'Directiva 1999/37/CE, artículos 3 y 4: permiso de circulación en una o dos partes; Reglamento (UE) 2018/858, anexo X, modificado por el Reglamento Delegado (UE) 2021/1244: los trabajos de seguridad van a un registro (de memoria, compruébelo)',
  'pack-text.de-owner':
    'BGB §§ 903 y 985: decide el propietario, no el titular; la parte II de los papeles suele tenerla el propietario (de memoria, compruébelo)',
  'pack-text.de-trader':
    'GewO § 14: una actividad comercial se declara, así que puede mostrarse su declaración (de memoria, compruébelo)',
  'pack-text.de-invoice':
    'UStG § 14b(1): ocho años desde el fin del año, es decir, hasta nueve (de memoria, compruébelo)',
  'pack-text.de-authority':
    'BGB §§ 195 y 199(1): tres años desde el fin del año, es decir, hasta cuatro (de memoria, compruébelo); RGPD, artículo 5.1.e)',
  'pack-text.de-identity':
    'RGPD, artículo 5.1.c) y e): sin plazo, tan corto como la finalidad; PAuswG § 20(2) sobre las copias (de memoria, compruébelo)',
  'pack-text.gdpr-no-period': 'RGPD, artículo 5.1.e): sin plazo, decide la empresa',
  'pack-text.gdpr-security': 'RGPD, artículo 5.1.f); sin plazo, decide la empresa',
  'pack-text.de-rest': 'BGB §§ 195 y 199(1) (de memoria, compruébelo)',
  'pack-text.de-contract':
    'Directiva 2011/83/UE, artículos 6 a 9 y 16 (visitas urgentes, bienes hechos a medida); BGB §§ 312b, 312d y 312g; EGBGB, artículo 246a (de memoria, compruébelo)',
  'pack-text.eu-radio': 'ERC/REC 70-03, anexo 1; ETSI EN 300 220-2',
  'pack-text.radio-every-region': 'ninguna región elegida: se muestran las filas de todas',
  'pack-text.uk-one-and-one':
    'guía del oficio: un documento de identidad y uno de derecho, originales, se guarda un número rastreable y no una copia; el propio V5C dice que no prueba la propiedad',
  'pack-text.uk-fleet':
    'guía del oficio: en lugar de los papeles se acepta una carta de la flota o una referencia de la aseguradora',
  'pack-text.uk-invoice': 'Manual VATREC3032 de HMRC: seis años; uno más por el fin del periodo contable',
  'pack-text.uk-authority': 'UK GDPR, artículo 5.1.e): sin plazo; tres años es lo habitual',
  'pack-text.uk-identity': 'UK GDPR, artículo 5.1.c) y e): sin plazo, tan corto como la finalidad',
  'pack-text.uk-no-period': 'UK GDPR, artículo 5.1.e): sin plazo, decide la empresa',
  'pack-text.uk-security': 'UK GDPR, artículo 5.1.f); sin plazo, decide la empresa',
  'pack-text.uk-rest': 'Limitation Act 1980, sección 5: seis años para un contrato (de memoria, compruébelo)',
  'pack-text.uk-contract':
    'Consumer Contracts (Information, Cancellation and Additional Charges) Regulations 2013, reglas 10, 28, 29 y 36 (28 y 36 de memoria, compruébelo)',
  'pack-text.uk-radio':
    'Requisito de interfaz IR 2030 de Ofcom, acorde con ERC/REC 70-03 (de memoria, compruébelo)',
  'pack-text.us-registry':
    'formularios del registro de seguridad de vehículos: identidad y una prueba de propiedad, vistas en persona antes del trabajo; California Business and Professions Code, secciones 6980.53 a 6980.55',
  'pack-text.us-order':
    'registro de seguridad de vehículos: una orden de trabajo firmada que indique el VIN, el lugar y quién la autoriza',
  'pack-text.us-no-papers':
    'norma de la asociación sobre identificación segura: en caso de duda, solo con la policía presente; el expediente se guarda tres años',
  'pack-text.us-invoice':
    '26 U.S.C. 6501(a): tres años desde la declaración, es decir, hasta cuatro (de memoria, compruébelo); Maryland: facturas, tres años',
  'pack-text.us-authority':
    'norma de la asociación: tres años; California Business and Professions Code 6980.55: dos',
  'pack-text.us-contract':
    '16 CFR part 429: plazo de desistimiento para ventas fuera del local del vendedor (de memoria, compruébelo); los estados añaden más',
  'pack-text.us-radio': '47 CFR 15.231 y 15.249',
  'pack-text.band-overview': 'textos de taller sobre cierre a distancia por región',
  'pack-text.band-europe': 'ERC/REC 70-03, anexo 1; norma de ensayo ETSI EN 300 220-2',
  'pack-text.ask-ook-or-fsk': 'ASK/OOK o FSK',
  'pack-text.ask-or-fsk': 'ASK o FSK',
  'pack-text.ask-or-fsk-older': 'ASK o FSK, más antiguos',
  'pack-text.ask-or-fsk-arib': 'ASK o FSK (ARIB STD-T93)',
  'pack-text.fsk-two-way': 'FSK, algunos mandos bidireccionales y de largo alcance',
  'pack-text.limit-433':
    '10 mW p.r.a. con hasta un 10 % de tiempo de emisión, o 1 mW p.r.a. y -13 dBm/10 kHz',
  'pack-text.limit-434': '10 mW p.r.a. en canales de 25 kHz como máximo',
  'pack-text.limit-868-0': '25 mW p.r.a. con hasta un 1 % de tiempo de emisión, o escucha antes de emitir',
  'pack-text.limit-868-7': '25 mW p.r.a. con hasta un 0,1 % de tiempo de emisión, o escucha antes de emitir',
  'pack-text.limit-869-4': '500 mW p.r.a. con hasta un 10 % de tiempo de emisión',
  'pack-text.limit-869-7': '5 mW p.r.a., o 25 mW p.r.a. con hasta un 1 % de tiempo de emisión',
  'pack-text.limit-us-control':
    'solo señales de mando; campo a 3 m de 3750 µV/m a 260 MHz hasta 12500 µV/m a 470 MHz; apagado en 5 s',
  'pack-text.limit-us-902': 'campo a 3 m hasta 50 mV/m',
}
