import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { t } from '../words/index.ts'
import { ShownAs } from './ShownAs.tsx'

type When = 'before' | 'after'
const sources = ['car', 'equipment', 'recording'] as const

/** How many keys the car says it accepts, or why it does not say. */
export function KeyCount({ when }: { readonly when: When }) {
  const { state } = useDesk()
  const count = when === 'before' ? state.tally.storedBefore : state.tally.storedAfter
  const read = state.countRead[when]
  const [fresh, renew] = useFresh()
  return (
    <>
      <Part
        title={t(`count.${when}`)}
        need={`count-${when}-missing`}
        settled={read}
        more={t('count.again')}
        about={read && <p>{count === null ? t('count.none') : t('count.read', { count })}</p>}
      >
        <CountForm key={fresh} when={when} onDone={renew} />
      </Part>
      <ShownAs />
    </>
  )
}

function CountForm({ when, onDone }: { readonly when: When; readonly onDone: () => void }) {
  const [shown, setShown] = useState<'shown' | 'not-shown' | null>('shown')
  const [count, setCount] = useState<number | null>(null)
  const [source, setSource] = useState<(typeof sources)[number] | null>('equipment')
  const [because, setBecause] = useState('')
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => {
        if (source === null || (shown === 'shown' && count === null)) return null
        const body = shown === 'shown' ? { when, count, source } : { when, count: null, source, because }
        return [{ kind: 'key-count-read', body }]
      }}
    >
      <Choice
        label={t('count.shows')}
        value={shown}
        onChange={setShown}
        options={[
          ['shown', t('count.shows.yes')],
          ['not-shown', t('count.shows.no')],
        ]}
      />
      {shown === 'shown' ? (
        <Amount
          label={t('count.entries')}
          hint={t('count.entries.hint')}
          value={count}
          onChange={setCount}
          most={99}
        />
      ) : (
        <Words label={t('count.because')} value={because} onChange={setBecause} />
      )}
      <Choice
        label={t('count.source')}
        value={source}
        onChange={setSource}
        options={sources.map((one) => [one, t(`count.source.${one}`)])}
      />
    </RecordForm>
  )
}
