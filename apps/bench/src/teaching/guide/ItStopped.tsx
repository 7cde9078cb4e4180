import type { Body } from '@shearline/jobfile'
import type { Interruption } from '@shearline/keywork'
import { type FormEvent, useMemo, useState } from 'react'
import { Amount } from '../../form/Amount.tsx'
import { Choice } from '../../form/Choice.tsx'
import { Dialog } from '../../form/Dialog.tsx'
import formCss from '../../form/form.module.css'
import { useDesk } from '../../job/desk.ts'
import { ifItStops, keysSentence } from '../../job/if-it-stops.ts'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { problemWords } from '../../words/problem.ts'
import { planOf } from '../plan-of.ts'
import { causeWords } from '../rehearsal/StopHere.tsx'
import { useRehearsed } from '../rehearsal/useRehearsed.ts'
import { noteOf } from '../step-code.ts'
import css from '../teaching.module.css'
import { sessionOrder } from '../teaching-order.ts'

type Broke = Body<'broke-off'>
type Why = Broke['why']

/** What can have ended a session. The record keeps the reason, and the rehearsal's own cause where it has one. */
const ends: readonly (readonly [name: string, why: Why, cause: Broke['cause']])[] = [
  ['supply', 'supply', 'supply-lost'],
  ['link', 'link', 'link-lost'],
  ['time-out', 'time-out', 'time-out'],
  ['ignition-off', 'ignition-off', undefined],
  ['operator', 'operator', 'closed-early'],
  ['unknown', 'unknown', undefined],
]

/** What happened: it ended the session, or the session goes on. What holds then is said at once. */
export function ItStopped({ onClose }: { readonly onClose: () => void }) {
  const { state, record } = useDesk()
  const [what, setWhat] = useState<string | null>(null)
  const [volts, setVolts] = useState<number | null>(null)
  const [problem, setProblem] = useState('')
  const { shown, order } = sessionOrder(state)
  const step = shown.at(-1) ?? 'open'
  const after = step === 'open' ? t('stopped.after-opening') : t('stopped.after-key', { key: step })
  const plan = useMemo(() => planOf(state, order), [state, order])
  const rehearsed = useRehearsed(plan, 'given')
  const here = rehearsed?.interruptions.filter((each) => each.after === step) ?? []
  const others = here.filter(
    (each) =>
      !each.cause.endsWith('-lost') && !['time-out', 'closed-early', 'wrong-code'].includes(each.cause),
  )
  const ended = ends.find(([name]) => name === what)
  const other = others.find((each) => nameOf(each) === what)
  const meant = ended === undefined ? other : here.find((each) => each.cause === ended[2])
  const now = ifItStops(state)

  const keep = async (event: FormEvent) => {
    event.preventDefault()
    const over = ended !== undefined || other?.sessionOver === true
    if (ended === undefined && other === undefined) return
    const reading = volts === null ? {} : { volts }
    try {
      if (over) {
        const why: Why = ended?.[1] ?? 'key-refused'
        const cause = ended === undefined ? ('wrong-key' as const) : ended[2]
        await record([
          {
            kind: 'broke-off',
            body: { why, after, step, ...(cause === undefined ? {} : { cause }), ...reading },
          },
        ])
      } else if (other !== undefined) {
        await record([
          {
            kind: 'step-done',
            body: {
              ...noteOf({
                code: `cause.${other.cause}`,
                ...(other.key === undefined ? {} : { key: other.key }),
              }),
              outcome: 'failed',
              because: t('stopped.went-on'),
            },
          },
          ...(volts === null
            ? []
            : [
                {
                  kind: 'supply-read' as const,
                  body: { volts, during: 'session' as const, source: 'meter' as const },
                },
              ]),
        ])
      }
      onClose()
    } catch (error) {
      setProblem(problemWords(error))
    }
  }
  const over = ended !== undefined || other?.sessionOver === true
  return (
    <Dialog title={t('stopped.title', { after })} onClose={onClose}>
      <form className={formCss.dialogBody} onSubmit={(event) => void keep(event)}>
        <Choice
          label={t('stopped.why')}
          value={what}
          onChange={setWhat}
          options={ends.map(([name, why]) => [name, say(`break.${why}`)])}
          optional
        />
        {others.length > 0 && (
          <Choice
            label={t('stopped.goes-on')}
            value={what}
            onChange={setWhat}
            options={others.map((each) => [nameOf(each), causeWords(each)])}
            optional
          />
        )}
        {what !== null && (
          <p role="status">
            {meant === undefined || rehearsed == null ? now.keys : keysSentence(meant, plan)}
            {other !== undefined && !other.sessionOver && ` ${t('stopped.leave-out')}`}
          </p>
        )}
        <Amount
          label={t('supply.volts')}
          unit="V"
          value={volts}
          onChange={setVolts}
          most={60}
          step={0.1}
          decimals={2}
          optional
        />
        {problem !== '' && (
          <p className={formCss.problem} role="alert">
            {problem}
          </p>
        )}
        <div className={`${formCss.foot} ${css.stickyFoot}`}>
          <button type="submit" className={`${formCss.plain} ${formCss.stop}`} disabled={what === null}>
            {over || what === null ? t('stopped.record') : t('stopped.record-other')}
          </button>
          <button type="button" className={formCss.plain} onClick={onClose}>
            {t('stopped.not')}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

function nameOf({ cause, key = '' }: Interruption): string {
  return `${cause} ${key}`
}
