/** Which key and which control unit is which: what the car shows, and names that may mean one. */
export const identityWords = {
  'keys.shown-as': 'How the car shows this key',
  'keys.shown-as.hint':
    'Some cars number each key or show its identity: “key 3”. Keys shown alike are one key to the car.',
  'keys.shown-as.is': 'The car shows it as: {words}',
  'keys.shown-as.title': 'How the car shows each key',
  'keys.shown-as.record': 'Record what the car shows',
  'tally.shown-as':
    '{words}: {count, plural, one {key {keys}} other {keys {keys}, which are one key to the car}}',
  'units.ask.title': 'One control unit or two?',
  'units.ask':
    'The scans name “{unit}” and “{other}”. Only you can see whether they are the same control unit. Until you say so they are compared as two.',
  'units.ask.same': 'One unit',
  'units.ask.two': 'Two units',
  'faults.unit.also': '{unit} (also: {names})',
  'fact.unit-matched.same': '{unit} and {other} are one control unit',
  'fact.unit-matched.two': '{unit} and {other} are two control units',
} as const
