import type { SameCodes } from '@shearline/jobfile'
import type { custodyWords as english } from '../en/custody.ts'

/** German: Kinds of fact about what was agreed, what is kept how long, who saw it, and the devices. */
export const custodyWords: SameCodes<typeof english> = {
  'fact.call-taken':
    'Anfrage angenommen {channel, select, phone {am Telefon} message {per Nachricht} visit {persönlich} other {durch das Büro}}; das Fahrzeug {starts, select, true {springt an} false {springt nicht an} other {springt vielleicht an}}; mitbringen: {bring}',
  'fact.appointment-made': 'Termin {day} um {from} UTC, {place}',
  'fact.appointment-ended':
    'Termin {outcome, select, kept {eingehalten} moved {verschoben} other {abgesagt}}: {because}',
  'fact.quote-given': 'Angebot abgegeben: {amount}',
  'fact.policy-answered': 'Regel „{question}“ beantwortet: {answer} ({pack})',
  'fact.plan-accepted': 'Plan angenommen von {signer}, Reihenfolge {order}, {plan}…',
  'fact.step-done':
    'Schritt {outcome, select, done {erledigt} failed {fehlgeschlagen} other {ausgelassen}}: {step} ({because})',
  'fact.signature-drawn':
    'Unterschrieben von {signer} für {what, select, consent {die Einwilligung} plan {den Plan} quote {das Angebot} handover {die Übergabe} other {die Kenntnisnahme}}',
  'fact.photo-attached':
    'Foto {shows, select, key {eines Schlüssels} vin {der VIN} odometer {des Kilometerstands} lamps {der Leuchten} damage {eines Schadens} equipment {der Ausrüstung} identity {eines Ausweises} other {von etwas anderem}}: {words}',
  'fact.vehicle-handed-over': 'Fahrzeug übergeben an {to}; Schlüssel: {keys}',
  'fact.purpose-ended': '{what}: nicht mehr gebraucht. {because}',
  'fact.hold-placed': 'Nichts darf gelöscht werden: {reason}',
  'fact.hold-lifted': 'Löschen ist wieder erlaubt: {reason}',
  'fact.deletion-proven': '{what}: {count, plural, one {# Sache} other {# Sachen}} gelöscht. {why}',
  'fact.secret-sealed':
    'Versiegelt: {what}, {count, plural, =0 {mit einer Passphrase} one {eine Person kann es öffnen} other {# Personen können es öffnen}}, {blob}…',
  'fact.secret-opened': 'Versiegelte Daten {blob}… geöffnet: {reason}',
  'fact.device-enrolled': 'Gerät {name} ({device}) aufgenommen, bestätigt von {by}',
  'fact.device-key-rotated': 'Neuer Signaturschlüssel: Dieses Gerät ist jetzt {name} ({device}). {because}',
  'fact.device-revoked':
    'Dem Gerät {device} wird nicht mehr vertraut ({because, select, retired {ausgemustert} replaced {ersetzt} lost {verloren} stolen {gestohlen} other {sein Signaturschlüssel ist vielleicht in fremden Händen}}): {reason}',
  'fact.newer-version':
    'Eine neuere Version hat „{kind}“ in einer Form eingetragen, die diese Version nicht lesen kann. Der Eintrag bleibt erhalten, wird aber nicht verstanden; Shearline aktualisieren.',
}
