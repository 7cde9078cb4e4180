import type { SameCodes } from '../catalogues.ts'
import type { custodyWords as english } from '../en/custody.ts'

/** What starts a deletion clock, and how long it then runs. */
export const custodyWords: SameCodes<typeof english> = {
  'trigger.sealed':
    '{count, plural, one {# dzień po zapieczętowaniu} few {# dni po zapieczętowaniu} many {# dni po zapieczętowaniu} other {# dnia po zapieczętowaniu}}',
  'trigger.handed-over':
    '{count, plural, one {# dzień po wydaniu} few {# dni po wydaniu} many {# dni po wydaniu} other {# dnia po wydaniu}}',
  'trigger.warranty-ended':
    '{count, plural, one {# dzień} few {# dni} many {# dni} other {# dnia}} po zakończeniu gwarancji',
  'trigger.purpose-ended':
    '{count, plural, =0 {Gdy tylko nie będzie już potrzebne} one {# dzień po tym, jak nie będzie już potrzebne} few {# dni po tym, jak nie będzie już potrzebne} many {# dni po tym, jak nie będzie już potrzebne} other {# dnia po tym, jak nie będzie już potrzebne}}',
  'trigger.recorded':
    '{count, plural, one {# dzień po zapisaniu} few {# dni po zapisaniu} many {# dni po zapisaniu} other {# dnia po zapisaniu}}',
}
