import type { SameCodes } from '../catalogues.ts'
import type { authorityWords as englishAuthority, cautionWords as englishCautions } from '../en/authority.ts'

/** German: What kind of job, who ordered it, what was signed, what is kept. */
export const authorityWords: SameCodes<typeof englishAuthority> = {
  'work.add-a-key': 'Schlüssel hinzufügen',
  'work.all-keys-lost': 'Alle Schlüssel verloren',
  'work.replace-keys': 'Schlüssel ersetzen',
  'customer.private': 'Privatkundschaft',
  'customer.trade': 'Gewerbekundschaft',
  'customer.fleet': 'Flottenkundschaft',
  'role.identity': 'Identität',
  'role.entitlement': 'Berechtigung',
  'decision.refused': 'Abgelehnt',
  'decision.held': 'Zurückgestellt',
  'decision.released': 'Freigegeben',
  'consent.absent-keys-stop':
    'Schlüssel, die nicht hier sind, starten dieses Fahrzeug danach möglicherweise nicht mehr',
  'consent.no-check-before': 'Vor der Arbeit konnte nichts geprüft werden, weil kein Schlüssel funktioniert',
  'consent.clear-faults': 'Fehler dürfen gelöscht werden; ihr Zustand wurde vorher gespeichert',
  'retention.invoice': 'Rechnung',
  'retention.authority-record': 'Was von Identität und Berechtigung gesehen wurde',
  'retention.identity-image': 'Bilder von Ausweisdokumenten',
  'retention.photo': 'Fotos',
  'retention.recording': 'Aufzeichnungen aus dem Fahrzeug',
  'retention.vehicle-secret': 'Versiegelte Fahrzeugdaten (Datensicherung)',
  'retention.job-rest': 'Alles Übrige des Auftrags',
}

/** German: Cautions: a name and the usual sentence. */
export const cautionWords: SameCodes<typeof englishCautions> = {
  'caution.defers':
    'Dies sind die üblichen Sicherheitshinweise. Das örtliche Recht und die zugelassene Fachpraxis gehen vor.',
  'caution.airbag': 'Airbag',
  'caution-means.airbag':
    'Ein Airbagfehler, der vor der Arbeit da war, bleibt, wie er vorgefunden wurde. Lassen Sie ihn von einer für Airbags zugelassenen Werkstatt prüfen.',
  'caution.keyless-can-move': 'Keyless-Fahrzeug kann fahrbereit werden',
  'caution-means.keyless-can-move':
    'Ein Fahrzeug mit Keyless-Schlüssel kann schon starten, wenn der Schlüssel nur in der Nähe ist. Schlüssel vom Fahrzeug fernhalten, solange jemand daran arbeitet.',
  'caution.high-voltage': 'Hochvolt',
  'caution-means.high-voltage':
    'Ein Elektro- oder Hybridfahrzeug führt auch ausgeschaltet gefährliche Spannung. Nur dafür ausgebildete Personen öffnen oder berühren diese Teile.',
  'caution.carbon-monoxide': 'Kohlenmonoxid',
  'caution-means.carbon-monoxide':
    'Den Motor nie in einer Garage oder an einem überdachten Ort laufen lassen. Bei einem Keyless-Schlüssel darauf achten, dass der Motor aus ist, bevor man weggeht.',
  'caution.roadside': 'Arbeit am Straßenrand',
  'caution-means.roadside':
    'Am Straßenrand ist der vorbeifahrende Verkehr die größte Gefahr. Nicht auf der Verkehrsseite stehen und das Fahrzeug im Zweifel zuerst an einen sicheren Ort bringen.',
  'caution.lone-work': 'Alleinarbeit',
  'caution-means.lone-work':
    'Wer allein arbeitet, hält Kontakt zu einer anderen Person, die den Ort und die Zeit der Rückkehr kennt.',
  'caution.button-cells': 'Knopfzellen',
  'caution-means.button-cells':
    'Eine verschluckte Knopfzelle kann ein Kind innerhalb von zwei Stunden verätzen. Knopfzellen von Kindern fernhalten; wird eine verschluckt, sofort ärztliche Hilfe holen.',
  'caution.locked-in': 'Nichts Lebendes bleibt im Fahrzeug',
  'caution-means.locked-in':
    'Kinder und Tiere bleiben während der Arbeit an den Schlüsseln außerhalb des Fahrzeugs: Die Türen können sich von selbst verriegeln.',
  'caution.steering-lock': 'Lenkradschloss',
  'caution-means.steering-lock':
    'Das Fahrzeug nicht abschleppen oder schieben, bevor das Lenkradschloss sichtbar gelöst ist. Nach einer gescheiterten Sitzung kann es verriegelt bleiben.',
}
