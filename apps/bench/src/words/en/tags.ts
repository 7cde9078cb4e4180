/** Tags that tell keys apart: printing them and finding a key by its tag. */
export const tagWords = {
  'tags.find': 'Find a key by its tag',
  'tags.find.how': 'Hold the tag of the key in the frame.',
  'tags.find.other': 'That is a code, but not the tag of a key. Still looking.',
  'tags.find.code': 'Or type the four signs on the tag',
  'tags.find.code.hint': 'They stand below the square code.',
  'tags.find.do': 'Find it',
  'tags.find.unknown':
    'No key of this job has the code {code}. Read it again; 0, 1, I, L, O and U are never printed.',
  'tags.chosen': 'The one in your hand',
  'tags.found': 'In your hand: {key}',
  'tags.found.is':
    '{origin, select, new {{taught, select, true {A new key, taught in this job.} other {A new key, not taught yet.}}} other {{taught, select, true {A key of the customer, taught in this job.} other {A key of the customer.}}}}',
  'tags.found.go': 'Show its card',
  'tags.elsewhere': 'Not a key of this bench',
  'tags.elsewhere.job': 'This is key {key} of another job. Keep it apart from the keys of this one.',
  'tags.elsewhere.gone': 'The tag says key {key} of this job, and no such key is on record now.',
  'tags.elsewhere.open': 'Open that job',
  'tags.print': 'Print tags',
  'tags.print.what':
    'One tag for each key: its letter and colour, the number of the job, and a code the camera finds it by. No car, name or address stands on it: a lost tag tells nobody where the key fits.',
  'tags.print.keys': 'For which keys?',
  'tags.print.used': 'Places of the sheet already used',
  'tags.print.used.hint': 'A sheet has {count} places, counted row by row.',
  'tags.print.make': 'Make the sheet',
  'tags.print.busy': 'Making the sheet …',
  'tags.print.ready': 'The sheet is ready: save it and print it at full size.',
  'tags.print.save': 'Save the sheet',
  'tags.sheet.title': 'Key tags, job {job}',
} as const
