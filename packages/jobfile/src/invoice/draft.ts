/** @module An invoice from the price that was agreed. */
import type { Body } from '../facts/index.ts'
import { amountsOf, type Category, type Invoice, netOf } from './amounts.ts'

/** What an invoice needs beside the agreed price. */
export interface InvoiceDetails
  extends Pick<Invoice, 'number' | 'issued' | 'seller' | 'buyer'>,
    Partial<Pick<Invoice, 'delivered' | 'due' | 'terms' | 'reasons' | 'payment' | 'account' | 'paidMinor'>> {
  /** The tax of every line. */
  readonly category: Category
  readonly rateBasisPoints: number
  /** Whether the agreed price holds the tax already, as it does for consumers. */
  readonly priceIncludesTax: boolean
}

/**
 * Makes the body of an invoice. Where the price holds the tax, the net amounts are taken out of it line by line and
 * a rounding amount (BT-114) brings the amount due back to the agreed price, to the minor unit.
 */
export function draftInvoice(price: Body<'price-agreed'>, details: InvoiceDetails): Invoice {
  const { category, rateBasisPoints, priceIncludesTax, ...own } = details
  const rate = category === 'S' ? rateBasisPoints : 0
  const lines = price.lines.map(({ text, amountMinor }) => ({
    text: text.slice(0, 500),
    netMinor: priceIncludesTax ? netOf(amountMinor, rate) : amountMinor,
    category,
    rateBasisPoints: rate,
  }))
  const paidMinor = details.paidMinor ?? 0
  const { grossMinor } = amountsOf({ lines, paidMinor, roundingMinor: 0 })
  const agreed = price.lines.reduce((sum, { amountMinor }) => sum + amountMinor, 0)
  return {
    ...own,
    reasons: details.reasons ?? {},
    currency: price.currency,
    lines,
    paidMinor,
    roundingMinor: priceIncludesTax ? agreed - grossMinor : 0,
  }
}
