import { volts } from '../words/amounts.ts'
import { t } from '../words/index.ts'

/** A range of supply volts; one number where it does not vary. */
export function supplyWords(low: number, high: number): string {
  return volts(low) === volts(high) ? volts(low) : t('supply.range', { low: volts(low), high: volts(high) })
}
