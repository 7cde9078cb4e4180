import type { SameCodes } from '@shearline/jobfile'
import type { identityWords as english } from '../en/identity.ts'

/** German: Which key and which control unit is which: what the car shows, and names that may mean one. */
export const identityWords: SameCodes<typeof english> = {
  'keys.shown-as': 'Wie das Fahrzeug diesen Schlüssel zeigt',
  'keys.shown-as.hint':
    'Manche Fahrzeuge nummerieren jeden Schlüssel oder zeigen seine Identität: „Schlüssel 3“. Gleich gezeigte Schlüssel sind für das Fahrzeug ein einziger.',
  'keys.shown-as.is': 'Das Fahrzeug zeigt ihn als: {words}',
  'keys.shown-as.title': 'Wie das Fahrzeug jeden Schlüssel zeigt',
  'keys.shown-as.record': 'Eintragen, was das Fahrzeug zeigt',
  'tally.shown-as':
    '{words}: {count, plural, one {Schlüssel {keys}} other {Schlüssel {keys}, für das Fahrzeug ein einziger}}',
  'units.ask.title': 'Ein Steuergerät oder zwei?',
  'units.ask':
    'Die Scans nennen „{unit}“ und „{other}“. Nur Sie können sehen, ob es dasselbe Steuergerät ist. Bis Sie es sagen, werden sie als zwei verglichen.',
  'units.ask.same': 'Ein Steuergerät',
  'units.ask.two': 'Zwei Steuergeräte',
  'faults.unit.also': '{unit} (auch: {names})',
  'fact.unit-matched.same': '{unit} und {other} sind ein Steuergerät',
  'fact.unit-matched.two': '{unit} und {other} sind zwei Steuergeräte',
}
