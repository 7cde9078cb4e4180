import type { PowerAnswer, VoltsReading, Watch as Watched, WatchLevel } from '@shearline/keywork'
import { useEffect, useMemo, useRef, useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { number, volts as voltsWords } from '../words/amounts.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { AlarmSwitches } from './AlarmSwitches.tsx'
import { sound } from './alarm.ts'
import { findingWords } from './finding-words.ts'
import { worthKeeping } from './lowest.ts'
import { MeterPart } from './MeterPart.tsx'
import { PowerPicture } from './PowerPicture.tsx'
import { draftOf, inputOf } from './plan.ts'
import css from './power.module.css'
import { RecordedSupply } from './RecordedSupply.tsx'
import { recorded } from './recorded.ts'
import type { RecordedVolts } from './recording-volts.ts'
import { beganAt, minutesSince, sinceBeginning } from './session.ts'
import { draftWords } from './step-words.ts'
import { TapReading } from './TapReading.tsx'
import { usePower } from './usePower.ts'

/** Readings of a connected meter kept for the picture: an hour at one a second. */
const MOST_LIVE = 3600

/** The supply during the work: readings against the prediction, limits that call, and the time that is left. */
export function Watch() {
  const desk = useDesk()
  const { state, record, signedBy } = desk
  const input = useMemo(() => inputOf(draftOf(state, draftWords())), [state])
  const budget = usePower('battery' in input ? { what: 'budget', input } : null).told
  const opened = recorded(desk, 'session-opened')
  const began = useRef<number | null>(null)
  began.current = beganAt(opened, state.supply.readings) ?? began.current

  const [live, setLive] = useState<readonly VoltsReading[]>([])
  const [told, setTold] = useState<RecordedVolts | null>(null)
  const kept = useRef<{ lowest: number | null; seen: number; pending: number | null }>({
    lowest: null,
    seen: 0,
    pending: null,
  })
  const floor = budget?.limits.floorVolts ?? state.supply.setting?.floorVolts ?? 12

  const keep = (volts: number) => {
    kept.current = { ...kept.current, lowest: volts, pending: null }
    const body = { during: 'session', source: 'meter', lowestOf: kept.current.seen, volts } as const
    record([{ kind: 'supply-read', body }]).catch(() => undefined)
  }
  const hear = (volts: number) => {
    const now = Date.now()
    began.current ??= now
    const minutes = minutesSince(began.current, now)
    setLive((before) => [...before.slice(-MOST_LIVE), { minutes, volts }])
    const { lowest, pending } = kept.current
    kept.current.seen += 1
    const rounded = Math.round(volts * 1000) / 1000
    if (rounded < 0 || rounded > 60) return
    if (worthKeeping(lowest, rounded, floor)) keep(rounded)
    else if (rounded < Math.min(lowest ?? rounded, pending ?? Number.POSITIVE_INFINITY))
      kept.current.pending = rounded
  }
  const leave = () => {
    const { pending } = kept.current
    if (pending !== null) keep(pending)
    kept.current = { lowest: null, seen: 0, pending: null }
  }

  const readings = useMemo(() => {
    const typed = sinceBeginning(state.supply.readings, began.current)
    return [...typed, ...live, ...(told?.readings ?? [])].toSorted((a, b) => a.minutes - b.minutes)
  }, [state.supply.readings, live, told])
  const watch = usePower(
    'battery' in input && readings.length > 0
      ? { what: 'watch', input, readings, readAt: told === null ? 'battery' : 'socket' }
      : null,
  ).told
  const used = new Set(recorded(desk, 'supply-read').map(({ body }) => body.blob))
  const expected = readings.at(-1)?.volts ?? budget?.curve[0]?.mid ?? 12.4
  return (
    <div className={css.stepList}>
      {budget !== null && (
        <>
          <Level
            budget={budget}
            watch={watch}
            last={readings.at(-1) ?? null}
            minimum={state.supply.minimumVolts}
          />
          <PowerPicture answer={budget} readings={readings} ahead={watch?.curve ?? []} />
          {watch?.findings.map((finding) => (
            <p key={finding.code} className={formCss.hint}>
              {findingWords('power-watch', finding)}
            </p>
          ))}
        </>
      )}
      <TapReading expected={expected} />
      {state.recordings.map((recording) => (
        <RecordedSupply
          key={recording.blob}
          recording={recording}
          used={used.has(recording.blob)}
          onUse={setTold}
        />
      ))}
      <details className={formCss.more}>
        <summary>{t('power.meter')}</summary>
        <div className={css.stepList}>
          <MeterPart before={signedBy} onVolts={hear} onEnd={leave} />
        </div>
      </details>
      <AlarmSwitches />
    </div>
  )
}

/** The level by the last reading at once; by the weighed prediction once it is computed. */
function levelOf(budget: PowerAnswer, watch: Watched | null, last: VoltsReading | null): WatchLevel {
  const { limits } = budget
  if (last !== null && last.volts < limits.stopVolts) return 'stop'
  if (last !== null && last.volts < limits.floorVolts) return 'amber'
  return watch?.level === 'falling' ? 'falling' : 'steady'
}

function Level({
  budget,
  watch,
  last,
  minimum,
}: {
  readonly budget: PowerAnswer
  readonly watch: Watched | null
  readonly last: VoltsReading | null
  readonly minimum: number | null
}) {
  const level = levelOf(budget, watch, last)
  const before = useRef<WatchLevel>('steady')
  useEffect(() => {
    const rises = (level === 'amber' && before.current !== 'stop') || level === 'stop'
    if (rises && level !== before.current) sound(level === 'stop' ? 'stop' : 'amber')
    before.current = level
  }, [level])
  if (last === null) return <p>{t('power.watch.none')}</p>
  return (
    <div className={css.live} data-level={level}>
      <p className={css.level} role={level === 'amber' || level === 'stop' ? 'alert' : 'status'}>
        {say(`power-level.${level}`)}
      </p>
      <p className={css.now}>{voltsWords(Math.round(last.volts * 100) / 100)}</p>
      {watch !== null && <p>{leftWords(watch)}</p>}
      {minimum !== null && <p>{t('power.watch.lowest', { volts: voltsWords(minimum) })}</p>}
    </div>
  )
}

function leftWords({ timeLeftMinutes: { low, mid, high }, level }: Watched): string {
  if (level === 'amber' || level === 'stop') return t('power.left.none')
  if (low === null) return t('power.left.enough')
  const minutes = (value: number) => number(Math.max(0, value))
  if (mid === null) return t('power.left.least', { low: minutes(low) })
  return high === null
    ? t('power.left.open', { mid: minutes(mid), low: minutes(low) })
    : t('power.left', { mid: minutes(mid), low: minutes(low), high: minutes(high) })
}
