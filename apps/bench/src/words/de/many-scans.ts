import type { SameCodes } from '@shearline/jobfile'
import type { manyScansWords as english } from '../en/many-scans.ts'

/** German: Many scans in one picture, and a report that was shared to the bench. */
export const manyScansWords: SameCodes<typeof english> = {
  'faults.columns': 'Spalten',
  'faults.columns.moments': '{count, plural, one {# Zeitpunkt} other {# Zeitpunkte}}',
  'faults.columns.scans': '{count, plural, one {der Scan} other {jeder der # Scans}}',
  'faults.scan-head': '{phase}, {day} {time}',
  'faults.filter.changed': 'Verändert ({count, number})',
  'report.was-kept': 'Was behalten wurde',

  'title.shared': 'Geteilter Bericht · Shearline',
  'shared.title': 'Ein Bericht wurde geteilt',
  'shared.title.none': 'Kein geteilter Bericht',
  'shared.which':
    'Zu welchem Auftrag gehört er? Nichts wird aufbewahrt, bevor Sie angesehen haben, was verstanden wurde.',
  'shared.none':
    'Hier wartet nichts. Ein Bericht, den eine andere App mit der Werkbank teilt, wartet hier, bis Sie sagen, zu welchem Auftrag er gehört.',
  'shared.text': 'geteilter Text',
  'shared.discard': '{name} verwerfen',
  'shared.no-job':
    'Noch gibt es keinen Auftrag. Einen anlegen, dann erneut teilen oder auf diese Seite zurückkommen.',
  'shared.waiting': 'Mit diesem Auftrag wurde ein Bericht geteilt: {name}.',
  'shared.read': 'Jetzt lesen',
  'shared.failed':
    'Es ließ sich nichts übernehmen: Das Geteilte ist leer, größer als {most}, oder auf diesem Gerät ist kein Platz dafür. Teilen Sie eine kleinere Datei oder öffnen Sie sie im Auftrag.',
}
