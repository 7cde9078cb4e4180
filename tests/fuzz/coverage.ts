/** @module Which pieces of our code an input ran through, as the engine itself counts them (node:inspector). */

import { type Profiler, Session } from 'node:inspector'

/** Watches the sources of packages/bus while inputs are read. */
export class Coverage {
  readonly #session = new Session()
  readonly #seen = new Set<string>()

  constructor() {
    this.#session.connect()
    this.#post('Profiler.enable')
    this.#post('Profiler.startPreciseCoverage', { callCount: true, detailed: true })
    this.isNew()
  }

  /** How many different pieces were run so far. */
  get pieces(): number {
    return this.#seen.size
  }

  /**
   * Whether anything since the last call ran a piece of code that never ran before, or ran one far more often:
   * counts go by powers of two, as in other coverage-guided fuzzers.
   */
  isNew(): boolean {
    const { result } = this.#post('Profiler.takePreciseCoverage') as Profiler.TakePreciseCoverageReturnType
    const before = this.#seen.size
    for (const script of result) {
      if (!script.url.includes('/packages/bus/src/')) continue
      for (const { ranges } of script.functions) {
        for (const { startOffset, count } of ranges) {
          if (count > 0)
            this.#seen.add(`${script.scriptId}:${startOffset}:${Math.min(12, Math.floor(Math.log2(count)))}`)
        }
      }
    }
    return this.#seen.size > before
  }

  /** Stops watching. */
  stop(): void {
    this.#session.disconnect()
  }

  #post(method: string, parameters: object = {}): unknown {
    let answer: unknown
    this.#session.post(method, parameters, (error, value) => {
      if (error !== null) throw error
      answer = value
    })
    return answer
  }
}
