import { expect, test } from 'vitest'
import { type CarState, canOpen, carsOf } from './car.ts'
import { explore } from './explore.ts'
import { isStranded } from './outcome.ts'
import { type BenchSetting, endLine, promelaModel, type RuleFamily } from './testing/promela.ts'
import { runSpin, spinMissing } from './testing/spin.ts'
import type { SettledRule } from './unknowns.ts'

const TAKES_ALL = ['known', 'blank', 'prepared', 'pre-coded'] as const

/** Every way a session of the base model can run, and losing the list, opened with equipment. */
const SESSIONS: RuleFamily = {
  kind: ['replace-all', 'append', 'append-drop-oldest'],
  capacity: [2, 3],
  leastKeys: [1, 2],
  mostKeys: [2, 4],
  erases: ['at-close', 'at-open'],
  commits: ['at-close', 'each-key'],
  sameKeyTwice: ['refused', 'counts'],
  onBreak: ['revert', 'keep-so-far', 'list-lost'],
  accepts: [TAKES_ALL, ['blank', 'prepared']],
  opensWith: ['equipment'],
  slotTaken: ['overwritten'],
  declared: [null],
  spends: ['when-taken'],
  gated: [false],
}
/** Every way to open a session, with few ways to run it. */
const OPENINGS: RuleFamily = {
  ...SESSIONS,
  kind: ['replace-all'],
  leastKeys: [1],
  mostKeys: [4],
  sameKeyTwice: ['refused'],
  opensWith: ['equipment', 'accepted-key', 'two-accepted-keys', 'timed-wait'],
  gated: [false, true],
}
const SLOTS: RuleFamily = {
  ...SESSIONS,
  kind: ['numbered-slots'],
  accepts: [TAKES_ALL],
  slotTaken: ['overwritten', 'refused'],
  spends: ['when-taken', 'when-stored'],
}
/** Sessions that are told a number, or spend a key only once it is stored. */
const COUNTED: RuleFamily = {
  ...SESSIONS,
  kind: ['replace-all', 'append', 'append-drop-oldest', 'numbered-slots'],
  leastKeys: [1, 2],
  mostKeys: [4],
  capacity: [2],
  accepts: [TAKES_ALL],
  declared: [null, 1, 2],
  spends: ['when-taken', 'when-stored'],
}
/** Sessions in which every key can be refused and shown again. */
const EVENTS: RuleFamily = { ...COUNTED, leastKeys: [1], capacity: [3], declared: [null, 2] }
const on = (
  identity: number,
  state: BenchSetting['keys'][number]['state'] = 'known',
): BenchSetting['keys'][number] => ({
  identity,
  state,
  onBench: true,
})
/** Small benches: a spare and a clone, a key at home, all keys lost, one key for another car, an entry held twice. */
const BENCHES: readonly BenchSetting[] = [
  { stored: [1, 2], keys: [on(1), on(3, 'prepared'), on(1)], equipment: true },
  { stored: [1, 2], keys: [on(1), { ...on(2), onBench: false }, on(3, 'blank')], equipment: true },
  { stored: [1, 2], keys: [on(3, 'blank'), on(4, 'prepared')], equipment: true },
  { stored: [1, 2, 1], keys: [on(1), on(3, 'locked-elsewhere'), on(2)], equipment: false },
  { stored: [], keys: [on(1, 'blank'), on(2, 'blank'), on(1, 'prepared')], equipment: true },
  { stored: [4, 1, 2], keys: [on(1), on(2), on(3, 'prepared'), on(5, 'blank')], equipment: true },
  { stored: [1, 2], keys: [on(1), on(3, 'pre-coded')], equipment: true, code: true },
]
/** Slots that are full, that have holes, two clones for two slots, a slot that is not there, keys without a slot. */
const SLOT_BENCHES: readonly BenchSetting[] = [
  {
    stored: [1, 2],
    keys: [on(1), { ...on(3, 'blank'), slot: 2 }, { ...on(4, 'blank'), slot: 3 }],
    equipment: true,
  },
  { stored: [0, 1], keys: [on(1), on(2, 'blank'), on(3, 'prepared')], equipment: true },
  {
    stored: [1],
    keys: [
      { ...on(1), slot: 1 },
      { ...on(1), slot: 2 },
      { ...on(2, 'blank'), slot: 9 },
    ],
    equipment: true,
  },
  {
    stored: [1, 0, 2],
    keys: [{ ...on(3, 'blank'), slot: 1 }, { ...on(2), slot: 1 }, on(4, 'blank')],
    equipment: true,
  },
]

