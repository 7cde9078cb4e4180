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
  'shared.which':
    'Zu welchem Auftrag gehört er? Nichts wird aufbewahrt, bevor Sie angesehen haben, was verstanden wurde.',
  'shared.none': 'Hier wartet nichts.',
  'shared.text': 'geteilter Text',
  'shared.discard': '{name} verwerfen',
  'shared.no-job':
    'Noch gibt es keinen Auftrag. Einen anlegen, dann erneut teilen oder auf diese Seite zurückkommen.',
  'shared.waiting': 'Mit diesem Auftrag wurde ein Bericht geteilt: {name}.',
  'shared.read': 'Jetzt lesen',
  'shared.failed': 'Der Bericht ließ sich nicht übernehmen: {why}',
}
