/** @module How the work was done: supply and teaching. */
import { drainAfter } from '@shearline/keywork'
import { instantMilliseconds, listText, numberText, spanText, voltsText } from '../../words/index.ts'
import type { Block } from './blocks.ts'
import { heading, type Pen, paragraph } from './pen.ts'

/** Lowest supply, the floor, and the readings as a curve. */
export function supply(pen: Pen): readonly Block[] {
  const { say, state, language } = pen
  const { setting, readings, minimumVolts } = state.supply
  const blocks: Block[] = [heading(say('doc.supply'))]
  if (setting === null && readings.length === 0) return [...blocks, paragraph(say('doc.supply-none'))]
  const volts = (value: number) => say('format.volts', { volts: voltsText(language, value) })
  blocks.push({
    kind: 'facts',
    rows: [
      {
        label: say('doc.supply-minimum'),
        value: minimumVolts === null ? say('doc.supply-minimum-none') : volts(minimumVolts),
      },
      {
        label: say('doc.supply-floor'),
        value:
          setting === null
            ? say('doc.unknown')
            : say('doc.supply-floor-source', {
                floor: voltsText(language, setting.floorVolts),
                source: setting.floorSource,
              }),
      },
      ...(setting === null
        ? []
        : [{ label: say('doc.supply-battery'), value: say(`battery.${setting.battery}`) }]),
      ...(pen.edition < 2 ? [] : [...taken(pen), ...reckoned(pen), ...leftBehind(pen)]),
    ],
  })
  if (readings.length >= 2) blocks.push(curve(pen))
  if (minimumVolts === null) return blocks
  if (setting === null) return [...blocks, paragraph(say('doc.supply-undecided'))]
  const held = minimumVolts >= setting.floorVolts
  return [...blocks, paragraph(say(held ? 'doc.supply-above' : 'doc.supply-below'))]
}

type Row = Extract<Block, { kind: 'facts' }>['rows'][number]

/** From when to when the supply was read: the curve has no clock of its own. */
function taken({ say, state, language, zone, instant }: Pen): readonly Row[] {
  const [first, last] = [state.supply.readings.at(0), state.supply.readings.at(-1)]
  if (first === undefined || last === undefined) return []
  const value = first === last ? instant(first.at) : spanText(language, [first.at, last.at], zone)
  return [{ label: say('doc.supply-readings'), value }]
}

/** What the budget said before the work, as it was shown then. */
function reckoned({ say, state, language }: Pen): readonly Row[] {
  const budget = state.supply.setting?.budget
  if (budget === undefined) return []
  const { verdict, neededAmperes } = budget
  const value =
    verdict === 'connect-supply' && neededAmperes === undefined
      ? say('doc.power-supply-first')
      : say(`power-verdict.${verdict}`, { amperes: numberText(language, neededAmperes ?? 0) })
  return [{ label: say('doc.power-verdict'), value }]
}

/** How the car was left: current after locking, and whether the support supply was off. */
function leftBehind({ say, state, facts, language }: Pen): readonly Row[] {
  const readings = facts.all('supply-read').map(({ body }) => body)
  const drains = readings.flatMap(({ drain }) => (drain === undefined ? [] : [drain]))
  const answer = drainAfter(drains, state.supply.setting?.capacityAmpereHours ?? null)
  const last = drains.filter(({ amperes }) => amperes === answer.amperes).at(-1)
  const rows: Row[] = []
  if (last !== undefined)
    rows.push({
      label: say('doc.power-drain'),
      value: say('doc.power-drain-read', {
        milliamperes: numberText(language, last.amperes * 1000, 0, 0),
        minutes: Math.round(last.minutes),
        state: say(`power-drain.${answer.state}`),
      }),
    })
  const removed = readings.findLast((reading) => reading.supplyRemoved !== undefined)?.supplyRemoved
  if (removed !== undefined)
    rows.push({
      label: say('doc.power-removed'),
      value: say('doc.power-removed-state', { removed: removed ? 'yes' : 'no' }),
    })
  return rows
}

function curve({ say, state, language }: Pen): Block {
  const { setting, readings } = state.supply
  const times = readings.map((reading) => instantMilliseconds(reading.at) ?? 0)
  const first = Math.min(...times)
  const span = Math.max(...times) - first
  const all = readings.map((reading) => reading.volts)
  const lowest = Math.min(...all)
  const highest = Math.max(...all)
  const floor = setting === null ? null : voltsText(language, setting.floorVolts)
  const mark = (volts: number) => ({
    volts,
    text: say('format.volts', { volts: voltsText(language, volts) }),
  })
  return {
    kind: 'curve',
    alt: say('doc.supply-curve', {
      count: readings.length,
      lowest: voltsText(language, lowest),
      highest: voltsText(language, highest),
      floor: floor === null ? '' : say('doc.supply-curve-floor', { floor }),
    }),
    points: readings.map((reading, index) => ({
      at: span === 0 ? index / (readings.length - 1) : ((times[index] ?? first) - first) / span,
      volts: reading.volts,
      session: reading.during === 'session',
    })),
    floorVolts: setting?.floorVolts ?? null,
    floorText: floor === null ? null : say('doc.supply-floor-mark', { floor }),
    legend: [say('doc.supply-in-session'), say('doc.supply-outside')],
    scale: lowest === highest ? [mark(lowest)] : [mark(highest), mark(lowest)],
  }
}

/** Rule, order, session and backup. */
export function teaching(pen: Pen): readonly Block[] {
  const { say, state, language } = pen
  const { rule, taught, carCount, backup, backupWaived } = state.teaching
  const blocks: Block[] = [heading(say('doc.teaching'))]
  const nothing = rule === null && taught.length === 0 && backup === null && backupWaived === null
  if (nothing && sessionText(pen) === null) return [...blocks, paragraph(say('doc.teaching-none'))]
  return [
    ...blocks,
    {
      kind: 'facts',
      rows: [
        { label: say('doc.teaching-rule'), value: say(`rule.${rule?.kind ?? 'unknown'}`) },
        {
          label: say('doc.teaching-keys'),
          value: taught.length === 0 ? say('doc.tally-no-reason') : listText(language, taught),
        },
        { label: say('doc.teaching-session'), value: sessionText(pen) ?? say('doc.teaching-not-opened') },
        ...(carCount === null ? [] : [{ label: say('doc.teaching-count'), value: String(carCount) }]),
        { label: say('doc.teaching-backup'), value: backupText(pen) },
      ],
    },
  ]
}

function sessionText({ say, state }: Pen): string | null {
  const { sessionOpen, sessionClosed, breakOff } = state.teaching
  if (breakOff !== null)
    return say('doc.teaching-broke', { after: breakOff.after, why: say(`break.${breakOff.why}`) })
  if (sessionClosed) return say('doc.teaching-closed')
  return sessionOpen ? say('doc.teaching-open') : null
}

function backupText({ say, state }: Pen): string {
  const { backup, backupWaived } = state.teaching
  if (backup !== null)
    return say(backup.firstRead === backup.secondRead ? 'doc.backup-same' : 'doc.backup-differs', {
      what: backup.what,
    })
  return backupWaived === null ? say('doc.backup-none') : say('doc.backup-waived', { because: backupWaived })
}
