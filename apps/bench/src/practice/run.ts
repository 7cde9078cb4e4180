/** @module An exercise that runs: the simulated car, the facts noted of it, and a clock that can be moved on. */
import { type Fact, foldJob, type JobState, readBody, versionOf } from '@shearline/jobfile'
import { type Action, Attempt, type Exercise, type Outcome, type Score } from '@shearline/practice-car'
import type { Draft } from '../sync/write.ts'
import { t } from '../words/index.ts'
import { actOf } from './acts.ts'
import { firstFacts } from './first-facts.ts'

/** The name of the job of an exercise. It is in no store and goes to no server. */
export const practiceJob = 'practice'
/** No device has this identifier, and the facts bear no signature: no record takes them. */
const nobody = 'dev-0000000000000000'

/** The car did otherwise than was noted; `outcome` says what it did. */
export class CarSaysOtherwise extends Error {
  readonly outcome: Outcome
  constructor(outcome: Outcome) {
    super(outcome.code)
    this.outcome = outcome
  }
}

/** One line of what happened at the car, latest last. */
export interface Happened {
  readonly place: number
  readonly outcome: Outcome
}

/** Holds everything of one attempt in memory; leaving the page ends it. */
export class PracticeRun {
  readonly exercise: Exercise
  readonly #attempt: Attempt
  #facts: readonly Fact[] = []
  #state: JobState
  #happened: readonly Happened[] = []
  /** How far the practice clock is ahead of the real one, milliseconds. */
  aheadMs = 0

  constructor(exercise: Exercise, zone: string) {
    this.exercise = exercise
    this.#attempt = new Attempt(exercise)
    for (const draft of firstFacts(exercise, zone)) this.#note(draft)
    this.#state = foldJob(practiceJob, this.#facts)
  }

  get facts(): readonly Fact[] {
    return this.#facts
  }

  get state(): JobState {
    return this.#state
  }

  get happened(): readonly Happened[] {
    return this.#happened
  }

  /** What a meter at the battery shows. */
  get volts(): number {
    return this.#attempt.car.battery.volts
  }

  /** Does something at the car that is not noted anywhere. */
  act(action: Action): Outcome {
    const before = this.#attempt.car.seconds
    const outcome = this.#attempt.act(action)
    this.aheadMs += Math.round((this.#attempt.car.seconds - before) * 1000)
    for (const one of outcome.incident === undefined ? [outcome] : [outcome, outcome.incident])
      this.#happened = [...this.#happened, { place: this.#happened.length + 1, outcome: one }]
    // A key that was fetched lies on the bench from now on.
    if (outcome.code === 'fetched' && action.do === 'fetch') this.#fetched(action.key)
    return outcome
  }

  /**
   * Does at the car what the facts say and notes them. Throws CarSaysOtherwise when the car does something else;
   * that fact and those after it are not noted then.
   */
  record(drafts: readonly Draft[]): void {
    try {
      for (const draft of drafts) {
        const act = actOf(draft)
        // A session that broke by itself is only noted.
        const stopped = draft.kind === 'broke-off' && this.#attempt.car.keyList.taught === null
        if (act !== null && !stopped) {
          const outcome = this.act(act.action)
          if (!act.agrees(outcome)) throw new CarSaysOtherwise(outcome)
        }
        this.#note(draft)
      }
    } finally {
      this.#state = foldJob(practiceJob, this.#facts)
    }
  }

  /** Points and why some were lost, as it stands now. */
  score(): Score {
    return this.#attempt.score()
  }

  #fetched(key: string): void {
    const label = this.#facts.findLast((fact) => fact.kind === 'key-labelled' && fact.body.key === key)
    if (label === undefined) return
    this.#facts = [...this.#facts, this.#fact('key-labelled', { ...label.body, onBench: true })]
    this.#state = foldJob(practiceJob, this.#facts)
  }

  #note({ kind, body }: Draft): void {
    const read = readBody(kind, body)
    if (!read.ok) throw new Error(t('problem.fact', { path: read.path, what: read.what }))
    this.#facts = [...this.#facts, this.#fact(kind, read.body as Fact['body'])]
  }

  #fact(kind: Draft['kind'], body: Fact['body']): Fact {
    return {
      v: versionOf(kind),
      id: crypto.randomUUID(),
      job: practiceJob,
      device: nobody,
      seq: this.#facts.length + 1,
      at: new Date(Date.now() + this.aheadMs).toISOString(),
      by: t('practice.by'),
      kind,
      body,
      prev: null,
      sig: '',
    }
  }
}
