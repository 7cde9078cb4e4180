import type { SameCodes } from '../catalogues.ts'
import type { custodyWords as english } from '../en/custody.ts'

/** What starts a deletion clock, and how long it then runs. */
export const custodyWords: SameCodes<typeof english> = {
  'trigger.sealed': '{count, plural, one {# día después del sellado} other {# días después del sellado}}',
  'trigger.handed-over':
    '{count, plural, one {# día después de la entrega} other {# días después de la entrega}}',
  'trigger.warranty-ended': '{count, plural, one {# día} other {# días}} después de que termine la garantía',
  'trigger.purpose-ended':
    '{count, plural, =0 {En cuanto ya no haga falta} one {# día después de que ya no haga falta} other {# días después de que ya no haga falta}}',
  'trigger.recorded':
    '{count, plural, one {# día después de registrarse} other {# días después de registrarse}}',
}
