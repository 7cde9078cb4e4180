import type { SameCodes } from '@shearline/jobfile'
import type { custodyWords as english } from '../en/custody.ts'

/** French: Kinds of fact about what was agreed, what is kept how long, who saw it, and the devices. */
export const custodyWords: SameCodes<typeof english> = {
  'fact.call-taken':
    'Demande reçue {channel, select, phone {par téléphone} message {par message} visit {de vive voix} other {par le bureau}} ; le véhicule {starts, select, true {démarre} false {ne démarre pas} other {démarre peut-être}} ; à apporter : {bring}',
  'fact.appointment-made': 'Rendez-vous {day} à {from} UTC, {place}',
  'fact.appointment-ended':
    'Rendez-vous {outcome, select, kept {tenu} moved {déplacé} other {annulé}} : {because}',
  'fact.quote-given': 'Devis remis : {amount}',
  'fact.policy-answered': 'Réponse à la règle « {question} » : {answer} ({pack})',
  'fact.plan-accepted': 'Plan accepté par {signer}, ordre {order}, {plan}…',
  'fact.step-done':
    'Étape {outcome, select, done {faite} failed {échouée} other {laissée de côté}} : {step} ({because})',
  'fact.signature-drawn':
    'Signé par {signer} pour {what, select, consent {le consentement} plan {le plan} quote {le devis} handover {la remise} other {la prise de connaissance}}',
  'fact.photo-attached':
    'Photo {shows, select, key {d’une clé} vin {du VIN} odometer {du compteur kilométrique} lamps {des voyants} damage {d’un dommage} equipment {du matériel} identity {d’une pièce d’identité} other {d’autre chose}} : {words}',
  'fact.vehicle-handed-over': 'Véhicule remis à {to} ; clés : {keys}',
  'fact.purpose-ended': '{what} : n’est plus nécessaire. {because}',
  'fact.hold-placed': 'Rien ne doit être supprimé : {reason}',
  'fact.hold-lifted': 'La suppression est de nouveau permise : {reason}',
  'fact.deletion-proven':
    '{what} : {count, plural, one {# élément supprimé} other {# éléments supprimés}}. {why}',
  'fact.secret-sealed':
    'Scellé : {what}, {count, plural, =0 {par une phrase secrète} one {une personne peut l’ouvrir} other {# personnes peuvent l’ouvrir}}, {blob}…',
  'fact.secret-opened': 'Données scellées {blob}… ouvertes : {reason}',
  'fact.device-enrolled': 'Appareil {name} ({device}) admis, approuvé par {by}',
  'fact.device-key-rotated':
    'Nouvelle clé de signature : cet appareil est maintenant {name} ({device}). {because}',
  'fact.device-revoked':
    'L’appareil {device} n’est plus digne de confiance ({because, select, retired {mis hors service} replaced {remplacé} lost {perdu} stolen {volé} other {sa clé de signature est peut-être en d’autres mains}}) : {reason}',
  'fact.newer-version':
    'Une version plus récente a consigné « {kind} » sous une forme que cette version ne sait pas lire. Le fait est conservé, mais pas compris ; mettre Shearline à jour.',
}
