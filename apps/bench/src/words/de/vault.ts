import type { SameCodes } from '@shearline/jobfile'
import type { vaultWords as english } from '../en/vault.ts'

/** German: The vault: who can open vehicle secrets, sealing two reads, opening with a reason. */
export const vaultWords: SameCodes<typeof english> = {
  'vault.recipients': 'Wer Fahrzeuggeheimnisse öffnen kann',
  'vault.recipients.about':
    'Datensicherungen aus dem Fahrzeug werden auf diesem Gerät versiegelt, bevor sie aufbewahrt oder gesendet werden. Nur wer einen dieser Schlüssel besitzt, kann sie öffnen.',
  'vault.recipients.none': 'Noch niemand: Bis dahin kann hier keine Datensicherung versiegelt werden.',
  'vault.recipients.office': 'Das Büro versiegelt auch für diese Schlüssel',
  'vault.recipients.office.about':
    'Nur übernehmen, wenn bekannt ist, wem der Schlüssel gehört: Wer ihn besitzt, kann alles öffnen, was hier ab jetzt versiegelt wird.',
  'vault.recipients.take': 'Übernehmen',
  'vault.recipients.take-named': 'Schlüssel von {name} übernehmen',
  'vault.recipients.key': 'Öffentlicher Schlüssel',
  'vault.recipients.key.hint': 'Beginnt mit age1. Hier nie einen privaten Schlüssel eingeben.',
  'vault.recipients.name': 'Wem er gehört',
  'vault.recipients.add': 'Diesen Schlüssel hinzufügen',
  'vault.recipients.remove': 'Entfernen',
  'vault.recipients.remove-named': '{name} entfernen',
  'vault.seal.no-recipient': 'Kein Schlüssel ist genannt, der eine versiegelte Datensicherung öffnen könnte.',
  'vault.seal.to-device': 'Einen auf der Geräteseite nennen',
  'vault.seal.about':
    'Die zwei Dateien werden verglichen und eine wird auf diesem Gerät versiegelt; nur die versiegelte Form wird aufbewahrt und gesendet. Öffnen können sie: {names}.',
  'vault.seal.first': 'Erste Auslesung wählen',
  'vault.seal.second': 'Zweite Auslesung wählen',
  'vault.seal.none': 'noch nicht gewählt',
  'vault.seal.picked': '{name}, {count, plural, one {# Byte} other {# Bytes}}',
  'vault.seal.same-file':
    'Das ist zweimal dieselbe Datei. Den Speicher ein zweites Mal auslesen, in eine andere Datei.',
  'vault.seal.do': 'Vergleichen und versiegeln',
  'vault.seal.busy': 'Wird verglichen und versiegelt…',
  'vault.digest.first': 'Erste Auslesung (Prüfwert mit Schlüssel)',
  'vault.digest.second': 'Zweite Auslesung (Prüfwert mit Schlüssel)',
  'vault.sealed-file': 'versiegelte Datensicherung',
  'vault.secrets': 'Bei diesem Auftrag versiegelt',
  'vault.secret': '{what}, {count, plural, one {# Byte} other {# Bytes}}, versiegelt {when}',
  'vault.secret.opened': 'Geöffnet {when} von {by}: {reason}',
  'vault.open': 'Öffnen',
  'vault.open.reason': 'Warum geöffnet wird',
  'vault.open.reason.hint': 'Kommt ins Protokoll, bevor irgendetwas geöffnet wird.',
  'vault.open.identity': 'Privater Schlüssel',
  'vault.open.identity.hint':
    'Die Datei, wie sie gedruckt oder gespeichert wurde. Sie wird nicht aufbewahrt.',
  'vault.open.identity.file': 'Aus seiner Datei nehmen',
  'vault.open.identity.show': 'Schlüssel zeigen',
  'vault.open.identity.hide': 'Schlüssel verbergen',
  'vault.open.identity.no-key': '„{name}“ ist zu groß für einen privaten Schlüssel.',
  'vault.open.passphrase': 'Passphrase dieses Schlüssels, falls er eine hat',
  'vault.open.do': 'Grund eintragen und öffnen',
  'vault.open.save': 'Geöffnete Datei speichern',
  'vault.open.right':
    'Es ist die Datei, die beim Versiegeln eingetragen wurde. Die gespeicherte Datei löschen, sobald sie ihren Zweck erfüllt hat.',
  'vault.open.wrong': 'Es ist NICHT die Datei, die beim Versiegeln eingetragen wurde.',
  'vault.open.not-here': 'Die versiegelte Datei ist weder hier noch auf dem Server.',
}
