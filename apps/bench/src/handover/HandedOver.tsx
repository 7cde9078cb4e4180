import { useState } from 'react'
import { Several } from '../form/Several.tsx'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { t } from '../words/index.ts'
import { clock, day } from '../words/instants.ts'

/** The car and its keys left the technician's hands: the clocks of what is kept begin here. */
export function HandedOver() {
  const { state, zone } = useDesk()
  const { handedOver, seal } = state
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={t('handed.title')}
      need="hand-over"
      settled={handedOver !== null}
      more={t('handed.again')}
      about={
        <>
          {seal === null && <p>{t('handed.first')}</p>}
          {handedOver !== null && (
            <p>
              {t('handed.done', {
                to: handedOver.to,
                day: day(handedOver.at, zone),
                time: clock(handedOver.at, zone),
                count: handedOver.keys.length,
                keys: handedOver.keys.join(', '),
              })}
            </p>
          )}
        </>
      }
    >
      {seal !== null && <HandedForm key={fresh} onDone={renew} />}
    </Part>
  )
}

function HandedForm({ onDone }: { readonly onDone: () => void }) {
  const { state } = useDesk()
  const here = state.keys.filter((key) => key.onBench).map((key) => key.id)
  const [to, setTo] = useState('')
  const [keys, setKeys] = useState<readonly string[]>(here)
  return (
    <RecordForm
      submit={t('handed.record')}
      onDone={onDone}
      drafts={() => [{ kind: 'vehicle-handed-over', body: { to, keys: [...keys] } }]}
    >
      <Words
        label={t('handed.to')}
        hint={t('handed.to.hint')}
        value={to}
        onChange={setTo}
        autoCapitalize="words"
      />
      {here.length > 0 && (
        <Several
          label={t('handed.keys')}
          options={here.map((key) => [key, t('rehearsal.key', { key })] as const)}
          value={keys}
          onChange={setKeys}
        />
      )}
    </RecordForm>
  )
}
