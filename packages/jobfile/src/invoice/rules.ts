/**
 * @module The business rules of EN 16931-1 that an invoice of ours can break, by the identifiers the standard gives
 * them. Amounts follow from the lines by computation, so BR-CO-10 to BR-CO-17 hold by construction (and are tested).
 */
import type { Finding } from '@shearline/bus'
import { type Language, minorDigitsOf, say } from '../words/index.ts'
import { amountsOf, type Category, type Invoice } from './amounts.ts'

/** A rule's identifier in the standard. */
export type InvoiceRule = `BR-${string}`

/** What a rule says, by the code of its words (`invoice-rule.*`). */
type Says =
  | 'currency-not-hundredths'
  | 'due-not-said'
  | 'account-missing'
  | 'outside-beside-others'
  | 'seller-unknown'
  | 'vat-country-unknown'
  | 'country-unknown'
  | 'standard-rate-zero'
  | 'kind-without-rate'
  | 'outside-with-vat'
  | 'seller-without-tax-number'
  | 'buyer-vat-missing'
  | 'reason-missing'

/** Where in an invoice something is: a part, or one of its lines, counted from 1. */
type Place = 'seller' | 'buyer' | 'due' | 'account' | 'currency' | 'lines' | 'reasons' | number

/** A broken rule in English, and what it is said by in other languages (`sayInvoiceFinding`). */
export interface InvoiceFinding extends Finding<InvoiceRule> {
  readonly says: Says
  readonly place: Place
}

/** What to do about it, where completing it is not the answer. */
const otherwise: Readonly<Partial<Record<Says, 'currency' | 'seller' | 'outside'>>> = {
  'currency-not-hundredths': 'currency',
  'seller-unknown': 'seller',
  'outside-with-vat': 'outside',
}

/** A finding about an invoice in a language: where, what it is, and what to do next. */
export function sayInvoiceFinding(
  language: Language,
  { says, place, params }: Pick<InvoiceFinding, 'says' | 'place' | 'params'>,
): { readonly where: string; readonly what: string; readonly doNext: string } {
  return {
    where:
      typeof place === 'number'
        ? say(language, 'invoice-part.line', { number: place })
        : say(language, `invoice-part.${place}`),
    what: say(language, `invoice-rule.${says}`, params),
    doNext: say(language, `invoice-do.${otherwise[says] ?? 'complete'}`),
  }
}

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
    found.push(broken('BR-DEC-14', 'currency', 'currency-not-hundredths', { currency: invoice.currency }))
  if (amounts.dueMinor > 0 && invoice.due === undefined && invoice.terms === undefined)
    found.push(broken('BR-CO-25', 'due', 'due-not-said'))
  if (invoice.payment === 'transfer' && invoice.account === undefined)
    found.push(broken('BR-61', 'account', 'account-missing'))
  if (categories.has('O') && categories.size > 1)
    found.push(broken('BR-O-11', 'lines', 'outside-beside-others'))
  return found
}

function broken(
  code: InvoiceRule,
  place: Place,
  says: Says,
  params: Readonly<Record<string, string>> = {},
): InvoiceFinding {
  const { what, doNext } = sayInvoiceFinding('en', { says, place, params })
  const part = typeof place === 'number' ? `line ${place}` : place
  return { code, severity: 'error', where: { part }, what, doNext, params, says, place }
}

function partyFindings({ seller, buyer }: Invoice): readonly InvoiceFinding[] {
  const found: InvoiceFinding[] = []
  if (seller.vatId === undefined && seller.registerNumber === undefined)
    found.push(broken('BR-CO-26', 'seller', 'seller-unknown'))
  for (const [place, { vatId }] of [['seller', seller] as const, ['buyer', buyer] as const])
    if (vatId !== undefined && !countries.has(vatId.slice(0, 2)))
      found.push(broken('BR-CO-09', place, 'vat-country-unknown', { country: vatId.slice(0, 2) }))
  for (const [place, { country }, rule] of [
    ['seller', seller, 'BR-09'] as const,
    ['buyer', buyer, 'BR-11'] as const,
  ])
    if (!countries.has(country) || country === 'EL')
      found.push(broken(rule, place, 'country-unknown', { country }))
  return found
}

function lineFindings(line: Invoice['lines'][number], index: number): readonly InvoiceFinding[] {
  if (line.category === 'S')
    return line.rateBasisPoints > 0 ? [] : [broken('BR-S-05', index + 1, 'standard-rate-zero')]
  if (line.rateBasisPoints === 0) return []
  return [broken(`BR-${line.category}-05`, index + 1, 'kind-without-rate')]
}

/** Who must be known to the tax office, and who must not, by kind of tax. */
function categoryFindings(invoice: Invoice, category: Category): readonly InvoiceFinding[] {
  const { seller, buyer, reasons } = invoice
  const found: InvoiceFinding[] = []
  const known = seller.vatId !== undefined || seller.taxNumber !== undefined
  if (category === 'O') {
    if (seller.vatId !== undefined || buyer.vatId !== undefined)
      found.push(broken('BR-O-02', 'lines', 'outside-with-vat'))
  } else if (!known) found.push(broken(`BR-${category}-02`, 'seller', 'seller-without-tax-number'))
  if (category === 'AE' && buyer.vatId === undefined && buyer.registerNumber === undefined)
    found.push(broken('BR-AE-02', 'buyer', 'buyer-vat-missing'))
  if ((category === 'E' || category === 'AE' || category === 'O') && reasons[category] === undefined)
    found.push(broken(`BR-${category}-10`, 'reasons', 'reason-missing'))
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
