/**
 * @module Plays visits at the practice car, compares their scans as the product does, and counts how often the class
 * it gives a fault is the true one. The truth comes from the simulation: who made the test fail.
 */

import { type CanFrame, Decoder, type Message, timeSeconds } from '@shearline/bus'
import { type IntakeResult, RecordingIntake, workEventsOf } from '@shearline/jobfile'
import { compareScans, type FaultLine, type Scan, type UnitRole, type WorkEvent } from '@shearline/keywork'
import { playVisit, type Visit } from '@shearline/practice-car'

/** What really happened to a fault, as a class can be right about it. */
type Truth = 'there-before' | 'raised-by-work' | 'raised-by-car'

/** One fault of one visit: what the comparison says and what is true. */
export interface Judged {
  readonly seed: number
  readonly line: FaultLine
  readonly truth: Truth | 'unknown'
  readonly what: string
}

const ROLES: ReadonlySet<string> = new Set<UnitRole>([
  'engine',
  'transmission',
  'brakes',
  'steering',
  'body',
  'gateway',
  'restraints',
  'instruments',
  'immobiliser',
  'alarm',
  'remote',
])

/** Plays the visit of a seed and judges every fault line of its comparison. */
export function judgeVisit(seed: number): readonly Judged[] {
  const visit = playVisit(seed)
  const { scans, events, roles } = asTheJobHasIt(visit)
  const names = new Map(
    [...visit.car.units.values()].map(({ choices }) => [
      choices.answerId.toString(16).toUpperCase(),
      choices.name,
    ]),
  )
  const truths = new Map(visit.truth.map((each) => [`${each.unit} ${each.code}`, each]))
  return compareScans(scans, { events, roles }).faults.map((line): Judged => {
    const truth = truths.get(`${names.get(line.unit) ?? line.unit} ${line.code}`)
    const there = truth === undefined ? 'unknown' : truth.there === 'before' ? 'there-before' : truth.there
    return { seed, line, truth: there, what: truth?.what ?? '' }
  })
}

function asTheJobHasIt(visit: Visit): {
  scans: readonly Scan[]
  events: readonly WorkEvent[]
  roles: Readonly<Record<string, UnitRole>>
} {
  const messages = messagesOf(visit.car.trace.frames)
  const during = (from: number, to: number): readonly Message[] =>
    messages.filter(({ time }) => timeSeconds(time) >= from && timeSeconds(time) <= to)
  const scans = visit.marks.flatMap(({ phase, fromSeconds, toSeconds }) =>
    intakeOf(during(fromSeconds, toSeconds))
      .facts(phase)
      .flatMap((fact): Scan[] =>
        fact.kind === 'scan-attached' ? [{ phase: fact.body.phase, units: fact.body.units }] : [],
      ),
  )
  const noted = visit.notes.map(
    ({ kind, seconds, text }): WorkEvent => ({
      kind,
      unit: null,
      time: String(seconds),
      evidence: { code: 'noted', params: { words: text } },
    }),
  )
  return {
    scans,
    events: [...workEventsOf(intakeOf(messages).recording), ...noted],
    roles: Object.fromEntries(
      [...visit.car.units.values()].flatMap(({ choices }) =>
        ROLES.has(choices.name)
          ? [[choices.answerId.toString(16).toUpperCase(), choices.name as UnitRole]]
          : [],
      ),
    ),
  }
}

function messagesOf(frames: readonly CanFrame[]): readonly Message[] {
  const messages: Message[] = []
  const decoder = new Decoder({ message: (message) => messages.push(message) }, {})
  for (const frame of frames) decoder.frame(frame)
  decoder.end()
  return messages
}

function intakeOf(messages: readonly Message[]): IntakeResult {
  const intake = new RecordingIntake()
  for (const message of messages) intake.message(message)
  const file = { name: 'visit.log', bytes: 0, sha256: '', keptSha256: '' }
  const { summary } = new Decoder({}, {})
  return intake.finish({ summary, recognised: { format: 'candump', reason: 'played' } }, file)
}

/** Right and wrong answers of one class. */
export interface ClassScore {
  readonly given: number
  readonly right: number
  readonly actual: number
  /** Of those given the class, the share that has it. */
  readonly precision: number
  /** Of those that have it, the share that was given it. */
  readonly recall: number
}

const SAYS: readonly (readonly [string, Truth, (line: FaultLine) => boolean])[] = [
  [
    'there before',
    'there-before',
    (line) => line.class.startsWith('there-before') || line.class === 'permanent',
  ],
  ['raised by the work', 'raised-by-work', (line) => line.class === 'raised-by-work'],
  ['new and unexplained', 'raised-by-car', (line) => line.class === 'new-unexplained'],
]

/** Scores per class over judged faults. Lines that could not be compared count for no class, but for recall. */
export function scoreOf(judged: readonly Judged[]): Readonly<Record<string, ClassScore>> {
  return Object.fromEntries(
    SAYS.map(([name, truth, says]) => {
      const given = judged.filter(({ line }) => says(line))
      const actual = judged.filter((each) => each.truth === truth)
      const right = given.filter((each) => each.truth === truth).length
      return [
        name,
        {
          given: given.length,
          right,
          actual: actual.length,
          precision: given.length === 0 ? 1 : right / given.length,
          recall: actual.length === 0 ? 1 : right / actual.length,
        },
      ]
    }),
  )
}
