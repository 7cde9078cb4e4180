import type { SameCodes } from '../catalogues.ts'
import type { pictureWords as english } from '../en/pictures.ts'

/** Phrases of the handover document that its second edition added: photos, life lines, how the supply was left, the square code. */
export const pictureWords: SameCodes<typeof english> = {
  'doc.code-alt':
    'Un código cuadrado para escanear. Contiene el SHA-256 del registro y la huella de la clave que selló, ambos impresos abajo.',
  'doc.code-about':
    'Escanee este código para comparar con una máquina: contiene el SHA-256 del registro y la huella de la clave, tal como figuran abajo. No abre ninguna página ni pide red.',
  'doc.key-photo': 'Foto en el registro, su SHA-256 empieza por {hash}.',
  'doc.key-photo-alt':
    'Foto de la llave {key}: {form}, etiqueta de color {colour}. El registro la identifica por su SHA-256.',
  'doc.key-cell-rest': 'Pila de botón, {rest}\u00a0V en reposo: {verdict}.',
  'doc.key-cell-loaded': 'Pila de botón, {loaded}\u00a0V mientras emite: {verdict}.',
  'doc.key-cell-both': 'Pila de botón, {rest}\u00a0V en reposo y {loaded}\u00a0V mientras emite: {verdict}.',
  'doc.key-cell-replaced': 'La pila se cambió.',
  'doc.fault-strand': 'Línea de vida',
  'doc.fault-strand-alt': '{code}, línea de vida: {life}',
  'doc.fault-strand-legend':
    'La línea de vida recorre los escaneos ({phases}), del primero al último. Un disco lleno: comunicada. Un anillo: la unidad de control respondió y no la comunicó. Un trazo corto: no leída.',
  'doc.power-verdict': 'Calculado antes de la intervención',
  'doc.power-supply-first': 'Conectar antes una fuente.',
  'doc.power-drain': 'Corriente después del cierre',
  'doc.power-drain-read':
    '{milliamperes}\u00a0mA, {minutes, plural, one {# minuto} other {# minutos}} después del cierre. {state}.',
  'doc.power-removed': 'Fuente de apoyo',
  'doc.power-removed-state':
    '{removed, select, yes {desconectada antes de la última lectura después de la intervención} other {aún conectada en la última lectura después de la intervención}}',
  'doc.handed': 'Entregado',
  'doc.handed-to': '{at}, a {to}. Llaves: {keys}',
  'doc.handed-to-unnamed': '{at}, a {to}. No consta qué llaves.',
  'doc.handed-not': 'no constaba cuando se hizo este documento',
  'doc.stopped-button-away':
    'El arranque del coche y el cierre con el botón se dan de alta por separado: una llave que no arranca el coche puede seguir cerrándolo o abriéndolo con el botón. Con una llave que no está aquí no se puede probar.',
  'doc.consent-unsigned': '{about}. Dado en nombre de {signer}; no consta ninguna firma para ello.',
  'doc.consent-keys-unsigned':
    '{about}: {names}. Dado en nombre de {signer}; no consta ninguna firma para ello.',
  'doc.signatures': 'Firmas en el registro',
  'doc.signatures-none': 'No consta ninguna firma.',
  'doc.signature-signer': 'Nombre',
  'doc.signature-for': 'Para',
  'doc.signature-how': 'Cómo',
  'doc.signature-when': 'Cuándo',
  'doc.signature-kept': 'Inicio del SHA-256',
  'doc.signature-for.consent': 'Consentimiento',
  'doc.signature-for.plan': 'Plan de trabajo',
  'doc.signature-for.quote': 'Presupuesto',
  'doc.signature-for.handover': 'Coche y llaves recibidos',
  'doc.signature-for.acknowledgement': 'Averías conocidas',
  'doc.signature-drawn': 'trazada a mano',
  'doc.signature-typed': 'nombre escrito con teclado',
  'doc.signatures-limit':
    'Las firmas mismas no se imprimen aquí; el registro nombra cada una por su SHA-256. Muestra qué se introdujo y cuándo, no de quién era la mano.',
  'doc.supply-readings': 'Mediciones',
  'doc.price-tax': 'El registro no dice si este precio incluye impuestos.',
  'doc.span-day': '{date}, de {from} a {to} ({zone})',
  'doc.span-days': 'del {from} al {to}',
}
