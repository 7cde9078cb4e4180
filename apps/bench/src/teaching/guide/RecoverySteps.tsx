import type { JobKey } from '@shearline/jobfile'
import type { Recovery, RecoveryStep } from '@shearline/keywork'
import { useDesk } from '../../job/desk.ts'
import { RecordForm } from '../../job/Part.tsx'
import type { Draft } from '../../sync/write.ts'
import { t } from '../../words/index.ts'
import { lasting } from '../rehearsal/lasting.ts'
import { stepsOf, type WordedStep } from '../rehearsal/way-words.ts'
import { ruleOf } from '../rule/rule-of.ts'
import { isNoteOf, noteOf } from '../step-code.ts'
import css from '../teaching.module.css'
import { Code } from './OpenSession.tsx'
import { Retest } from './Retest.tsx'
import { startsBy } from './starting.ts'
import { WaitClock } from './WaitClock.tsx'

/**
 * A way back, one step large, the others small. Opening a new session hands over to the session guide; a way
 * without a session ends with every key tried again.
 */
export function RecoverySteps({ way, after }: { readonly way: Recovery; readonly after: string }) {
  const { stepsSince } = useDesk().state.teaching
  const steps = stepsOf(way)
  const opening = steps.findIndex((step) => step.do === 'open')
  const until = opening < 0 ? steps.length : opening
  const isDone = ({ code }: WordedStep) =>
    stepsSince.some((step) => step.outcome === 'done' && isNoteOf(step, code))
  const present = steps.findIndex((step, index) => index < until && !isDone(step))
  const at = present < 0 ? until : present
  const now = at < until ? steps[at] : undefined
  return (
    <>
      <div className={css.guide}>
        <p className={css.guideCount}>
          {t('recover.count', { step: Math.min(at + 1, steps.length), of: steps.length })}
        </p>
        {now !== undefined ? (
          <Step step={now} />
        ) : opening >= 0 ? (
          <Reopen after={after} />
        ) : (
          <Ended after={after} />
        )}
      </div>
      <ol className={css.waySteps}>
        {steps.map((step, index) => (
          <li key={step.code.place} aria-current={index === at ? 'step' : undefined} data-done={index < at}>
            {step.words}
            {step.seconds !== null && step.seconds > 0 && (
              <span className={css.quiet}> {lasting(step.seconds)}</span>
            )}
            {index < at && <span className={css.quiet}> {t('recover.step-done')}</span>}
          </li>
        ))}
      </ol>
    </>
  )
}

function Step({ step }: { readonly step: WordedStep }) {
  const { keys } = useDesk().state
  const key = keys.find((one) => one.id === step.key)
  const starts = step.do === 'start-with' || step.do === 'emergency-start-with'
  const note = (outcome: 'done' | 'failed'): readonly Draft[] => [
    {
      kind: 'step-done',
      body: {
        ...noteOf(step.code),
        outcome,
        ...(outcome === 'failed' ? { because: t('recover.failed.because') } : {}),
      },
    },
    ...(starts && key !== undefined ? [tested(step, key, outcome)] : []),
  ]
  return (
    <>
      <h4 className={css.guideStep}>{step.words}</h4>
      {(step.do === 'wait' || step.do === 'wait-ignition-on') && <Waiting step={step} />}
      {step.do === 'enter-code' && <Code />}
      <div className={css.pairForms}>
        <RecordForm submit={starts ? t('recover.starts') : t('recover.done')} drafts={() => note('done')} />
        <RecordForm
          stop
          submit={starts ? t('recover.starts-not') : t('recover.failed')}
          drafts={() => note('failed')}
        />
      </div>
    </>
  )
}

/** Starting is seen as a test of that key. */
function tested(step: RecoveryStep, key: JobKey, outcome: 'done' | 'failed'): Draft {
  return {
    kind: 'function-tested',
    body: {
      key: key.id,
      function: step.do === 'start-with' ? startsBy(key) : 'emergency-start',
      phase: 'after',
      outcome: outcome === 'done' ? 'works' : 'fails',
    },
  }
}

/** Noted when the ignition went on, from where this waiting counts. It has no place: the step itself has one. */
const ignitionOn = { code: 'recovery.wait-ignition-on' } as const

/** A waiting time: from the break-off, or with the ignition on from when that was noted. */
function Waiting({ step }: { readonly step: RecoveryStep }) {
  const { brokeAt, stepsSince, rule } = useDesk().state.teaching
  const begun = stepsSince.findLast((each) => isNoteOf(each, ignitionOn))?.at ?? null
  const gate = rule === null ? undefined : ruleOf(rule).gate
  if (step.do === 'wait') return <WaitClock since={brokeAt} seconds={step.seconds} />
  return (
    <>
      <WaitClock since={begun} seconds={step.seconds} />
      <p className={css.under}>{t(`wait.ignition.${gate?.ignitionOff ?? 'unknown'}`)}</p>
      <RecordForm
        submit={t(begun === null ? 'wait.begin' : 'wait.begin-again')}
        drafts={() => [{ kind: 'step-done', body: { ...noteOf(ignitionOn), outcome: 'done' } }]}
      />
    </>
  )
}

function Reopen({ after }: { readonly after: string }) {
  const { rehearsal } = useDesk().state.teaching
  return (
    <>
      <h4 className={css.guideStep}>{t('recover.reopen')}</h4>
      <p>{t('recover.reopen.then')}</p>
      <RecordForm
        submit={t('teach.open.record')}
        drafts={() => [
          { kind: 'break-off-mended', body: { how: t('recover.how.reopened', { after }) } },
          { kind: 'session-opened', body: { rehearsed: rehearsal !== null } },
        ]}
      />
    </>
  )
}

function Ended({ after }: { readonly after: string }) {
  const { retest } = useDesk().state
  const open = retest.filter((each) => !each.done).length
  return (
    <>
      <h4 className={css.guideStep}>{t('recover.try-all')}</h4>
      <Retest />
      {open === 0 && (
        <RecordForm
          submit={t('recover.mended')}
          drafts={() => [{ kind: 'break-off-mended', body: { how: t('recover.how.tried', { after }) } }]}
        />
      )}
    </>
  )
}
