/** @module The invoice that the document carries, in words: the attached data and these lines say the same. */
import { amountsOf, type Invoice } from '../../invoice/index.ts'
import { listText, moneyText } from '../../words/index.ts'
import type { Block } from './blocks.ts'
import { heading, type Pen, quiet } from './pen.ts'

/** Number, parties, lines, tax and totals; nothing when the record holds no invoice. */
export function invoice(pen: Pen): readonly Block[] {
  const { say, state, language, edition } = pen
  const own = state.invoice
  if (own === null || edition < 2) return []
  const money = (minor: number) => moneyText(language, own.currency, minor)
  const amounts = amountsOf(own)
  const total = (label: string, minor: number) => ['', label, money(minor)]
  return [
    heading(say('doc.invoice', { number: own.number })),
    {
      kind: 'facts',
      rows: [
        { label: say('doc.invoice-issued'), value: own.issued },
        ...(own.delivered === undefined
          ? []
          : [{ label: say('doc.invoice-delivered'), value: own.delivered }]),
        { label: say('doc.invoice-seller'), value: partyText(pen, own.seller) },
        { label: say('doc.invoice-buyer'), value: partyText(pen, own.buyer) },
        ...(own.due === undefined ? [] : [{ label: say('doc.invoice-by'), value: own.due }]),
        ...(own.terms === undefined ? [] : [{ label: say('doc.invoice-terms'), value: own.terms }]),
        ...(own.account === undefined
          ? []
          : [{ label: say('doc.invoice-account'), value: own.account, mono: true }]),
      ],
    },
    {
      kind: 'table',
      columns: [
        { text: say('doc.price-line'), share: 0.48 },
        { text: say('doc.invoice-tax'), share: 0.3 },
        { text: say('doc.invoice-net'), share: 0.22, align: 'right' },
      ],
      rows: [
        ...own.lines.map(({ text, category, rateBasisPoints, netMinor }) => [
          text,
          taxText(pen, category, rateBasisPoints),
          money(netMinor),
        ]),
        total(say('doc.invoice-sum'), amounts.basisMinor),
        ...amounts.shares.map(({ category, rateBasisPoints, basisMinor, taxMinor }) => [
          '',
          say('doc.invoice-tax-on', {
            tax: taxText(pen, category, rateBasisPoints),
            basis: money(basisMinor),
          }),
          money(taxMinor),
        ]),
        total(say('doc.invoice-gross'), amounts.grossMinor),
        ...(own.roundingMinor === 0 ? [] : [total(say('doc.invoice-rounding'), own.roundingMinor)]),
        ...(own.paidMinor === 0 ? [] : [total(say('doc.invoice-paid'), -own.paidMinor)]),
        total(say('doc.invoice-due'), amounts.dueMinor),
      ],
      lastIsTotal: true,
    },
    ...Object.values(own.reasons)
      .filter((reason) => reason !== undefined)
      .map((reason) => quiet(say('doc.invoice-reason', { reason }))),
    quiet(say('doc.invoice-attached')),
  ]
}

function partyText({ say, language }: Pen, party: Invoice['seller']): string {
  const { name, street, postCode, city, country, vatId, taxNumber, registerNumber } = party
  const place = [postCode, city].filter((part) => part !== undefined).join(' ')
  return listText(
    language,
    [
      name,
      street,
      place === '' ? undefined : place,
      country,
      vatId === undefined ? undefined : say('doc.invoice-vat', { id: vatId }),
      taxNumber === undefined ? undefined : say('doc.invoice-tax-number', { id: taxNumber }),
      registerNumber === undefined ? undefined : say('doc.invoice-register', { id: registerNumber }),
    ].filter((part) => part !== undefined),
  )
}

/** The kind of tax and, where there is one, its rate: hundredths of a percent as a decimal. */
function taxText({ say }: Pen, category: Invoice['lines'][number]['category'], basisPoints: number): string {
  if (category !== 'S') return say(`doc.invoice-category.${category}`)
  const percent = `${Math.floor(basisPoints / 100)}.${String(basisPoints % 100).padStart(2, '0')}`
  return say('doc.invoice-category.S', { percent: percent.replace(/\.?0+$/, '') })
}
