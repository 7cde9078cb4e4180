/** @module How the work was done: supply and teaching. */
import { instantMilliseconds, listText, voltsText } from '../../words/index.ts'
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
    ],
  })
  if (readings.length >= 2) blocks.push(curve(pen))
  if (minimumVolts === null) return blocks
  if (setting === null) return [...blocks, paragraph(say('doc.supply-undecided'))]
  const held = minimumVolts >= setting.floorVolts
  return [...blocks, paragraph(say(held ? 'doc.supply-above' : 'doc.supply-below'))]
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
