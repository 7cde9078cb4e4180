import type { SameCodes } from '@shearline/jobfile'
import type { identityWords as english } from '../en/identity.ts'

/** Which key and which control unit is which: what the car shows, and names that may mean one. */
export const identityWords: SameCodes<typeof english> = {
  'keys.shown-as': 'Jak auto pokazuje ten klucz',
  'keys.shown-as.hint':
    'Niektóre auta numerują każdy klucz lub pokazują jego tożsamość: „klucz 3”. Klucze pokazywane tak samo są dla auta jednym kluczem.',
  'keys.shown-as.is': 'Auto pokazuje go jako: {words}',
  'keys.shown-as.title': 'Jak auto pokazuje każdy klucz',
  'keys.shown-as.record': 'Zapisać, co pokazuje auto',
  'tally.shown-as':
    '{words}: {count, plural, one {klucz {keys}} few {klucze {keys}, które dla auta są jednym kluczem} many {klucze {keys}, które dla auta są jednym kluczem} other {klucze {keys}, które dla auta są jednym kluczem}}',
  'units.ask.title': 'Jeden sterownik czy dwa?',
  'units.ask':
    'Skany wymieniają „{unit}” i „{other}”. Czy to ten sam sterownik, widać tylko przy aucie. Do czasu odpowiedzi porównuje się je jako dwa.',
  'units.ask.same': 'Jeden sterownik',
  'units.ask.two': 'Dwa sterowniki',
  'faults.unit.also': '{unit} (także: {names})',
  'fact.unit-matched.same': '{unit} i {other} to jeden sterownik',
  'fact.unit-matched.two': '{unit} i {other} to dwa sterowniki',
}
