import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { Facts } from '../job/Facts.tsx'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { minorOf, money } from '../words/amounts.ts'
import { t } from '../words/index.ts'

interface Line {
  readonly text: string
  readonly amount: number | null
}

const usualCurrencies = ['EUR', 'GBP', 'USD', 'CHF', 'PLN', 'AUD', 'CAD', 'NZD']

/** The price as agreed, line by line, in whole minor units. */
export function PricePart() {
  const { price } = useDesk().state
  const [fresh, renew] = useFresh()
  const sum = price?.lines.reduce((total, line) => total + line.amountMinor, 0) ?? 0
  return (
    <Part
      title={t('price.title')}
      need="price-not-agreed"
      settled={price !== null}
      more={t('price.again')}
      about={
        price !== null && (
          <Facts
            rows={[
              ...price.lines.map((line) => [line.text, money(line.amountMinor, price.currency)] as const),
              [t('price.sum'), <strong key="sum">{money(sum, price.currency)}</strong>],
            ]}
          />
        )
      }
    >
      <PriceForm key={fresh} onDone={renew} />
    </Part>
  )
}

function PriceForm({ onDone }: { readonly onDone: () => void }) {
  const [currency, setCurrency] = useState('EUR')
  const [lines, setLines] = useState<readonly Line[]>([{ text: t('price.usual'), amount: null }])
  const change = (index: number, line: Partial<Line>) =>
    setLines(lines.map((one, at) => (at === index ? { ...one, ...line } : one)))
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => [
        {
          kind: 'price-agreed',
          body: {
            currency,
            lines: lines.map((line) => ({
              text: line.text,
              amountMinor: minorOf(line.amount ?? 0, currency),
            })),
          },
        },
      ]}
    >
      <Words
        label={t('price.currency')}
        value={currency}
        onChange={(value) => setCurrency(value.toUpperCase())}
        maxLength={3}
        usual={usualCurrencies}
        mono
      />
      {lines.map((line, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines are only appended while the form is open
        <div key={index} className={formCss.row}>
          <Words
            label={t('price.line', { number: index + 1 })}
            value={line.text}
            onChange={(text) => change(index, { text })}
          />
          <Amount
            label={t('price.amount', { number: index + 1 })}
            value={line.amount}
            onChange={(amount) => change(index, { amount })}
            least={-1_000_000}
            step={5}
            decimals={2}
          />
        </div>
      ))}
      <div className={formCss.foot}>
        <button
          type="button"
          className={formCss.plain}
          onClick={() => setLines([...lines, { text: '', amount: null }])}
        >
          {t('price.another')}
        </button>
      </div>
    </RecordForm>
  )
}
