import type { SameCodes } from '../catalogues.ts'
import type { custodyWords as english } from '../en/custody.ts'

/** French: What starts a deletion clock, and how long it then runs. */
export const custodyWords: SameCodes<typeof english> = {
  'trigger.sealed': '{count, plural, one {# jour après le scellement} other {# jours après le scellement}}',
  'trigger.handed-over': '{count, plural, one {# jour après la remise} other {# jours après la remise}}',
  'trigger.warranty-ended': '{count, plural, one {# jour} other {# jours}} après la fin de la garantie',
  'trigger.purpose-ended':
    '{count, plural, =0 {Dès que ce n’est plus nécessaire} one {# jour après que ce n’est plus nécessaire} other {# jours après que ce n’est plus nécessaire}}',
  'trigger.recorded':
    '{count, plural, one {# jour après avoir été consigné} other {# jours après avoir été consigné}}',
}
