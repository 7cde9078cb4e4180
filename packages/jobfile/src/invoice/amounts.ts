/** @module The amounts of an invoice as EN 16931-1 computes them (BR-CO-10 to BR-CO-17), in minor units. */
import type { Body } from '../facts/index.ts'

export type Invoice = Body<'invoice-issued'>
export type Category = Invoice['lines'][number]['category']

/** One line of the tax breakdown (BG-23). */
export interface TaxShare {
  readonly category: Category
  readonly rateBasisPoints: number
  /** BT-116: sum of the lines of this category and rate. */
  readonly basisMinor: number
  /** BT-117. */
  readonly taxMinor: number
}

/** The totals of an invoice (BG-22), in minor units. */
export interface InvoiceAmounts {
  /** BT-106. */
  readonly linesMinor: number
  /** BT-109: no allowances or charges on the level of the document, so it equals BT-106. */
  readonly basisMinor: number
  /** BT-110. */
  readonly taxMinor: number
  /** BT-112. */
  readonly grossMinor: number
  /** BT-115. */
  readonly dueMinor: number
  /** BG-23, in the order of category and rate. */
  readonly shares: readonly TaxShare[]
}

/**
 * Divides and rounds to the nearest whole, halves away from zero, as accountants do and the standard's examples.
 * Exact for whole numbers of any size.
 */
export function dividedRounded(numerator: bigint, denominator: bigint): number {
  const sign = numerator < 0n !== denominator < 0n ? -1n : 1n
  const [above, below] = [
    numerator < 0n ? -numerator : numerator,
    denominator < 0n ? -denominator : denominator,
  ]
  return Number(sign * ((2n * above + below) / (2n * below)))
}

/** Tax on an amount (BR-CO-17): basis times rate, rounded to minor units. */
export function taxOn(basisMinor: number, rateBasisPoints: number): number {
  return dividedRounded(BigInt(basisMinor) * BigInt(rateBasisPoints), 10_000n)
}

/** The part of an amount with tax that is without it, rounded to minor units. */
export function netOf(grossMinor: number, rateBasisPoints: number): number {
  return dividedRounded(BigInt(grossMinor) * 10_000n, 10_000n + BigInt(rateBasisPoints))
}

const order: readonly Category[] = ['S', 'Z', 'E', 'AE', 'O']

/** Computes every total of an invoice from its lines. Tax is rounded once for each category and rate, not by line. */
export function amountsOf(invoice: Pick<Invoice, 'lines' | 'paidMinor' | 'roundingMinor'>): InvoiceAmounts {
  const sums = new Map<string, { category: Category; rateBasisPoints: number; basisMinor: number }>()
  for (const { category, rateBasisPoints, netMinor } of invoice.lines) {
    const key = `${category} ${rateBasisPoints}`
    const sum = sums.get(key) ?? { category, rateBasisPoints, basisMinor: 0 }
    sum.basisMinor += netMinor
    sums.set(key, sum)
  }
  const shares = [...sums.values()]
    .map((sum) => ({
      ...sum,
      taxMinor: sum.category === 'S' ? taxOn(sum.basisMinor, sum.rateBasisPoints) : 0,
    }))
    .sort(
      (a, b) =>
        order.indexOf(a.category) - order.indexOf(b.category) || b.rateBasisPoints - a.rateBasisPoints,
    )
  const linesMinor = invoice.lines.reduce((total, { netMinor }) => total + netMinor, 0)
  const taxMinor = shares.reduce((total, share) => total + share.taxMinor, 0)
  const grossMinor = linesMinor + taxMinor
  return {
    linesMinor,
    basisMinor: linesMinor,
    taxMinor,
    grossMinor,
    dueMinor: grossMinor - invoice.paidMinor + invoice.roundingMinor,
    shares,
  }
}
