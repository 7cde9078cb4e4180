import { neutralRetention, retentionClocks, retentionPackOf } from '@shearline/jobfile'
import { useMemo, useState } from 'react'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { Facts } from '../job/Facts.tsx'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { packLabelWords } from '../policy/pack-text.ts'
import { packNamed, usePacks } from '../policy/usePacks.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { day } from '../words/instants.ts'

/** What is kept of this job and until when, what stops a deletion, and what was deleted with proof. */
export function CustodyPart() {
  const { job, facts, state, zone } = useDesk()
  const { packs } = usePacks()
  const pack = packNamed(packs, state.policy?.pack)
  const {
    clocks,
    holds,
    deletions,
    pack: named,
  } = useMemo(
    () => retentionClocks(job, facts, Date.now(), pack === null ? neutralRetention : retentionPackOf(pack)),
    [job, facts, pack],
  )
  const now = Date.now()
  const dayOf = (milliseconds: number) => day(new Date(milliseconds).toISOString(), zone)
  return (
    <Part title={t('custody.title')} about={<p>{t('custody.pack', { pack: packLabelWords(named) })}</p>}>
      <Facts
        rows={clocks.map((clock) => [
          say(`retention.${clock.class}`),
          <span key={clock.class}>
            {t('custody.class', { count: clock.kept.length })}
            {clock.kept.length > 0 && (
              <>
                {'; '}
                {clock.until === null
                  ? t('custody.not-running')
                  : t(clock.until <= now ? 'custody.due' : 'custody.until', { day: dayOf(clock.until) })}
              </>
            )}
            {clock.deleted > 0 && `; ${t('custody.deleted', { count: clock.deleted })}`}
          </span>,
        ])}
      />
      {holds.map((hold) => (
        <HoldStands key={hold.fact} hold={hold} day={day(hold.at, zone)} />
      ))}
      {deletions.length > 0 && (
        <ul>
          {deletions.map((one) => (
            <li key={`${one.at} ${one.class}`}>
              {t('custody.deletion', {
                what: say(`retention.${one.class}`),
                count: one.items,
                day: day(one.at, zone),
                by: one.by,
                why: one.why,
                keys: String(one.keysDestroyed),
              })}
            </li>
          ))}
        </ul>
      )}
      <details className={formCss.more}>
        <summary>{t('custody.hold')}</summary>
        <PlaceHold />
      </details>
    </Part>
  )
}

function PlaceHold() {
  const [fresh, renew] = useFresh()
  return <HoldForm key={fresh} onDone={renew} />
}

function HoldForm({ onDone }: { readonly onDone: () => void }) {
  const [reason, setReason] = useState('')
  return (
    <RecordForm
      submit={t('custody.hold.place')}
      onDone={onDone}
      drafts={() => [{ kind: 'hold-placed', body: { reason } }]}
    >
      <Words label={t('custody.hold.why')} value={reason} onChange={setReason} />
    </RecordForm>
  )
}

function HoldStands({
  hold,
  day: since,
}: {
  readonly hold: { readonly fact: string; readonly reason: string; readonly by: string }
  readonly day: string
}) {
  const [reason, setReason] = useState('')
  return (
    <div className={formCss.problem}>
      <p>{t('custody.hold.stands', { reason: hold.reason, by: hold.by, day: since })}</p>
      <details className={formCss.more}>
        <summary>{t('custody.hold.lift')}</summary>
        <RecordForm
          submit={t('custody.hold.lift')}
          drafts={() => [{ kind: 'hold-lifted', body: { hold: hold.fact, reason } }]}
        >
          <Words label={t('reason')} value={reason} onChange={setReason} />
        </RecordForm>
      </details>
    </div>
  )
}
