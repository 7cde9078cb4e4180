import { z } from 'zod'

const words = z.string().trim().min(1).max(500)
/** A calendar day, `2026-11-25`. */
const day = z.iso.date()

/** Seller or buyer, with the numbers of the business terms of EN 16931-1. */
const party = z.object({
  /** BT-27, BT-44. */
  name: words,
  /** BT-31, BT-48: VAT identifier with its country's prefix. */
  vatId: z
    .string()
    .regex(/^[A-Z]{2}[0-9A-Za-z+*.]{2,13}$/)
    .optional(),
  /** BT-32: local tax registration of a seller. */
  taxNumber: words.optional(),
  /** BT-30, BT-47: number in a register of companies. */
  registerNumber: words.optional(),
  /** BT-35, BT-50. */
  street: words.optional(),
  /** BT-37, BT-52. */
  city: words.optional(),
  /** BT-38, BT-53. */
  postCode: words.optional(),
  /** BT-40, BT-55: ISO 3166-1 alpha-2. */
  country: z.string().regex(/^[A-Z]{2}$/),
})

/** The facts of an invoice. */
export const invoiceKinds = {
  'invoice-issued': z.object({
    /** BT-1. */
    number: words,
    /** BT-2. */
    issued: day,
    /** BT-72: the day of the work. */
    delivered: day.optional(),
    /** BT-9. */
    due: day.optional(),
    /** BT-20. */
    terms: words.optional(),
    /** BT-5. */
    currency: z.string().regex(/^[A-Z]{3}$/),
    seller: party,
    buyer: party,
    lines: z
      .array(
        z.object({
          /** BT-153. */
          text: words,
          /** BT-131: without tax, in minor units; negative for something taken off. */
          netMinor: z.number().int(),
          /** BT-151, by the codes of UNTDID 5305: standard, zero, exempt, reverse charge, outside the scope. */
          category: z.enum(['S', 'Z', 'E', 'AE', 'O']),
          /** BT-152 in hundredths of a percent. */
          rateBasisPoints: z.number().int().min(0).max(100_00),
        }),
      )
      .min(1),
    /** BT-120: why no tax is charged, for each category that needs a reason. */
    reasons: z.object({ E: words.optional(), AE: words.optional(), O: words.optional() }).default({}),
    /** BT-113, in minor units. */
    paidMinor: z.number().int().default(0),
    /** BT-114, in minor units: what makes the amount due the agreed price. */
    roundingMinor: z.number().int().default(0),
    /** BT-81: by what it is paid. */
    payment: z.enum(['cash', 'card', 'transfer']).optional(),
    /** BT-84: the account to pay to. */
    account: words.optional(),
  }),
} as const
