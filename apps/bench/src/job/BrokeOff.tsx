import type { Body } from '@shearline/jobfile'
import { type FormEvent, useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { useDesk } from './desk.ts'
import { ifItStops } from './if-it-stops.ts'

const reasons = ['supply', 'link', 'time-out', 'key-refused', 'ignition-off', 'operator', 'unknown'] as const
type Why = Body<'broke-off'>['why']

/** The session stopped: why, after which step, at how many volts. What holds now is said at once. */
export function BrokeOff({ onClose }: { readonly onClose: () => void }) {
  const { state, record } = useDesk()
  const [why, setWhy] = useState<Why | null>(null)
  const [volts, setVolts] = useState<number | null>(null)
  const [problem, setProblem] = useState('')
  const last = state.teaching.taught.at(-1)
  const after = last === undefined ? t('stopped.after-opening') : t('stopped.after-key', { key: last })

  const keep = async (event: FormEvent) => {
    event.preventDefault()
    if (why === null) return
    try {
      await record([{ kind: 'broke-off', body: { why, after, ...(volts === null ? {} : { volts }) } }])
      onClose()
    } catch (error) {
      setProblem(problemWords(error))
    }
  }
  const now = ifItStops(state)
  return (
    <Dialog title={t('stopped.title', { after })} onClose={onClose}>
      <p>{now.keys}</p>
      <form className={formCss.dialogBody} onSubmit={(event) => void keep(event)}>
        <Choice
          label={t('stopped.why')}
          value={why}
          onChange={setWhy}
          options={reasons.map((reason) => [reason, say(`break.${reason}`)])}
        />
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
        <div className={formCss.foot}>
          <button type="submit" className={`${formCss.plain} ${formCss.stop}`}>
            {t('stopped.record')}
          </button>
          <button type="button" className={formCss.plain} onClick={onClose}>
            {t('stopped.not')}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
