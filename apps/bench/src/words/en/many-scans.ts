/** Many scans in one picture, and a report that was shared to the bench. */
export const manyScansWords = {
  'faults.columns': 'Columns',
  'faults.columns.moments': '{count, plural, one {# moment} other {# moments}}',
  'faults.columns.scans': '{count, plural, one {the scan} other {each of # scans}}',
  'faults.scan-head': '{phase}, {day} {time}',
  'faults.filter.changed': 'Changed ({count, number})',

  'report.was-kept': 'What was kept',
  'title.shared': 'Shared report · Shearline',
  'shared.title': 'A report was shared',
  'shared.title.none': 'No shared report',
  'shared.which': 'Which job is it for? Nothing is kept before you have looked at what was understood.',
  'shared.none':
    'Nothing is waiting here. A report that another app shares with the bench waits here until you say which job it is for.',
  'shared.text': 'shared text',
  'shared.discard': 'Discard {name}',
  'shared.no-job': 'There is no job yet. Open one, then share again or come back to this page.',
  'shared.waiting': 'A report was shared to this job: {name}.',
  'shared.read': 'Read it now',
  'shared.failed':
    'Nothing could be taken over: what was shared is empty, larger than {most}, or this device has no room for it. Share a smaller file, or open it in its job.',
} as const
