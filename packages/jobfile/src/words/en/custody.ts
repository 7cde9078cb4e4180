import type { Body } from '../../facts/index.ts'

type Trigger = Body<'retention-set'>['classes'][number]['trigger']

/** What starts a deletion clock, and how long it then runs. */
export const custodyWords = {
  'trigger.sealed': '{count, plural, one {# day after sealing} other {# days after sealing}}',
  'trigger.handed-over': '{count, plural, one {# day after hand-over} other {# days after hand-over}}',
  'trigger.warranty-ended': '{count, plural, one {# day} other {# days}} after the warranty ends',
  'trigger.purpose-ended':
    '{count, plural, =0 {As soon as it is no longer needed} one {# day after it is no longer needed} other {# days after it is no longer needed}}',
  'trigger.recorded':
    '{count, plural, one {# day after it was recorded} other {# days after it was recorded}}',
} as const satisfies Record<`trigger.${Trigger}`, string>
