import { useState } from 'react'
import { CustodyPart } from '../../custody/CustodyPart.tsx'
import { HandOn } from '../../custody/HandOn.tsx'
import { Choice } from '../../form/Choice.tsx'
import { Words } from '../../form/Words.tsx'
import { t } from '../../words/index.ts'
import { useDesk } from '../desk.ts'
import { factSentence } from '../fact-sentence.ts'
import { Part, RecordForm, useFresh } from '../Part.tsx'

const outcomes = ['used', 'spoiled', 'returned'] as const

/** After the handover: what became of each blank, what is kept until when, and handing the job on. */
export function CloseChapter() {
  return (
    <>
      <BlankPart />
      <CustodyPart />
      <HandOn />
    </>
  )
}

function BlankPart() {
  const { facts } = useDesk()
  const used = facts.filter((fact) => fact.kind === 'blank-used')
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={t('close.blank')}
      need="note-the-blank nothing-left"
      settled={used.length > 0}
      more={t('close.blank.again')}
      about={
        used.length > 0 && (
          <ul>
            {used.map((fact) => (
              <li key={fact.id}>{factSentence(fact)}</li>
            ))}
          </ul>
        )
      }
    >
      <BlankForm key={fresh} onDone={renew} />
    </Part>
  )
}

function BlankForm({ onDone }: { readonly onDone: () => void }) {
  const { state } = useDesk()
  const [item, setItem] = useState(state.blanks.at(-1)?.item ?? '')
  const [outcome, setOutcome] = useState<(typeof outcomes)[number] | null>(null)
  const [key, setKey] = useState<string | null>('')
  const keys = state.keys.filter((one) => one.origin === 'new')
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() =>
        outcome === null
          ? null
          : [{ kind: 'blank-used', body: { item, outcome, ...(key === null || key === '' ? {} : { key }) } }]
      }
    >
      <Words label={t('blank.item')} value={item} onChange={setItem} />
      {keys.length > 0 && (
        <Choice
          label={t('close.key')}
          value={key}
          onChange={setKey}
          options={[
            ['', t('close.no-key')],
            ...keys.map((one) => [one.id, t('rehearsal.key', { key: one.id })] as const),
          ]}
        />
      )}
      <Choice
        label={t('close.outcome')}
        value={outcome}
        onChange={setOutcome}
        options={outcomes.map((one) => [one, t(`close.outcome.${one}`)])}
      />
    </RecordForm>
  )
}
