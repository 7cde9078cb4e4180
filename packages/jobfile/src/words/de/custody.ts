import type { SameCodes } from '../catalogues.ts'
import type { custodyWords as english } from '../en/custody.ts'

/** German: What starts a deletion clock, and how long it then runs. */
export const custodyWords: SameCodes<typeof english> = {
  'trigger.sealed': '{count, plural, one {# Tag nach dem Versiegeln} other {# Tage nach dem Versiegeln}}',
  'trigger.handed-over': '{count, plural, one {# Tag nach der Übergabe} other {# Tage nach der Übergabe}}',
  'trigger.warranty-ended': '{count, plural, one {# Tag} other {# Tage}} nach dem Ende der Garantie',
  'trigger.purpose-ended':
    '{count, plural, =0 {Sobald es nicht mehr gebraucht wird} one {# Tag, nachdem es nicht mehr gebraucht wird} other {# Tage, nachdem es nicht mehr gebraucht wird}}',
  'trigger.recorded': '{count, plural, one {# Tag nach dem Eintragen} other {# Tage nach dem Eintragen}}',
}
