import type { BodyInput, Kind } from '../facts/index.ts'

/** One fact of a scene: minutes after the job was opened, and what is recorded. */
export interface SceneFact<K extends Kind = Kind> {
  readonly minute: number
  readonly kind: K
  readonly body: BodyInput<K>
}

export type Outcome = BodyInput<'function-tested'>['outcome']
export type KeyFunction = BodyInput<'function-tested'>['function']

/** Writes a fact of a scene with its body checked against its kind at compile time. */
export function at<K extends Kind>(minute: number, kind: K, body: BodyInput<K>): SceneFact {
  return { minute, kind, body } as unknown as SceneFact
}

/** One row of the grid: several functions of one key tested in a row. */
export function tested(
  minute: number,
  key: string,
  phase: 'before' | 'after',
  outcomes: Partial<Record<KeyFunction, Outcome>>,
): SceneFact[] {
  return Object.entries(outcomes).map(([name, outcome], index) =>
    at(minute + index * 0.1, 'function-tested', {
      key,
      phase,
      function: name as KeyFunction,
      outcome,
      ...(phase === 'after' ? { customerPresent: true } : {}),
    }),
  )
}
