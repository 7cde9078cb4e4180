/** For tests: sound invoices of every kind of tax; every name and number invented. */
import { draftInvoice, type Invoice, type InvoiceDetails } from '../index.ts'

export const seller: Invoice['seller'] = {
  name: 'Harbour Keys & Sons <van 2>',
  vatId: 'PT999999990',
  registerNumber: 'R 4471',
  street: 'Quay street 3',
  postCode: '1000-001',
  city: 'Ponta Clara',
  country: 'PT',
}
export const details: InvoiceDetails = {
  number: '2026-017',
  issued: '2026-01-12',
  delivered: '2026-01-12',
  due: '2026-01-26',
  seller,
  buyer: { name: 'Tidewater Hire', vatId: 'PT123456789', country: 'PT' },
  category: 'S',
  rateBasisPoints: 2300,
  priceIncludesTax: true,
}
export const price = {
  currency: 'EUR',
  lines: [
    { text: 'Two flip keys, cut and taught', amountMinor: 26_000 },
    { text: 'Attendance at the quay', amountMinor: 9_000 },
    { text: 'Taken off: the customer waited', amountMinor: -1_500 },
  ],
}
export const without = (party: Invoice['seller'], ...keys: (keyof Invoice['seller'])[]) =>
  Object.fromEntries(
    Object.entries(party).filter(([key]) => !keys.includes(key as never)),
  ) as Invoice['seller']

/** One sound invoice of each kind of tax. */
export const sound: Readonly<Record<string, Invoice>> = {
  S: draftInvoice(price, details),
  'S, net, paid by transfer': draftInvoice(price, {
    ...details,
    priceIncludesTax: false,
    payment: 'transfer',
    account: 'PT50 0002 0123 1234 5678 9015 4',
    paidMinor: 5_000,
  }),
  Z: draftInvoice(price, { ...details, category: 'Z', rateBasisPoints: 0, payment: 'cash' }),
  E: draftInvoice(price, {
    ...details,
    category: 'E',
    rateBasisPoints: 0,
    reasons: { E: 'Small business' },
    seller: { ...without(seller, 'vatId'), taxNumber: '17/204' },
  }),
  AE: draftInvoice(price, {
    ...details,
    category: 'AE',
    rateBasisPoints: 0,
    reasons: { AE: 'Reverse charge' },
    payment: 'card',
  }),
  O: draftInvoice(price, {
    ...details,
    category: 'O',
    rateBasisPoints: 0,
    reasons: { O: 'Not subject to VAT' },
    seller: without(seller, 'vatId'),
    buyer: { name: 'Keeper of the van', country: 'PT' },
    terms: 'Paid on the spot.',
  }),
}
export const mixed: Invoice = {
  ...(sound.S as Invoice),
  roundingMinor: 0,
  lines: [
    { text: 'Key', netMinor: 10_005, category: 'S', rateBasisPoints: 2300 },
    { text: 'Book', netMinor: 2_033, category: 'S', rateBasisPoints: 600 },
    { text: 'Fee of the office', netMinor: 700, category: 'Z', rateBasisPoints: 0 },
  ],
}
