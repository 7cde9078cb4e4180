/**
 * @module One session for the bench: `model KEYS` prints it in Promela, `walk KEYS` walks through it once and prints
 * states, ends and processor seconds. Reads the sources, since what is walked is no part of the package's face.
 */

import { carsOf } from '../../packages/keywork/src/enrolment/car.ts'
import { explore } from '../../packages/keywork/src/enrolment/explore.ts'
import { promelaModel } from '../../packages/keywork/src/enrolment/testing/promela.ts'

const [what, count] = process.argv.slice(2)
const keys = Number(count)

/** One key is known, the others are blank; every order in which they are taught is a state of its own. */
const rule = {
  kind: 'append',
  capacity: keys + 1,
  leastKeys: [1],
  mostKeys: keys + 1,
  erases: 'at-close',
  commits: 'at-close',
  sameKeyTwice: 'refused',
  onBreak: 'keep-so-far',
  accepts: ['known', 'blank', 'prepared'],
  opensWith: ['equipment'],
  slotTaken: 'overwritten',
  declared: null,
  spends: 'when-taken',
  onBreakBy: {},
  gated: false,
}
const bench = Array.from({ length: keys }, (_, at) => ({
  identity: at + 1,
  state: at === 0 ? 'known' : 'blank',
  onBench: true,
}))

if (what === 'model') {
  const { onBreakBy, ...settled } = rule
  const family = Object.fromEntries(
    Object.entries(settled).map(([name, value]) => [
      name,
      ['leastKeys', 'opensWith'].includes(name) ? value : [value],
    ]),
  )
  const setting = { stored: [1], keys: bench, equipment: true }
  console.log(promelaModel(family, [setting], { quiet: true, longest: keys + 1 }))
} else {
  const [car] = carsOf([
    {
      rule,
      stored: ['1'],
      keys: bench.map((key, at) => ({ ...key, id: String(at), identity: String(key.identity) })),
      means: { equipment: true, backup: false, code: false },
    },
  ])
  const begin = performance.now()
  const before = process.cpuUsage()
  const found = explore(car, [...bench.keys()])
  const { user, system } = process.cpuUsage(before)
  const wall = (performance.now() - begin) / 1000
  const seconds = (user + system) / 1e6
  console.log(JSON.stringify({ states: found.states, ends: found.endCount, wall, seconds }))
}
