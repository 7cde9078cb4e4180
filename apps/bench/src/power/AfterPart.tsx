import { type DrainAnswer, type DrainReading, drainAfter } from '@shearline/keywork'
import { useMemo, useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { Facts } from '../job/Facts.tsx'
import { RecordForm, useFresh } from '../job/Part.tsx'
import { number, volts as voltsWords } from '../words/amounts.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { draftOf, inputOf } from './plan.ts'
import css from './power.module.css'
import { recorded } from './recorded.ts'
import { draftWords } from './step-words.ts'
import { usePower } from './usePower.ts'

/** How the car is left: able to start, asleep, the supply taken off, and what the battery monitor needs. */
export function AfterPart() {
  const desk = useDesk()
  const { state } = desk
  const draft = useMemo(() => draftOf(state, draftWords()), [state])
  const input = useMemo(() => inputOf(draft), [draft])
  const after = recorded(desk, 'supply-read').filter(({ body }) => body.during === 'after')
  const last = after.at(-1)?.body
  const supplied = draft.supplyKind !== 'none'
  const start = usePower(
    last === undefined || last.supplyRemoved === false || !('battery' in input)
      ? null
      : {
          what: 'start',
          starter: input.starter,
          battery: {
            ...input.battery,
            restVolts: last.volts,
            hoursAtRest: last.drain === undefined ? 0 : last.drain.minutes / 60,
            // A supply leaves surface charge behind, work without one leaves the battery tired.
            lastUse: supplied ? 'charged' : 'drained',
          },
        },
  ).told
  const drains: readonly DrainReading[] = after.flatMap(({ body }) => (body.drain ? [body.drain] : []))
  const drain = drainAfter(drains, draft.capacityAmpereHours)
  const removed = after.findLast(({ body }) => body.supplyRemoved !== undefined)?.body.supplyRemoved
  const [fresh, renew] = useFresh()
  if (last === undefined) return null
  return (
    <div className={css.stepList}>
      <Facts
        rows={[
          [
            t('power.after.start'),
            start === null
              ? say('power-start.unknown')
              : t('power.after.start.of', {
                  what: say(`power-start.${start.verdict}`),
                  low: number(start.crankVolts.low, 1, 1),
                  high: voltsWords(Math.round(start.crankVolts.high * 10) / 10),
                }),
          ],
          [t('power.after.asleep'), drainWords(drain)],
          [
            t('power.after.removed'),
            removed === undefined ? t('power.after.not-said') : removed ? t('yes') : t('no'),
          ],
        ]}
      />
      {supplied && draft.monitored !== 'no' && <p className={css.small}>{t('power.after.monitor')}</p>}
      <details className={formCss.more}>
        <summary>{t('power.after.measure')}</summary>
        <DrainForm key={fresh} onDone={renew} />
      </details>
    </div>
  )
}

/** The state, the current, and how long until half of the battery is gone. */
function drainWords({ state, amperes, daysToHalf }: DrainAnswer): string {
  const what = say(`power-drain.${state}`)
  if (amperes === null) return what
  const drain = t('power.after.drain', { what, milliamperes: number(amperes * 1000) })
  return daysToHalf === null ? drain : t('power.after.days', { drain, days: Math.round(daysToHalf) })
}

/** The current after locking, with the volts read at the same time. */
function DrainForm({ onDone }: { readonly onDone: () => void }) {
  const [milliamperes, setMilliamperes] = useState<number | null>(null)
  const [minutes, setMinutes] = useState<number | null>(30)
  const [volts, setVolts] = useState<number | null>(null)
  return (
    <RecordForm
      submit={t('power.after.record')}
      onDone={onDone}
      drafts={() =>
        milliamperes === null || minutes === null || volts === null
          ? null
          : [
              {
                kind: 'supply-read',
                body: {
                  volts,
                  during: 'after',
                  source: 'typed',
                  supplyRemoved: true,
                  drain: { amperes: milliamperes / 1000, minutes },
                },
              },
            ]
      }
    >
      <p className={formCss.hint}>{t('power.after.how')}</p>
      <div className={formCss.row}>
        <Amount
          label={t('power.after.current')}
          unit="mA"
          value={milliamperes}
          onChange={setMilliamperes}
          most={100_000}
          step={5}
          decimals={1}
          start={30}
        />
        <Amount
          label={t('power.after.minutes')}
          value={minutes}
          onChange={setMinutes}
          most={1440}
          step={5}
          start={30}
        />
        <Amount
          label={t('power.after.volts')}
          unit="V"
          value={volts}
          onChange={setVolts}
          most={60}
          step={0.1}
          decimals={2}
          start={12.5}
        />
      </div>
    </RecordForm>
  )
}
