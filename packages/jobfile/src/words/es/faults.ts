import type { SameCodes } from '../catalogues.ts'
import type { comparisonWords as english } from '../en/faults.ts'

/** Where the rules of the fault comparison come from, what speaks for a class, and what is worth saying of the scans. */
export const comparisonWords: SameCodes<typeof english> = {
  'explanation-source.reset-silence':
    'práctica general del oficio 4.5 y 4.6; que un reinicio calla una unidad es una deducción',
  'explanation-source.muted-silence': 'ISO 14229-1 servicio 28; práctica general del oficio 4.5 y 4.6',
  'explanation-source.supply-low-supply-codes':
    'práctica general del oficio 4.6; significado de los códigos SAE J2012, de memoria',
  'explanation-source.supply-low-silence': 'práctica general del oficio 4.5',
  'explanation-source.key-refused':
    'práctica general del oficio 1.2.13 y 4.6; significado de los códigos SAE J2012, de memoria',
  'explanation-source.immobiliser-teaching':
    'práctica general del oficio 1.2.13 y 4.6; significado de los códigos SAE J2012, de memoria',
  'explanation-source.battery-off-steering':
    'práctica común, sin fuente; significado del código SAE J2012, de memoria',

  'evidence.recorded': '{recording}, {seconds} s',
  'evidence.recorded-detail': '{recording}, {seconds} s, {detail}',
  'evidence.recorded.at': '{recording}, {time}',
  'evidence.recorded-detail.at': '{recording}, {time}, {detail}',
  'evidence.session-opened': 'sesión de alta abierta {at}',
  'evidence.key-refused': 'llave rechazada {at}',
  'evidence.supply-fell': 'la alimentación bajó a {minimum}, umbral {floor}',
  'evidence.noted': '{words}',
  'evidence.other-failure-type': '{phase}: el mismo código con otro tipo de fallo',
  'evidence.reported-as': '{phase}: comunicado como {raw}',

  'fault-finding.no-before-scan':
    'No hay ningún escaneo anterior a la intervención: de ninguna avería se puede decir que sea nueva o antigua.',
  'fault-finding.unit-not-read-before':
    '{unit} no se leyó antes de la intervención: sus averías no se pueden comparar.',
  'fault-finding.unit-not-read-again': '{unit} se leyó antes de la intervención y no desde entonces.',
  'fault-finding.cleared-not-retested': '{unit}: borrado hecho, aún sin nueva prueba: {codes}.',
  'fault-finding.fault-code-unreadable':
    '«{code}» no es un código de avería en la forma de SAE J2012; se compara tal como está escrito.',
  'fault-finding.units-perhaps-one':
    '«{unit}» y «{other}» pueden ser una sola unidad de control; se comparan como dos.',
  'fault-finding-do.no-before-scan':
    'Decirlo en la entrega. La próxima vez, escanear todas las unidades antes de tocar nada.',
  'fault-finding-do.unit-not-read-before': 'Decirlo en la entrega.',
  'fault-finding-do.unit-not-read-again': 'Escanear esta unidad otra vez.',
  'fault-finding-do.cleared-not-retested':
    'Quitar el contacto, dejar dormir el coche, dar el contacto y escanear otra vez.',
  'fault-finding-do.cleared-not-retested.cycled':
    'Dejar que se realicen las pruebas (circular, o esperar como lo pida el coche) y escanear otra vez.',
  'fault-finding-do.fault-code-unreadable': 'Leerlo otra vez en el origen.',
  'fault-finding-do.units-perhaps-one': 'Decir si son una sola.',

  'report-finding.no-code-found': 'No se encontró en él ningún código de avería ni ningún «sin averías».',
  'report-finding.line-too-long':
    'La línea tiene {length, plural, one {# carácter} other {# caracteres}}; solo se leyeron los primeros {read}.',
  'report-finding.report-too-long':
    'El informe tiene {length, plural, one {# carácter} other {# caracteres}}; solo se leyeron los primeros {read}.',
  'report-finding-do.no-code-found': 'Teclear las averías, o añadir el informe al trabajo como archivo.',
  'report-finding-do.line-too-long': 'Revisar el resto a ojo.',
  'report-finding-do.report-too-long': 'Cortarlo en partes.',
}
