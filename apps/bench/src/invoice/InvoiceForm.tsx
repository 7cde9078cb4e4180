import {
  type Category,
  draftInvoice,
  type Invoice,
  invoiceFindings,
  type JobState,
  readBody,
  sayInvoiceFinding,
} from '@shearline/jobfile'
import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { RecordForm } from '../job/Part.tsx'
import { language, t } from '../words/index.ts'
import { PartyFields } from './PartyFields.tsx'
import { emptyParty, keepSeller, keptSeller, partyOf } from './seller.ts'

const categories = ['S', 'Z', 'E', 'AE', 'O'] as const satisfies readonly Category[]

/** A rule that is not kept, in the words of the bench. */
interface Broken {
  readonly code: string
  readonly where: string
  readonly what: string
}

/** Everything an invoice needs beside the agreed price. Rules that are not kept are named before anything is recorded. */
export function InvoiceForm({
  price,
  onDone,
}: {
  readonly price: NonNullable<JobState['price']>
  readonly onDone: () => void
}) {
  const [number, setNumber] = useState('')
  const [issued, setIssued] = useState(() => new Date().toISOString().slice(0, 10))
  const [due, setDue] = useState('')
  const [terms, setTerms] = useState('')
  const [seller, setSeller] = useState(keptSeller)
  const [buyer, setBuyer] = useState(() => ({ ...emptyParty, country: keptSeller().country }))
  const [category, setCategory] = useState<Category>('S')
  const [percent, setPercent] = useState<number | null>(null)
  const [reason, setReason] = useState('')
  const [includes, setIncludes] = useState<'yes' | 'no'>('yes')
  const [broken, setBroken] = useState<readonly Broken[]>([])
  const needsReason = category === 'E' || category === 'AE' || category === 'O'

  const drafts = () => {
    keepSeller(seller)
    const draft = draftInvoice(price, {
      number: number.trim(),
      issued: issued.trim(),
      seller: partyOf(seller),
      buyer: partyOf(buyer),
      category,
      rateBasisPoints: Math.round((percent ?? 0) * 100),
      priceIncludesTax: includes === 'yes',
      ...(due.trim() === '' ? {} : { due: due.trim() }),
      ...(terms.trim() === '' ? {} : { terms: terms.trim() }),
      ...(needsReason && reason.trim() !== '' ? { reasons: { [category]: reason.trim() } } : {}),
    })
    const read = readBody('invoice-issued', draft)
    const found: readonly Broken[] = read.ok
      ? invoiceFindings(read.body).map((one) => ({ code: one.code, ...sayInvoiceFinding(language(), one) }))
      : [{ code: 'BR-01', where: read.path, what: read.what }]
    setBroken(found)
    return found.length === 0 ? [{ kind: 'invoice-issued' as const, body: draft as Invoice }] : null
  }

  return (
    <RecordForm submit={t('record')} onDone={onDone} drafts={drafts}>
      <Words label={t('invoice.number')} value={number} onChange={setNumber} mono />
      <Words label={t('invoice.issued')} value={issued} onChange={setIssued} mono inputMode="numeric" />
      <Words label={t('invoice.due-day')} value={due} onChange={setDue} mono inputMode="numeric" optional />
      <Words
        label={t('invoice.terms')}
        value={terms}
        onChange={setTerms}
        usual={t('invoice.terms.usual').split('|')}
        optional
      />
      <Choice
        label={t('invoice.includes')}
        options={[
          ['yes', t('invoice.includes.yes')],
          ['no', t('invoice.includes.no')],
        ]}
        value={includes}
        onChange={setIncludes}
      />
      <Choice
        label={t('invoice.category')}
        options={categories.map((one) => [one, t(`invoice.category.${one}`)] as const)}
        value={category}
        onChange={setCategory}
        hint={t('invoice.law')}
      />
      {category === 'S' && (
        <Amount
          label={t('invoice.rate')}
          value={percent}
          onChange={setPercent}
          least={0}
          most={100}
          decimals={2}
        />
      )}
      {needsReason && <Words label={t('invoice.reason')} value={reason} onChange={setReason} />}
      <PartyFields title={t('invoice.buyer')} value={buyer} onChange={setBuyer} />
      <PartyFields title={t('invoice.seller')} value={seller} onChange={setSeller} seller />
      {broken.length > 0 && (
        <div className={formCss.problem} role="alert">
          <p>{t('invoice.broken', { count: broken.length })}</p>
          <ul>
            {broken.map(({ code, where, what }) => (
              <li key={`${code} ${where}`}>{t('invoice.rule', { rule: code, where, what })}</li>
            ))}
          </ul>
        </div>
      )}
    </RecordForm>
  )
}
