import type { JobState } from '@shearline/jobfile'
import type { WayBack as Back, OrderReason, SessionRehearsal, TeachingPlan } from '@shearline/keywork'
import { useMemo, useState } from 'react'
import formCss from '../../form/form.module.css'
import { useDesk } from '../../job/desk.ts'
import { keysSentence, wayBackSentence } from '../../job/if-it-stops.ts'
import { Part, RecordForm } from '../../job/Part.tsx'
import { listMark, say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { asksAboutAbsentKeys, planOf } from '../plan-of.ts'
import css from '../teaching.module.css'
import { teachingOrder } from '../teaching-order.ts'
import { Guards } from './Guards.tsx'
import { lasting } from './lasting.ts'
import { type Mark, stepsAtRisk } from './marks.ts'
import { Order } from './Order.tsx'
import { SessionLine } from './SessionLine.tsx'
import { StopHere } from './StopHere.tsx'
import { useRehearsed } from './useRehearsed.ts'

const dearer: readonly Back[] = ['not-needed', 'reopen', 'restore', 'none']

/** The session step by step, each with what holds if it stops there. Reading it is a fact. */
export function Rehearsal() {
  const { state } = useDesk()
  const { rehearsal, taught } = state.teaching
  const proposed = teachingOrder(state)
  const missing = proposed.filter((key) => rehearsal?.order.includes(key) === false)
  return (
    <Part
      title={t('rehearsal.title')}
      need="rehearsal-not-read"
      settled={rehearsal !== null && (missing.length === 0 || taught.length > 0)}
      more={t('rehearsal.again')}
      about={
        rehearsal !== null && (
          <p>
            {t('rehearsal.read', {
              order: rehearsal.order.join(listMark()),
              wayBack: t(`way-back.${rehearsal.wayBack}`),
            })}
            {missing.length > 0 &&
              ` ${t('rehearsal.missing', { keys: missing.join(listMark()), count: missing.length })}`}
          </p>
        )
      }
    >
      {proposed.length === 0 ? <NothingToTeach /> : <Proposed state={state} proposed={proposed} />}
    </Part>
  )
}

/** The next step leads here before the new key is labelled: the way on is then to label it. */
function NothingToTeach() {
  const { state, goTo } = useDesk()
  return (
    <>
      <p>{t('rehearsal.no-keys')}</p>
      {!state.keys.some((key) => key.origin === 'new') && (
        <div className={formCss.foot}>
          <button
            type="button"
            className={formCss.plain}
            onClick={() => goTo({ chapter: 'plan', need: 'key-not-labelled', params: {} })}
          >
            {t('rehearsal.label-new')}
          </button>
        </div>
      )}
    </>
  )
}

function Proposed({ state, proposed }: { readonly state: JobState; readonly proposed: readonly string[] }) {
  const [chosen, setChosen] = useState<readonly string[] | null>(null)
  const asked = useMemo(() => planOf(state, proposed), [state, proposed])
  const best = useRehearsed(asked, 'best')
  // Until the best order is known, or when too much is unknown to find it, the proposed one stands.
  const order = chosen !== null && chosen.length === proposed.length ? chosen : (best?.order ?? proposed)
  const plan = useMemo(() => planOf(state, order), [state, order])
  const rehearsed = useRehearsed(plan, 'given')
  return (
    <>
      {state.teaching.rule === null && <p className={css.under}>{t('stops.not-rehearsed')}</p>}
      {!state.keys.some((key) => key.origin === 'new') && (
        <p className={css.under}>{t('rehearsal.no-new')}</p>
      )}
      {best !== null && best !== undefined && (
        <Order
          order={order}
          best={best.order}
          keys={state.keys}
          onChange={(next) => setChosen(next)}
          onBest={() => setChosen(null)}
        />
      )}
      {best !== null && best !== undefined && order.join() === best.order.join() && <Why rehearsal={best} />}
      {rehearsed === undefined && <p role="status">{t('rehearsal.working')}</p>}
      {rehearsed === null && <p>{t('rehearsal.too-much-unknown')}</p>}
      {rehearsed !== null && rehearsed !== undefined && (
        <Steps state={state} plan={plan} rehearsed={rehearsed} />
      )}
    </>
  )
}

/** Why the order is as it is: what others would cost. */
function Why({ rehearsal }: { readonly rehearsal: SessionRehearsal }) {
  const { reasons, provenBest } = rehearsal
  if (reasons.length === 0) return null
  return (
    <details className={formCss.more}>
      <summary>{t(provenBest ? 'why.proven' : 'why.best-found')}</summary>
      <ul className={css.reasons}>
        {reasons.map((reason) => (
          <li key={`${reason.code} ${reason.other.join()}`}>{reasonWords(reason)}</li>
        ))}
      </ul>
    </details>
  )
}

function reasonWords({ code, other, at }: OrderReason): string {
  const places = at.map((step) => (step === 'open' ? t('why.at-open') : t('why.at-key', { key: step })))
  return say(`order-reason.${code}`, { other: other.join(listMark()), at: places.join(listMark()) })
}

function Steps({
  state,
  plan,
  rehearsed,
}: {
  readonly state: JobState
  readonly plan: TeachingPlan
  readonly rehearsed: SessionRehearsal
}) {
  const before = plan.keys
    .filter((key) => key.onBench === true && plan.stored.includes(key.identity))
    .map((key) => key.id)
  const steps = stepsAtRisk(rehearsed, before)
  const worst = steps.find((step) => step.mark === 'stranded') ?? steps.find((step) => step.mark === 'loses')
  const [at, setAt] = useState<string | null>(null)
  const shown = steps.find((step) => step.after === at) ?? worst ?? steps[0]
  const { end } = rehearsed
  const endMark: Mark = end.stranded
    ? 'stranded'
    : before.some((key) => !end.starts.includes(key))
      ? 'loses'
      : 'safe'
  const dearest = rehearsed.breaks.reduce<Back>(
    (most, step) => (dearer.indexOf(step.wayBack) > dearer.indexOf(most) ? step.wayBack : most),
    'not-needed',
  )
  return (
    <>
      {!rehearsed.opened && <p>{t('rehearsal.cannot-open')}</p>}
      <Guards
        guards={rehearsed.guards.filter(({ guard }) => guard !== 'consent' || asksAboutAbsentKeys(state))}
      />
      {rehearsed.opened && rehearsed.interruptions.length > 0 && (
        <>
          <p>
            {t('rehearsal.length', { time: lasting(rehearsed.seconds) })}{' '}
            {t('rehearsal.stranded', { count: steps.filter((step) => step.mark === 'stranded').length })}
          </p>
          <SessionLine
            steps={steps}
            end={endMark}
            keys={state.keys}
            chosen={shown?.after ?? ''}
            onChoose={setAt}
          />
          {shown !== undefined && <StopHere step={shown} plan={plan} />}
        </>
      )}
      <p>
        <strong>{t('rehearsal.closed')}:</strong> {keysSentence(end, plan)}{' '}
        <span className={css.quiet}>{wayBackSentence(end.wayBack)}</span>
        {rehearsed.spoiled.length > 0 &&
          ` ${t('stop-here.spoiled', { keys: rehearsed.spoiled.join(listMark()) })}`}
      </p>
      <RecordForm
        submit={t('rehearsal.record')}
        drafts={() => [
          {
            kind: 'rehearsal-read',
            body: {
              order: [...rehearsed.order],
              strandedAt: rehearsed.breaks.filter((step) => step.stranded).map((step) => step.after),
              wayBack: dearest,
            },
          },
        ]}
      >
        <p>{t('rehearsal.sure')}</p>
      </RecordForm>
    </>
  )
}
