import type { SameCodes } from '@shearline/jobfile'
import type { factWords as english } from '../en/facts.ts'

/** Every kind of fact as one sentence, as it stands on record. */
export const factWords: SameCodes<typeof english> = {
  'fact.job-opened': 'Trabajo abierto: {title}, {place} ({zone})',
  'fact.keys-said':
    'Llaves que se dice que existen: {count, plural, =0 {ninguna} one {# llave} other {# llaves}}; no están aquí: {absent}',
  'fact.note-written': 'Nota: {text}',
  'fact.authority-seen':
    '{role}: {document}, {issuer}, termina en {last}; original: {original}; coincide: {matched}',
  'fact.authority-decided': '{decision}: {reason}',
  'fact.consent-given': '{what}. Conforme: {signer}',
  'fact.vin-read':
    'VIN {vin}, {source}{picture, select, letters {; leído de las letras de una imagen} code {; leído de un código en una imagen} other {}}',
  'fact.recording-attached':
    'Grabación {name}: {format}, {size}, {messages, plural, one {# mensaje} other {# mensajes}}',
  'fact.scan-attached':
    'Escaneo {phase}: {units, plural, one {# unidad} other {# unidades}}, {faults, plural, =0 {ninguna avería} one {# avería} other {# averías}}',
  'fact.unit-named': 'La unidad de control {unit} es de: {role}',
  'fact.fault-acknowledged': '{signer} toma conocimiento de la avería {code} de la unidad {unit}: {words}',
  'fact.clear-requested': 'Averías borradas en {units}',
  'fact.supply-set': 'Umbral de alimentación {volts} ({source}), {battery}',
  'fact.supply-read': 'Alimentación {volts}, {during}',
  'fact.key-labelled': 'Llave {key}, {colour}: {form}, {origin}',
  'fact.key-count-read':
    'El coche guarda {count, plural, one {# entrada} other {# entradas}} {when, select, before {antes de la intervención} other {después de la intervención}}',
  'fact.key-count-none':
    'El coche no muestra ningún recuento {when, select, before {antes de la intervención} other {después de la intervención}}: {because}',
  'fact.function-tested':
    'Llave {key}, {function}: {outcome} {phase, select, before {antes} other {después}}',
  'fact.difference-explained': 'Explicado: {reason}',
  'fact.blank-chosen':
    'Llave en bruto {item}: {fits, select, true {comparada, sirve} false {comparada, no sirve} other {sin comparar}}',
  'fact.blank-used':
    'Llave en bruto {item}: {outcome, select, used {usada} spoiled {inservible} other {de vuelta a la furgoneta}}',
  'fact.rule-chosen': '{kind}. Se sabe por: {source}',
  'fact.rehearsal-read': 'Ensayo leído, orden {order}. {wayBack}',
  'fact.backup-proven':
    'Copia de seguridad de {what}: {same, select, true {dos lecturas iguales, {first}…} other {dos lecturas distintas, {first}… y {second}…}}',
  'fact.backup-waived': 'Sin copia de seguridad: {because}',
  'fact.session-opened': 'Sesión abierta, {rehearsed, select, true {con ensayo} other {sin ensayo}}',
  'fact.key-taught': 'Llave {key} dada de alta; recuento del coche: {count}; alimentación: {volts}',
  'fact.session-closed': 'Sesión cerrada; recuento del coche: {count}',
  'fact.broke-off': 'Se detuvo después de {after}: {why}',
  'fact.break-off-mended': 'Interrupción resuelta: {how}',
  'fact.caution-read': 'Precaución leída: {caution}',
  'fact.price-agreed': 'Precio acordado: {amount}',
  'fact.warranty-given': 'Garantía: {months, plural, one {# mes} other {# meses}}',
  'fact.retention-set': 'Borrado fijado para {count, plural, one {# clase} other {# clases}} ({pack})',
  'fact.corrected': '{action, select, withdrawn {Retirado} other {Sustituido}}: {reason}',
  'fact.document-sealed':
    'Documento sellado sobre {count, plural, one {# anotación} other {# anotaciones}}, {root}…',
  'fact.unknown':
    'Una versión más nueva registró «{kind}». Se conserva sin entenderse; actualizar Shearline.',
  'fact.erased':
    'El contenido de «{kind}» se borró al cumplirse su plazo. Su lugar en el registro permanece.',
  'fact.unreadable': 'El contenido de «{kind}» no corresponde a su tipo. Se conserva y no se cuenta.',
}
