import type { JobState } from '@shearline/jobfile'
import { rehearse, type SessionOutcome, type WayBack } from '@shearline/keywork'
import { useMemo, useState } from 'react'
import formCss from '../form/form.module.css'
import { Tag } from '../keys/Tag.tsx'
import { t } from '../words/index.ts'
import { useDesk } from './desk.ts'
import { keysSentence, wayBackSentence } from './if-it-stops.ts'
import css from './job.module.css'
import { Part, RecordForm } from './Part.tsx'
import { planOf } from './plan-of.ts'
import { teachingOrder } from './teaching-order.ts'

const dearer: readonly WayBack[] = ['not-needed', 'reopen', 'restore', 'none']

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
              order: rehearsal.order.join(', '),
              wayBack: t(`way-back.${rehearsal.wayBack}`),
            })}
            {missing.length > 0 &&
              ` ${t('rehearsal.missing', { keys: missing.join(', '), count: missing.length })}`}
          </p>
        )
      }
    >
      {proposed.length === 0 ? <p>{t('rehearsal.no-keys')}</p> : <Steps state={state} proposed={proposed} />}
    </Part>
  )
}

function Steps({ state, proposed }: { readonly state: JobState; readonly proposed: readonly string[] }) {
  const [chosen, setChosen] = useState<readonly string[] | null>(null)
  const order = chosen !== null && chosen.length === proposed.length ? chosen : proposed
  const names = order.join(' ')
  const { plan, rehearsed, best } = useMemo(() => {
    const teach = names.split(' ')
    const given = planOf(state, teach)
    return { plan: given, rehearsed: rehearse(given, { order: 'given' }), best: rehearse(given).order }
  }, [state, names])
  const steps: readonly (SessionOutcome & { readonly after: string })[] = rehearsed.breaks
  const better = best.join(' ') !== names
  const dearest = steps.reduce<WayBack>(
    (worst, step) => (dearer.indexOf(step.wayBack) > dearer.indexOf(worst) ? step.wayBack : worst),
    'not-needed',
  )
  return (
    <>
      {state.teaching.rule === null && <p className={css.small}>{t('stops.not-rehearsed')}</p>}
      {!state.keys.some((key) => key.origin === 'new') && (
        <p className={css.small}>{t('rehearsal.no-new')}</p>
      )}
      {!rehearsed.opened && <p>{t('rehearsal.cannot-open')}</p>}
      {better && (
        <div className={formCss.foot}>
          <span>{t('rehearsal.better', { order: best.join(', ') })}</span>
          <button type="button" className={formCss.plain} onClick={() => setChosen(best)}>
            {t('rehearsal.take-better')}
          </button>
        </div>
      )}
      <ol className={css.steps}>
        {steps.map((step, index) => (
          <li key={step.after} className={css.rehearsed} data-stranded={step.stranded}>
            <StepHead state={state} label={order[index - 1]}>
              {index > 1 && (
                <button
                  type="button"
                  className={formCss.plain}
                  onClick={() => setChosen(earlier(order, index - 1))}
                >
                  {t('rehearsal.earlier')}
                </button>
              )}
            </StepHead>
            <span>
              <span className={css.small}>{t('stops.title')}: </span>
              {keysSentence(step, plan)} <span className={css.quiet}>{wayBackSentence(step.wayBack)}</span>
            </span>
          </li>
        ))}
        <li className={css.rehearsed}>
          <strong>{t('rehearsal.closed')}</strong>
          <span>
            {keysSentence(rehearsed.end, plan)}{' '}
            <span className={css.quiet}>{wayBackSentence(rehearsed.end.wayBack)}</span>
          </span>
        </li>
      </ol>
      <RecordForm
        submit={t('rehearsal.record')}
        drafts={() => [
          {
            kind: 'rehearsal-read',
            body: {
              order: [...order],
              strandedAt: steps.filter((step) => step.stranded).map((step) => step.after),
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

function StepHead({
  state,
  label,
  children,
}: {
  readonly state: JobState
  /** The key shown in this step; none right after opening. */
  readonly label: string | undefined
  readonly children: React.ReactNode
}) {
  const key = state.keys.find((one) => one.id === label)
  return (
    <span className={css.rehearsedHead}>
      {key !== undefined && <Tag letter={key.id} colour={key.colour} />}
      <strong>{label === undefined ? t('rehearsal.open') : t('rehearsal.key', { key: label })}</strong>
      {children}
    </span>
  )
}

/** The order with the key at `index` shown one place earlier. */
function earlier(order: readonly string[], index: number): readonly string[] {
  const next = [...order]
  const [key] = next.splice(index, 1)
  if (key !== undefined) next.splice(index - 1, 0, key)
  return next
}
