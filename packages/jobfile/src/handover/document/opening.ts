/** @module The head of the document: which car, where, when, and where the job stands. */
import type { Tumbler, VinOnRecord } from '../../fold/state.ts'
import { isCode, listText, sayNeed } from '../../words/index.ts'
import type { Block, Pin } from './blocks.ts'
import { heading, list, type Pen, paragraph, strong } from './pen.ts'

/** Title, car, VIN, place and times. */
export function opening(pen: Pen): readonly Block[] {
  const { say, state } = pen
  const { opened, openedAt, seal } = state
  const unknown = say('doc.unknown')
  const title: Block = {
    kind: 'title',
    over: say('doc.kind'),
    title: opened?.title ?? unknown,
    under: opened?.vehicle ?? unknown,
  }
  const facts: Block = {
    kind: 'facts',
    rows: [
      { label: say('doc.vin'), value: vinText(pen), mono: state.vin !== null },
      ...(state.vin === null ? [] : [{ label: say('doc.vin-sources'), value: vinSources(pen) }]),
      { label: say('doc.place'), value: opened?.place ?? unknown },
      {
        label: say('doc.work'),
        value:
          opened === null
            ? unknown
            : say('doc.work-for', {
                work: say(`work.${opened.work}`),
                customer: say(`customer.${opened.customer}`),
              }),
      },
      { label: say('doc.opened-at'), value: openedAt === null ? unknown : pen.instant(openedAt) },
      {
        label: say('doc.sealed-at'),
        value:
          seal === null
            ? say('doc.not-sealed')
            : say('doc.sealed-by', { at: pen.instant(seal.at), by: seal.by }),
      },
      ...(pen.edition < 2 ? [] : [{ label: say('doc.handed'), value: handedText(pen) }]),
    ],
  }
  const demo: readonly Block[] = opened?.demo === true ? [{ kind: 'notice', text: say('doc.invented') }] : []
  return [...demo, title, facts]
}

/** To whom the car went, and with which keys. */
export function handedText({ say, state, language, instant }: Pen): string {
  const { handedOver } = state
  if (handedOver === null) return say('doc.handed-not')
  const { at, to, keys } = handedOver
  return keys.length === 0
    ? say('doc.handed-to-unnamed', { at: instant(at), to })
    : say('doc.handed-to', { at: instant(at), to, keys: listText(language, keys) })
}

function vinText({ say, state, language }: Pen): string {
  if (state.vin !== null) return state.vin
  if (state.vins.length === 0) return say('doc.vin-none')
  const readings = state.vins.map((reading) =>
    say('doc.vin-reading', { vin: reading.vin, source: vinSource(say, reading) }),
  )
  return say('doc.vin-disagrees', { readings: listText(language, readings) })
}

function vinSources({ say, state, language }: Pen): string {
  const sources = new Set(state.vins.map((reading) => reading.source))
  const named = new Set(state.vins.map((reading) => vinSource(say, reading)))
  return say('doc.vin-agree', { count: sources.size, sources: listText(language, [...named]) })
}

/** Where a VIN was read, and whether a picture was read instead of a person's eyes. */
function vinSource(say: Pen['say'], { source, picture }: VinOnRecord): string {
  return say('doc.vin-source', { source: say(`vin-source.${source}`), picture: picture ?? 'none' })
}

/** The cylinder, one sentence, and what was not in line. */
export function standing(pen: Pen): readonly Block[] {
  const { say, state } = pen
  const pins = state.tumblers.map((tumbler): Pin => {
    const { name, done, of } = tumbler
    return {
      name: say(`tumbler.${name}`),
      standing: say(`standing.${tumbler.state}`),
      count: say('standing.count', { done, of }),
      state: tumbler.state,
      height: heightOf(tumbler),
    }
  })
  const alt = say('doc.cylinder-alt', {
    pins: pins.map((pin) => say('doc.cylinder-pin', { ...pin })).join('; '),
  })
  const blocks: Block[] = [heading(say('doc.cylinder')), { kind: 'cylinder', alt, pins }]
  const points = openPoints(pen)
  if (state.inLine)
    return [...blocks, paragraph(say('doc.in-line')), ...(points.length === 0 ? [] : [list(points)])]
  const open = state.tumblers.filter((tumbler) => tumbler.state !== 'in-line')
  return [
    ...blocks,
    strong(say('doc.not-in-line', { count: open.length, sealed: state.seal === null ? 'no' : 'yes' })),
    list(points),
  ]
}

/** More points of one kind than this are counted, not listed: they stand in their own section below. */
const mostOfOneKind = 3

/** What was open, by tumbler; points the seal names that the tumblers no longer show are named too. */
function openPoints({ say, state, language }: Pen): readonly string[] {
  const points: string[] = []
  const shown = new Set<string>()
  for (const { name, needs } of state.tumblers) {
    const tumbler = say(`tumbler.${name}`)
    for (const code of new Set(needs.map((need) => need.code))) {
      const kind = needs.filter((need) => need.code === code)
      for (const need of kind.slice(0, mostOfOneKind))
        points.push(say('doc.open-point', { tumbler, need: sayNeed(language, need) }))
      if (kind.length > mostOfOneKind)
        points.push(say('doc.open-more', { tumbler, count: kind.length - mostOfOneKind }))
      shown.add(code)
    }
  }
  for (const code of state.seal?.open ?? []) {
    if (shown.has(code)) continue
    const known = `need.${code}`
    points.push(say('doc.open-unnamed', { code: isCode(known) ? say(known) : code }))
  }
  return points
}

/** Low pins stand lower the more they miss; high pins stand above the line by a fixed step. */
function heightOf({ state, done, of }: Tumbler): number {
  if (state === 'in-line') return 0
  if (state === 'high') return 1
  return of === 0 ? -1 : -1 + (0.8 * done) / of
}
