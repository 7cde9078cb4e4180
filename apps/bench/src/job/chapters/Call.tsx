import { useState } from 'react'
import { SpokenWords } from '../../capture/SpokenWords.tsx'
import { Amount } from '../../form/Amount.tsx'
import { Names } from '../../form/Names.tsx'
import { SheetsPart } from '../../handover/Sheets.tsx'
import { listMark, say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { useDesk } from '../desk.ts'
import { Facts } from '../Facts.tsx'
import { Part, RecordForm, useFresh } from '../Part.tsx'

/** The call: which job this is, which keys are said to exist, and notes. */
export function CallChapter() {
  const { state } = useDesk()
  const { opened, tally, absentKeys, notes } = state
  const [fresh, renew] = useFresh()
  return (
    <>
      {opened !== null && (
        <Facts
          rows={[
            [t('new.vehicle'), opened.vehicle],
            [t('new.place'), `${opened.place} (${opened.zone})`],
            [t('new.work'), say(`work.${opened.work}`)],
            [t('new.customer'), say(`customer.${opened.customer}`)],
          ]}
        />
      )}
      <Part
        title={t('call.keys')}
        need="keys-not-asked"
        settled={tally.saidToExist !== null}
        more={t('call.keys.again')}
        about={
          tally.saidToExist !== null && (
            <p>
              {t('line.said', { count: tally.saidToExist })}
              {absentKeys.length > 0 && `; ${t('line.absent', { names: absentKeys.join(listMark()) })}`}
            </p>
          )
        }
      >
        <KeysSaid key={`said-${fresh}`} onDone={renew} />
      </Part>
      <Part
        title={t('call.notes')}
        settled
        more={t('call.note.add')}
        about={
          notes.length > 0 && (
            <ul>
              {notes.map((note) => (
                <li key={`${note.at}${note.text}`} dir="auto">
                  {note.text}
                </li>
              ))}
            </ul>
          )
        }
      >
        <Note key={`note-${fresh}`} onDone={renew} />
      </Part>
      <SheetsPart only={['bring-this']} />
    </>
  )
}

function KeysSaid({ onDone }: { readonly onDone: () => void }) {
  const { state } = useDesk()
  const [count, setCount] = useState<number | null>(state.tally.saidToExist)
  const [absent, setAbsent] = useState<readonly string[]>(state.absentKeys)
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => (count === null ? null : [{ kind: 'keys-said', body: { count, absent: [...absent] } }])}
    >
      <Amount
        label={t('call.count')}
        hint={t('call.count.hint')}
        value={count}
        onChange={setCount}
        most={99}
      />
      <Names label={t('call.absent')} hint={t('call.absent.hint')} value={absent} onChange={setAbsent} />
    </RecordForm>
  )
}

function Note({ onDone }: { readonly onDone: () => void }) {
  const [text, setText] = useState('')
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => [{ kind: 'note-written', body: { text } }]}
    >
      <SpokenWords label={t('call.note')} value={text} onChange={setText} />
    </RecordForm>
  )
}
