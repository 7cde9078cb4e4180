import type { ChapterName, Need, NeedCode, Tumbler, TumblerName } from '../fold/state.ts'

/** Something a tumbler wants. `met` decides; `conflict` says that what is there contradicts itself. */
export interface Want {
  readonly code: NeedCode
  readonly chapter: ChapterName
  readonly met: boolean
  readonly conflict?: boolean
  readonly params?: Readonly<Record<string, string | number>>
}

/** Stands a tumbler: high when anything unmet is a conflict, in line when nothing is unmet, else low. */
export function stand(name: TumblerName, wants: readonly Want[]): Tumbler {
  const needs = wants
    .filter((want) => !want.met)
    .map(
      (want): Need => ({
        code: want.code,
        params: want.params ?? {},
        chapter: want.chapter,
        conflict: want.conflict ?? false,
      }),
    )
  const state = needs.some((need) => need.conflict) ? 'high' : needs.length === 0 ? 'in-line' : 'low'
  return { name, state, done: wants.length - needs.length, of: wants.length, needs }
}
