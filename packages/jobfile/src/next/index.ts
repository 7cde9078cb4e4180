/** @module The one next step, computed from the tumblers' needs. */
import { chapterNames, type Need, type NextStep, type Tumbler, type TumblerName } from '../fold/state.ts'

const sealing = new Set(['not-sealed', 'changed-since-seal'])

/** What is left when all seven stand in line. */
export interface Ending {
  readonly handedOver: boolean
  /** A blank was chosen and nothing says what became of it. */
  readonly blankOpen: boolean
}

/**
 * The single next action. A break-off comes before anything else; then what an open session wants, because the car
 * closes it by itself after a while and stands between two lists until then; then the earliest chapter of the day that
 * still wants something, contradictions after what is merely missing in the same chapter; sealing only when
 * nothing else is open; then handing over; then what became of the blank; then nothing.
 */
export function nextStep(tumblers: readonly Tumbler[], ending: Ending): NextStep {
  const open = tumblers.flatMap((tumbler) => tumbler.needs.map((need) => ({ need, tumbler: tumbler.name })))
  const stopped = open.find(({ need }) => need.code === 'break-off-open')
  if (stopped !== undefined) return step(stopped.need, stopped.tumbler)
  const wanted = (code: Need['code']) => open.some(({ need }) => need.code === code)
  const inSession = wanted('session-not-closed') && !wanted('session-not-opened')
  const all = open.filter(({ need }) => !sealing.has(need.code))
  const work = inSession ? all.filter(({ need }) => need.chapter === 'teach') : all
  let best: (typeof work)[number] | undefined
  for (const candidate of work)
    if (best === undefined || rank(candidate.need) < rank(best.need)) best = candidate
  if (best !== undefined) return step(best.need, best.tumbler)
  if (open.length > 0)
    return { code: 'seal-the-document', params: {}, chapter: 'handover', tumbler: 'record' }
  if (!ending.handedOver) return { code: 'hand-over', params: {}, chapter: 'handover', tumbler: 'record' }
  const code = ending.blankOpen ? 'note-the-blank' : 'nothing-left'
  return { code, params: {}, chapter: 'close', tumbler: 'record' }
}

/** Within a chapter: what has to come before what, where the order of the tumblers would say otherwise. */
const order: Partial<Record<Need['code'], number>> = {
  'rule-not-chosen': -3,
  'supply-floor-missing': -2,
  'rehearsal-not-read': -1,
  'session-not-opened': -3,
  'key-not-taught': -2,
  'session-not-closed': 1,
}

function rank(need: Need): number {
  const contradiction = need.conflict ? 5 : 0
  return chapterNames.indexOf(need.chapter) * 20 + contradiction + (order[need.code] ?? 0)
}

function step(need: Need, tumbler: TumblerName): NextStep {
  return { code: need.code, params: need.params, chapter: need.chapter, tumbler }
}
