/**
 * @module The business rules of EN 16931-1 that an invoice of ours can break, by the identifiers the standard gives
 * them. Amounts follow from the lines by computation, so BR-CO-10 to BR-CO-17 hold by construction (and are tested).
 */
import type { Finding } from '@shearline/bus'
import { minorDigitsOf } from '../words/index.ts'
import { amountsOf, type Category, type Invoice } from './amounts.ts'

/** A rule's identifier in the standard. */
export type InvoiceRule = `BR-${string}`
export type InvoiceFinding = Finding<InvoiceRule>

/** Every rule an invoice breaks; none when it may be issued. The schema of the fact has checked its form before. */
export function invoiceFindings(invoice: Invoice): readonly InvoiceFinding[] {
  const amounts = amountsOf(invoice)
  const categories = new Set(invoice.lines.map(({ category }) => category))
  const found: InvoiceFinding[] = [
    ...partyFindings(invoice),
    ...invoice.lines.flatMap(lineFindings),
    ...[...categories].flatMap((category) => categoryFindings(invoice, category)),
  ]
  if (minorDigitsOf(invoice.currency) !== 2)
    found.push(
      broken(
        'BR-DEC-14',
        'currency',
        `${invoice.currency} is not counted in hundredths, as the standard asks.`,
        {
          doNext: 'Invoice in a currency with two decimals, or write this invoice by other means.',
        },
      ),
    )
  if (amounts.dueMinor > 0 && invoice.due === undefined && invoice.terms === undefined)
    found.push(broken('BR-CO-25', 'due', 'Something is to be paid, and neither a day nor terms say when.'))
  if (invoice.payment === 'transfer' && invoice.account === undefined)
    found.push(broken('BR-61', 'account', 'It is to be paid by transfer, and no account is given.'))
  if (categories.has('O') && categories.size > 1)
    found.push(
      broken(
        'BR-O-11',
        'lines',
        'Lines outside the scope of the tax cannot stand beside others on one invoice.',
      ),
    )
  return found
}

function broken(
  code: InvoiceRule,
  part: string,
  what: string,
  { doNext = 'Complete it and try again.' }: { readonly doNext?: string } = {},
): InvoiceFinding {
  return { code, severity: 'error', where: { part }, what, doNext }
}

function partyFindings({ seller, buyer }: Invoice): readonly InvoiceFinding[] {
  const found: InvoiceFinding[] = []
  if (seller.vatId === undefined && seller.registerNumber === undefined)
    found.push(
      broken('BR-CO-26', 'seller', 'The seller has neither a VAT identifier nor a number in a register.', {
        doNext: 'Give the VAT identifier, or the number under which the firm is registered.',
      }),
    )
  for (const [name, { vatId }] of [['seller', seller] as const, ['buyer', buyer] as const])
    if (vatId !== undefined && !countries.has(vatId.slice(0, 2)))
      found.push(broken('BR-CO-09', name, `${vatId.slice(0, 2)} is not the code of a country.`))
  for (const [name, { country }, rule] of [
    ['seller', seller, 'BR-09'] as const,
    ['buyer', buyer, 'BR-11'] as const,
  ])
    if (!countries.has(country) || country === 'EL')
      found.push(broken(rule, name, `${country} is not the code of a country (ISO 3166-1).`))
  return found
}

function lineFindings(line: Invoice['lines'][number], index: number): readonly InvoiceFinding[] {
  const part = `line ${index + 1}`
  if (line.category === 'S')
    return line.rateBasisPoints > 0
      ? []
      : [broken('BR-S-05', part, 'The standard rate is a rate above zero.')]
  if (line.rateBasisPoints === 0) return []
  return [broken(`BR-${line.category}-05`, part, 'This kind of tax has no rate.')]
}

/** Who must be known to the tax office, and who must not, by kind of tax. */
function categoryFindings(invoice: Invoice, category: Category): readonly InvoiceFinding[] {
  const { seller, buyer, reasons } = invoice
  const found: InvoiceFinding[] = []
  const known = seller.vatId !== undefined || seller.taxNumber !== undefined
  if (category === 'O') {
    if (seller.vatId !== undefined || buyer.vatId !== undefined)
      found.push(
        broken('BR-O-02', 'lines', 'Outside the scope of the tax no VAT identifier may be named.', {
          doNext: 'Leave the VAT identifiers out, or choose another kind of tax.',
        }),
      )
  } else if (!known)
    found.push(broken(`BR-${category}-02`, 'seller', 'The seller has no VAT identifier and no tax number.'))
  if (category === 'AE' && buyer.vatId === undefined && buyer.registerNumber === undefined)
    found.push(
      broken(
        'BR-AE-02',
        'buyer',
        'Where the buyer owes the tax, the VAT identifier of the buyer must be named.',
      ),
    )
  if ((category === 'E' || category === 'AE' || category === 'O') && reasons[category] === undefined)
    found.push(broken(`BR-${category}-10`, 'reasons', 'Why no tax is charged is not said.'))
  return found
}

/** ISO 3166-1 alpha-2 codes assigned when this was written, and EL, which VAT identifiers use for Greece. From memory. */
const countries: ReadonlySet<string> = new Set(
  (
    'AD AE AF AG AI AL AM AO AQ AR AS AT AU AW AX AZ BA BB BD BE BF BG BH BI BJ BL BM BN BO BQ BR BS BT BV BW BY BZ ' +
    'CA CC CD CF CG CH CI CK CL CM CN CO CR CU CV CW CX CY CZ DE DJ DK DM DO DZ EC EE EG EH ER ES ET FI FJ FK FM FO ' +
    'FR GA GB GD GE GF GG GH GI GL GM GN GP GQ GR GS GT GU GW GY HK HM HN HR HT HU ID IE IL IM IN IO IQ IR IS IT JE ' +
    'JM JO JP KE KG KH KI KM KN KP KR KW KY KZ LA LB LC LI LK LR LS LT LU LV LY MA MC MD ME MF MG MH MK ML MM MN MO ' +
    'MP MQ MR MS MT MU MV MW MX MY MZ NA NC NE NF NG NI NL NO NP NR NU NZ OM PA PE PF PG PH PK PL PM PN PR PS PT PW ' +
    'PY QA RE RO RS RU RW SA SB SC SD SE SG SH SI SJ SK SL SM SN SO SR SS ST SV SX SY SZ TC TD TF TG TH TJ TK TL TM ' +
    'TN TO TR TT TV TW TZ UA UG UM US UY UZ VA VC VE VG VI VN VU WF WS YE YT ZA ZM ZW EL XI'
  ).split(' '),
)
