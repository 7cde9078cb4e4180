/**
 * @module Walks one teaching session with the model checker spin and with our explorer: the same rule, the same keys,
 * every order, a break or a close at any point.
 *
 *     node scripts/bench/rehearse.mjs [KEYS]      prints one JSON object
 *
 * The verifier is compiled with -O2, without partial-order reduction (every state is wanted, as ours visits every
 * state), without printing; compiling is not timed. Both times are processor seconds of a whole process, ours with
 * starting Node. Spin stores more states for the same session, since the choices and ends of its model are states too;
 * each side is therefore given by its own count, and the times beside.
 */

import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { installed, median, run } from './measure.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const walker = join(here, 'rehearse-walk.mjs')

/** Both walks in turn, `rounds` times; undefined when spin or a C compiler is not installed. */
export function rehearseAgainstSpin(keys = 9, rounds = 3) {
  const compiler = installed('gcc') ?? installed('cc')
  const checker = installed('spin')
  if (checker === undefined || compiler === undefined) return undefined
  const folder = mkdtempSync(join(tmpdir(), 'rehearse-'))
  try {
    const model = run(process.execPath, [walker, 'model', String(keys)], { keep: true }).output
    writeFileSync(join(folder, 'model.pml'), model)
    const options = { cwd: folder, stdio: 'ignore' }
    execFileSync(checker, ['-a', 'model.pml'], options)
    execFileSync(compiler, ['-O2', '-w', '-DSAFETY', '-DNOREDUCE', '-o', 'pan', 'pan.c'], options)
    const spins = []
    const ours = []
    for (let round = 0; round < rounds; round++) {
      spins.push(run(join(folder, 'pan'), ['-n', '-w24', '-m10000'], { keep: true }))
      ours.push(run(process.execPath, [walker, 'walk', String(keys)], { keep: true }))
    }
    const [told] = ours.map(({ output }) => JSON.parse(output))
    const states = Number(/([\d.e+]+) states, stored/.exec(spins[0].output)?.[1])
    const walks = ours.map(({ output }) => JSON.parse(output))
    const spin = times(spins, states)
    const started = times(ours, told.states + told.ends)
    const seconds = median(walks.map((walk) => walk.seconds))
    return {
      keys,
      spin,
      // With starting Node and loading modules; and the first walk alone, nothing warm, as the verifier's is.
      process: { ...started, kilobytes: Math.max(...ours.map((one) => one.kilobytes ?? 0)) },
      walk: {
        ...{ states: started.states, wall: median(walks.map((walk) => walk.wall)), processor: seconds },
        statesPerSecond: started.states / seconds,
      },
      statesPerSecondRatio: started.states / seconds / spin.statesPerSecond,
      timeRatio: spin.processor / seconds,
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function times(runs, states) {
  const processor = median(runs.map((one) => one.processor))
  const wall = median(runs.map((one) => one.wall))
  return { states, wall, processor, statesPerSecond: states / processor }
}

/** The rows for the report: states stand where other rows have frames. */
export function rehearseRows(rounds) {
  const measured = rehearseAgainstSpin(9, rounds)
  if (measured === undefined) return []
  const { keys, spin, process: whole, walk, statesPerSecondRatio, timeRatio } = measured
  const row = (what, { states, wall, processor }, more = {}) => ({
    what,
    frames: states,
    wall,
    processor,
    ...more,
  })
  return [
    row(`spin -O2, session of ${keys} keys, states`, spin),
    row('explore, the same session, states', walk, {
      ratio: `${statesPerSecondRatio.toFixed(1)} x spin's states/s; ${timeRatio.toFixed(0)} x its time (processor)`,
      target: '3 x',
    }),
    row(`explore with starting Node (${Math.round(whole.kilobytes / 1000)} MB held)`, whole, {
      target: '400 MB',
    }),
  ]
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  console.log(JSON.stringify(rehearseAgainstSpin(Number(process.argv[2] ?? 9)), null, 2))
