/** @module Faults by class, in words a customer can check. */
import type { FaultClaim, FaultClass, FaultLine, FaultState, ScanPhase } from '@shearline/keywork'
import { listText } from '../../words/index.ts'
import type { Block, Strand, StrandMark } from './blocks.ts'
import { heading, type Pen, paragraph, quiet, subheading } from './pen.ts'

/** What matters most comes first. */
const classes: readonly FaultClass[] = [
  'new-unexplained',
  'raised-by-work',
  'there-before-back',
  'there-before-still',
  'there-before-gone',
  'permanent',
  'not-comparable',
]

const phases: readonly ScanPhase[] = ['before', 'after', 'cleared', 'cycled']

/** Every fault with its life over the scans, grouped by class. */
export function faults(pen: Pen): readonly Block[] {
  const { say, state, language } = pen
  const blocks: Block[] = [heading(say('doc.faults'))]
  if (state.scans.length === 0) return [...blocks, paragraph(say('doc.faults-no-scan'))]
  const scanned = phases.flatMap((phase) => {
    const scan = state.scans.find((candidate) => candidate.phase === phase)
    if (scan === undefined) return []
    return [say('doc.faults-scan', { phase: say(`phase.${phase}`), count: scan.units.length })]
  })
  blocks.push(paragraph(say('doc.faults-scans', { scans: listText(language, scanned) })))
  const has = (phase: ScanPhase) => state.scans.some((scan) => scan.phase === phase)
  const missing: ScanPhase[] = []
  if (!has('before')) missing.push('before')
  if (!has('after') && !has('cycled')) missing.push('after')
  if (has('cleared') && !has('cycled')) missing.push('cycled')
  for (const phase of missing)
    blocks.push(paragraph(say('doc.faults-missing', { phases: say(`phase.${phase}`) })))
  if (state.faults.faults.length === 0) blocks.push(paragraph(say('doc.faults-none')))
  for (const name of classes) {
    const lines = state.faults.faults.filter((line) => line.class === name)
    if (lines.length === 0) continue
    blocks.push(
      subheading(say(`fault-class.${name}`)),
      paragraph(say(`fault-means.${name}`)),
      pen.edition < 2 ? tableOfFirst(pen, lines) : table(pen, lines),
    )
  }
  return [...blocks, ...legend(pen), quiet(say('doc.faults-lamp'))]
}

/** The table of edition 1, without life lines. */
function tableOfFirst(pen: Pen, lines: readonly FaultLine[]): Block {
  const { say } = pen
  return {
    kind: 'table',
    columns: [
      { text: say('doc.fault-code'), share: 0.16, mono: true },
      { text: say('doc.fault-unit'), share: 0.22 },
      { text: say('doc.fault-life'), share: 0.62 },
    ],
    rows: lines.map((line) => [line.code, line.unit, story(pen, line)]),
  }
}

function table(pen: Pen, lines: readonly FaultLine[]): Block {
  const { say } = pen
  return {
    kind: 'table',
    columns: [
      { text: say('doc.fault-code'), share: 0.15, mono: true },
      { text: say('doc.fault-unit'), share: 0.18 },
      { text: say('doc.fault-strand'), share: 0.15 },
      { text: say('doc.fault-life'), share: 0.52 },
    ],
    rows: lines.map((line) => [line.code, line.unit, '', story(pen, line)]),
    strands: { column: 2, rows: lines.map((line) => strand(pen, line)) },
  }
}

/** The life line of a fault: one mark for each scan on record. */
function strand(pen: Pen, line: FaultLine): Strand {
  const marks = line.life.map((seen): StrandMark => {
    if (seen.claims.includes('unit-not-read')) return 'not-read'
    return seen.present ? 'reported' : 'not-reported'
  })
  return { alt: pen.say('doc.fault-strand-alt', { code: line.code, life: life(pen, line) }), marks }
}

function legend({ say, state, language, edition }: Pen): readonly Block[] {
  const [any] = state.faults.faults
  if (edition < 2 || any === undefined) return []
  const names = any.life.map((seen) => say(`phase.${seen.phase}`))
  return [quiet(say('doc.fault-strand-legend', { phases: listText(language, names) }))]
}

/** What each scan showed, one after the other. */
function life(pen: Pen, line: FaultLine): string {
  const seen = line.life.map((each) =>
    pen.say('doc.fault-phase', { phase: pen.say(`phase.${each.phase}`), claims: claims(pen, each) }),
  )
  return `${seen.join('; ')}.`
}

/** What the scans showed, the reason if there is one, and who acknowledged it. */
function story(pen: Pen, line: FaultLine): string {
  const { say, state } = pen
  const sentences = [capital(life(pen, line))]
  if (line.airbag) sentences.unshift(say('doc.fault-airbag'))
  if (line.class === 'raised-by-work') {
    const last = line.life.findLast((seen) => !seen.claims.includes('unit-not-read'))
    sentences.push(say(last?.present === true ? 'doc.fault-still' : 'doc.fault-gone'))
  }
  if (line.explanation !== null) {
    const reason = say(`explanation.${line.explanation.rule}`)
    sentences.push(say('doc.fault-reason', { reason }))
  }
  const known = state.acknowledged.findLast(({ unit, code }) => unit === line.unit && code === line.code)
  if (known !== undefined)
    sentences.push(say('doc.fault-acknowledged', { signer: known.signer, words: known.words }))
  return sentences.join(' ')
}

/** A weaker claim that a stronger one beside it makes needless; the record keeps every status bit. */
const contained: Readonly<Partial<Record<FaultClaim, readonly FaultClaim[]>>> = {
  'failed-this-cycle': ['failing-now', 'confirmed', 'pending'],
  'failed-since-clear': ['failing-now', 'confirmed', 'pending', 'failed-this-cycle'],
  pending: ['confirmed'],
}

function claims({ say, language }: Pen, seen: FaultState): string {
  const said = seen.claims.filter(
    (claim) => !(contained[claim] ?? []).some((stronger) => seen.claims.includes(stronger)),
  )
  if (said.length === 0) return say(seen.present ? 'claim.none' : 'claim.absent')
  return listText(
    language,
    said.map((claim) => say(`claim.${claim}`)),
  )
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1)
}
