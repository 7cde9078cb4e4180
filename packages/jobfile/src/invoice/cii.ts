/**
 * @module An invoice as UN/CEFACT Cross Industry Invoice (D16B), in the order and with the terms that the syntax
 * binding of EN 16931-3-3 gives. BT numbers are those of EN 16931-1.
 */
import { amountsOf, type Category, type Invoice, type InvoiceAmounts } from './amounts.ts'
import { type Element, element, xmlText } from './xml.ts'

const spaces = {
  'xmlns:rsm': 'urn:un:unece:uncefact:data:standard:CrossIndustryInvoice:100',
  'xmlns:ram': 'urn:un:unece:uncefact:data:standard:ReusableAggregateBusinessInformationEntity:100',
  'xmlns:udt': 'urn:un:unece:uncefact:data:standard:UnqualifiedDataType:100',
  'xmlns:qdt': 'urn:un:unece:uncefact:data:standard:QualifiedDataType:100',
} as const

/** BT-24: the invoice follows EN 16931 and no narrower use of it. */
const guideline = 'urn:cen.eu:en16931:2017'
/**
 * UNTDID 1001: commercial invoice. Something given back is an invoice with negative amounts; a credit note (381) would
 * state the same with positive ones, and both at once would owe it twice.
 */
const typeCode = '380'
/** UNTDID 4461. */
const paymentCode = { cash: '10', card: '48', transfer: '30' } as const
/** UN/ECE Recommendation 20: one (piece). */
const pieces = 'C62'

/** The invoice as XML text. The same invoice always gives the same text. */
export function invoiceXml(invoice: Invoice): string {
  const amounts = amountsOf(invoice)
  return xmlText(
    element(
      'rsm:CrossIndustryInvoice',
      [
        element('rsm:ExchangedDocumentContext', [
          element('ram:GuidelineSpecifiedDocumentContextParameter', [ram('ID', guideline)]),
        ]),
        element('rsm:ExchangedDocument', [
          ram('ID', invoice.number),
          ram('TypeCode', typeCode),
          element('ram:IssueDateTime', [day(invoice.issued)]),
        ]),
        element('rsm:SupplyChainTradeTransaction', [
          ...invoice.lines.map(line),
          element('ram:ApplicableHeaderTradeAgreement', [
            party('ram:SellerTradeParty', invoice.seller),
            party('ram:BuyerTradeParty', invoice.buyer),
          ]),
          element('ram:ApplicableHeaderTradeDelivery', [
            invoice.delivered === undefined
              ? null
              : element('ram:ActualDeliverySupplyChainEvent', [
                  element('ram:OccurrenceDateTime', [day(invoice.delivered)]),
                ]),
          ]),
          settlement(invoice, amounts),
        ]),
      ],
      spaces,
    ),
  )
}

const ram = (name: string, text: string, attributes: Element['attributes'] = {}) =>
  element(`ram:${name}`, text, attributes)
const maybe = (name: string, text: string | undefined) => (text === undefined ? null : ram(name, text))

/** UNTDID 2379, code 102: CCYYMMDD. */
const day = (date: string) => element('udt:DateTimeString', date.replaceAll('-', ''), { format: '102' })

/** Minor units as a decimal with two places (BR-DEC). */
function decimal(minor: number): string {
  const digits = String(Math.abs(minor)).padStart(3, '0')
  return `${minor < 0 ? '-' : ''}${digits.slice(0, -2)}.${digits.slice(-2)}`
}

/** A rate as a percentage with two places. */
const percent = (basisPoints: number) => decimal(basisPoints)

