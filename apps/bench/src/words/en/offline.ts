/** What is kept without a connection, clocks that differ, and newer versions of the bench. */
export const offlineWords = {
  'clock.ahead':
    "This device's clock is {minutes, plural, one {# minute} other {# minutes}} ahead of the server's. Times in the record follow it: set it right when you can.",
  'clock.behind':
    "This device's clock is {minutes, plural, one {# minute} other {# minutes}} behind the server's. Times in the record follow it: set it right when you can.",
  'clock.other-ahead':
    'The clock of "{name}" is {minutes, plural, one {# minute} other {# minutes}} ahead. Its entries stand later in the record than they were made.',
  'renewal.ready': 'A new version is ready. Reload when you like; everything recorded stays.',
  'renewal.job-open': 'A job is open in another window of this browser. Close it there first, then reload.',
  'renewal.reload': 'Reload',
  'board.unsent': '{count, plural, one {# entry} other {# entries}} saved here, not sent yet',
  'sending.reading': 'Looking what is kept',
  'sending.full.reading': 'Looking what is kept on this device and what is sent.',
  'sending.upload': 'Sending {name}: {sent} of {whole}',
  'device.whole': 'The whole bench is kept on this device: it opens and works without a connection.',
  'device.not-whole': 'The bench is not kept here whole yet. Stay connected until this line says so.',
  'device.room': 'The bench uses {used} on this device.',
  'device.droppable':
    'When room is short: recordings that are already sent can be dropped here. Facts and documents stay.',
  'device.drop-sent': 'Drop sent recordings ({size})',
} as const