/** All rules of the family with the choices they come from. */
function rulesOf(family: RuleFamily): readonly { readonly name: string; readonly rule: SettledRule }[] {
  let all: readonly { readonly name: readonly number[]; readonly rule: Record<string, unknown> }[] = [
    { name: [], rule: {} },
  ]
  for (const [field, values] of Object.entries(family)) {
    const settled = field === 'leastKeys' || field === 'opensWith'
    all = all.flatMap(({ name, rule }) =>
      values.map((value: unknown, index: number) => ({
        name: [...name, index],
        rule: { ...rule, onBreakBy: {}, [field]: settled ? [value] : value },
      })),
    )
  }
  return all.map(({ name, rule }) => ({ name: name.join('-'), rule: rule as unknown as SettledRule }))
}

test.skipIf(spinMissing !== null).each([
  ['ENR-02 to ENR-10 ENR-13 ENR-18 sessions', SESSIONS, BENCHES, false],
  ['ENR-01 ENR-16 ENR-17 openings', OPENINGS, BENCHES, false],
  ['ENR-15 numbered slots', SLOTS, SLOT_BENCHES, false],
  [
    'ENR-19 ENR-20 told numbers and spent keys',
    COUNTED,
    [...BENCHES.slice(0, 3), ...SLOT_BENCHES.slice(0, 2)],
    false,
  ],
  ['ENR-22 refused and repeated keys', EVENTS, [...BENCHES.slice(0, 2), ...SLOT_BENCHES.slice(2, 3)], true],
] as const)(
  `%s: every reachable end and stranded verdict is the one the model checker reaches${spinMissing === null ? '' : ` [skipped: ${spinMissing}]`}`,
  (_name, family, benches, events) => {
    const spin = runSpin(promelaModel(family, benches, { events }))
    expect(spin.errors).toBe(0)
    const ours = new Set<string>()
    for (const [index, bench] of benches.entries()) {
      for (const { name, rule } of rulesOf(family)) {
        const plan = `${index}/${name}`
        const [car] = carsOf([
          {
            rule,
            stored: bench.stored.map((identity) => (identity === 0 ? '' : String(identity))),
            keys: bench.keys.map((key, at) => ({ ...key, id: String(at), identity: String(key.identity) })),
            means: { equipment: bench.equipment, backup: false, code: bench.code ?? false },
          },
        ])
        if (car === undefined) throw new Error('one case gives one car')
        const line = (by: 'break' | 'close' | 'unopened', state: CarState): string =>
          endLine(
            plan,
            by,
            car.lists.items(state.list).map((identity) => Number(car.identities[identity])),
            bench.keys.map((_, key) => ((state.taken >> key) & 1) === 1),
            isStranded(car, state),
          )
        if (!canOpen(car, car.first.list)) {
          ours.add(line('unopened', car.first))
          continue
        }
        const keys = [...bench.keys.keys()]
        const reached = explore(car, events ? [...keys, ...keys] : keys, { refusals: events })
        for (const end of reached.ends) ours.add(line(end.by, end.state))
      }
    }
    expect([...ours].filter((end) => !spin.ends.has(end)).slice(0, 5)).toEqual([])
    expect([...spin.ends].filter((end) => !ours.has(end)).slice(0, 5)).toEqual([])
    expect(ours.size).toBe(spin.ends.size)
  },
)
