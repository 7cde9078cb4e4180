import type { SameCodes } from '@shearline/jobfile'
import type { custodyWords as english } from '../en/custody.ts'

/** Kinds of fact about what was agreed, what is kept how long, who saw it, and the devices. */
export const custodyWords: SameCodes<typeof english> = {
  'fact.call-taken':
    'Llamada atendida {channel, select, phone {por teléfono} message {por mensaje} visit {en persona} other {por la oficina}}; el coche {starts, select, true {arranca} false {no arranca} other {puede que arranque o no}}; hay que traer: {bring}',
  'fact.appointment-made': 'Cita {day} a las {from} UTC, {place}',
  'fact.appointment-ended':
    'Cita {outcome, select, kept {cumplida} moved {aplazada} other {anulada}}: {because}',
  'fact.quote-given': 'Presupuesto dado: {amount}',
  'fact.policy-answered': 'Regla «{question}» respondida: {answer} ({pack})',
  'fact.plan-accepted': 'Plan aceptado por {signer}, orden {order}, {plan}…',
  'fact.step-done':
    'Paso {outcome, select, done {hecho} failed {fallido} other {omitido}}: {step} ({because})',
  'fact.signature-drawn':
    'Firma de {signer} para {what, select, consent {el consentimiento} plan {el plan} quote {el presupuesto} handover {la entrega} other {la toma de conocimiento}}',
  'fact.photo-attached':
    'Foto: {shows, select, key {una llave} vin {el VIN} odometer {el cuentakilómetros} lamps {los testigos} damage {los daños} equipment {el equipo} identity {un documento de identidad} other {otra cosa}}; {words}',
  'fact.vehicle-handed-over': 'Vehículo entregado a {to}; llaves: {keys}',
  'fact.purpose-ended': '{what}: ya no hace falta. {because}',
  'fact.hold-placed': 'No se puede borrar nada: {reason}',
  'fact.hold-lifted': 'Se puede volver a borrar: {reason}',
  'fact.deletion-proven':
    '{what}: {count, plural, one {# elemento borrado} other {# elementos borrados}}. {why}',
  'fact.secret-sealed':
    'Sellado: {what}, {count, plural, =0 {con una frase de paso} one {una persona puede abrirlo} other {# pueden abrirlo}}, {blob}…',
  'fact.secret-opened': 'Datos sellados {blob}… abiertos: {reason}',
  'fact.device-enrolled': 'Dispositivo {name} ({device}) dado de alta, aprobado por {by}',
  'fact.device-key-rotated': 'Clave nueva: este dispositivo es ahora {name} ({device}). {because}',
  'fact.device-revoked':
    'El dispositivo {device} ya no es de confianza ({because, select, retired {retirado} replaced {sustituido} lost {perdido} stolen {robado} other {su clave puede estar en otras manos}}): {reason}',
  'fact.newer-version':
    'Una versión más nueva registró «{kind}» de una forma que esta versión no sabe leer. Se conserva sin entenderse; actualizar Shearline.',
}
