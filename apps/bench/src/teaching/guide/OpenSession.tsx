import { useDesk } from '../../job/desk.ts'
import { Part, RecordForm } from '../../job/Part.tsx'
import { listMark } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { wrongTries } from '../plan-of.ts'
import { ruleOf } from '../rule/rule-of.ts'
import { isNoteOf, noteOf } from '../step-code.ts'
import css from '../teaching.module.css'
import { teachingOrder } from '../teaching-order.ts'
import { WaitClock } from './WaitClock.tsx'

/** Opening a session: what to say, a code that is refused and the wait it costs, and the keys already taught. */
export function OpenSession() {
  const { state } = useDesk()
  const { sessionClosed, taught, rehearsal, rule } = state.teaching
  const order = teachingOrder(state)
  const started = sessionClosed || taught.length > 0
  return (
    <Part
      title={t('teach.open')}
      need={sessionClosed ? 'session-not-opened' : 'session-not-opened key-not-taught session-not-closed'}
      settled={sessionClosed}
      more={t('teach.open.again')}
      about={
        started && (
          <>
            <p>{sessionClosed ? t('teach.is-closed') : t('teach.is-stopped')}</p>
            <ul className={css.plainList}>
              {taught.map((key) => (
                <li key={key}>{t('teach.taught', { key })}</li>
              ))}
            </ul>
          </>
        )
      }
    >
      {rule?.gate !== undefined && <Code />}
      <RecordForm
        submit={t('teach.open.record')}
        drafts={() => [{ kind: 'session-opened', body: { rehearsed: rehearsal !== null } }]}
      >
        <p>
          {rehearsal === null
            ? t('teach.not-rehearsed')
            : t('teach.rehearsed', { order: order.join(listMark()) })}
        </p>
        <p className={css.say}>{t('guide.say.open')}</p>
      </RecordForm>
    </Part>
  )
}

const wrongCode = { code: 'cause.wrong-code' } as const

/** A code is entered at the car. Here only a refused try is noted, because some cars make one wait for it. */
export function Code() {
  const { state } = useDesk()
  const { rule, stepsSince } = state.teaching
  const gate = rule === null ? undefined : ruleOf(rule).gate
  if (gate === undefined) return null
  const tries = wrongTries(state)
  const last = stepsSince.findLast((step) => step.outcome === 'failed' && isNoteOf(step, wrongCode))
  const most = gate.triesBeforeWait
  // Not known: one try may be all there is (ENR-17).
  const waits = tries > 0 && tries % (most === 'unknown' ? 1 : most) === 0
  return (
    <RecordForm
      submit={t('code.refused')}
      drafts={() => [
        { kind: 'step-done', body: { ...noteOf(wrongCode), outcome: 'failed', because: t('code.because') } },
      ]}
    >
      <p>
        {t('code.tries', { count: tries })}{' '}
        {most === 'unknown' ? t('code.most-unknown') : t('code.most', { count: most })}
      </p>
      {waits && last !== undefined && (
        <WaitClock since={last.at} seconds={gate.waitSeconds === 'unknown' ? null : gate.waitSeconds} />
      )}
      {waits && <p className={css.under}>{t(`wait.ignition.${gate.ignitionOff}`)}</p>}
    </RecordForm>
  )
}