/** BG-25. A price may not be negative (BR-27): what is taken off is minus one piece. */
function line(own: Invoice['lines'][number], index: number): Element {
  return element('ram:IncludedSupplyChainTradeLineItem', [
    element('ram:AssociatedDocumentLineDocument', [ram('LineID', String(index + 1))]),
    element('ram:SpecifiedTradeProduct', [ram('Name', own.text)]),
    element('ram:SpecifiedLineTradeAgreement', [
      element('ram:NetPriceProductTradePrice', [ram('ChargeAmount', decimal(Math.abs(own.netMinor)))]),
    ]),
    element('ram:SpecifiedLineTradeDelivery', [
      ram('BilledQuantity', own.netMinor < 0 ? '-1' : '1', { unitCode: pieces }),
    ]),
    element('ram:SpecifiedLineTradeSettlement', [
      element('ram:ApplicableTradeTax', [
        ram('TypeCode', 'VAT'),
        ram('CategoryCode', own.category),
        rate(own.category, own.rateBasisPoints),
      ]),
      element('ram:SpecifiedTradeSettlementLineMonetarySummation', [
        ram('LineTotalAmount', decimal(own.netMinor)),
      ]),
    ]),
  ])
}

/** Outside the scope of the tax there is no rate, not even zero (BR-O-05, BR-48). */
function rate(category: Category, basisPoints: number): Element | null {
  return category === 'O' ? null : ram('RateApplicablePercent', percent(basisPoints))
}

function party(name: string, own: Invoice['seller']): Element {
  const { vatId, taxNumber, registerNumber } = own
  return element(name, [
    ram('Name', own.name),
    registerNumber === undefined
      ? null
      : element('ram:SpecifiedLegalOrganization', [ram('ID', registerNumber)]),
    element('ram:PostalTradeAddress', [
      maybe('PostcodeCode', own.postCode),
      maybe('LineOne', own.street),
      maybe('CityName', own.city),
      ram('CountryID', own.country),
    ]),
    ...[['FC', name === 'ram:SellerTradeParty' ? taxNumber : undefined] as const, ['VA', vatId] as const].map(
      ([schemeID, id]) =>
        id === undefined ? null : element('ram:SpecifiedTaxRegistration', [ram('ID', id, { schemeID })]),
    ),
  ])
}

function settlement(invoice: Invoice, amounts: InvoiceAmounts): Element {
  const { currency, payment, account, terms, due } = invoice
  return element('ram:ApplicableHeaderTradeSettlement', [
    ram('InvoiceCurrencyCode', currency),
    payment === undefined
      ? null
      : element('ram:SpecifiedTradeSettlementPaymentMeans', [
          ram('TypeCode', paymentCode[payment]),
          payment !== 'transfer' || account === undefined
            ? null
            : element('ram:PayeePartyCreditorFinancialAccount', [accountId(account)]),
        ]),
    ...amounts.shares.map(({ category, rateBasisPoints, basisMinor, taxMinor }) =>
      element('ram:ApplicableTradeTax', [
        ram('CalculatedAmount', decimal(taxMinor)),
        ram('TypeCode', 'VAT'),
        category === 'S' || category === 'Z' ? null : maybe('ExemptionReason', invoice.reasons[category]),
        ram('BasisAmount', decimal(basisMinor)),
        ram('CategoryCode', category),
        rate(category, rateBasisPoints),
      ]),
    ),
    terms === undefined && due === undefined
      ? null
      : element('ram:SpecifiedTradePaymentTerms', [
          maybe('Description', terms),
          due === undefined ? null : element('ram:DueDateDateTime', [day(due)]),
        ]),
    element('ram:SpecifiedTradeSettlementHeaderMonetarySummation', [
      ram('LineTotalAmount', decimal(amounts.linesMinor)),
      ram('TaxBasisTotalAmount', decimal(amounts.basisMinor)),
      ram('TaxTotalAmount', decimal(amounts.taxMinor), { currencyID: currency }),
      invoice.roundingMinor === 0 ? null : ram('RoundingAmount', decimal(invoice.roundingMinor)),
      ram('GrandTotalAmount', decimal(amounts.grossMinor)),
      invoice.paidMinor === 0 ? null : ram('TotalPrepaidAmount', decimal(invoice.paidMinor)),
      ram('DuePayableAmount', decimal(amounts.dueMinor)),
    ]),
  ])
}

/** BT-84: an IBAN (ISO 13616) under its own name, any other account under another. */
function accountId(account: string): Element {
  const solid = account.replaceAll(' ', '')
  return /^[A-Z]{2}\d{2}[A-Z0-9]{11,30}$/.test(solid) ? ram('IBANID', solid) : ram('ProprietaryID', account)
}
