import type { SameCodes } from '@shearline/jobfile'
import type { identityWords as english } from '../en/identity.ts'

/** French: Which key and which control unit is which: what the car shows, and names that may mean one. */
export const identityWords: SameCodes<typeof english> = {
  'keys.shown-as': 'Comment le véhicule montre cette clé',
  'keys.shown-as.hint':
    'Certains véhicules numérotent chaque clé ou montrent son identité : « clé 3 ». Des clés montrées de même sont une seule clé pour le véhicule.',
  'keys.shown-as.is': 'Le véhicule la montre ainsi : {words}',
  'keys.shown-as.title': 'Comment le véhicule montre chaque clé',
  'keys.shown-as.record': 'Consigner ce que montre le véhicule',
  'tally.shown-as':
    '{words} : {count, plural, one {clé {keys}} other {clés {keys}, une seule clé pour le véhicule}}',
  'units.ask.title': 'Un calculateur ou deux ?',
  'units.ask':
    'Les scans nomment « {unit} » et « {other} ». Il n’y a que vous qui puissiez voir si c’est le même calculateur. Tant que vous ne le dites pas, ils sont comparés comme deux.',
  'units.ask.same': 'Un seul calculateur',
  'units.ask.two': 'Deux calculateurs',
  'faults.unit.also': '{unit} (aussi : {names})',
  'fact.unit-matched.same': '{unit} et {other} sont un seul calculateur',
  'fact.unit-matched.two': '{unit} et {other} sont deux calculateurs',
}
