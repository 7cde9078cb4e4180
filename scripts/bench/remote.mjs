/**
 * @module Measures radio recordings with rtl_433's pulse analysis and with ours, in turn, on the same files.
 *
 *     node scripts/bench/remote.mjs      prints one JSON object
 *
 * The recordings lie beside the project (`../shared/radio/files`), with their rates in its manifest. rtl_433 runs with
 * `-F null`, as `-R 0` would also turn its FM demodulator off, once for each sample rate; each file is named to it many
 * times, so that its start weighs little. What it prints is thrown away: it holds content. Ours is timed warm, the
 * files in memory.
 */

import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { installed, median, run } from './measure.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const folder = join(here, '..', '..', '..', 'shared', 'radio')
/** How often each file is named to rtl_433 in one run. */
const times = 20

/** The cu8 recordings with their sample rates; none when the folder is absent. */
function recordings() {
  const manifest = join(folder, 'MANIFEST.tsv')
  if (!existsSync(manifest)) return []
  const [head, ...lines] = readFileSync(manifest, 'utf8').trim().split('\n')
  const names = head.split('\t')
  return lines
    .map((line) => line.split('\t'))
    .map((cells) => ({
      path: join(folder, cells[names.indexOf('file')]),
      rate: cells[names.indexOf('sample_rate_hz')],
      bytes: Number(cells[names.indexOf('bytes')]),
      format: cells[names.indexOf('format')],
    }))
    .filter(({ format }) => format === 'cu8')
}

/** Both on all files, `rounds` times in turn; undefined when rtl_433 or the recordings are absent. */
export function remoteAgainstRtl433(rounds = 3) {
  const files = recordings()
  if (installed('rtl_433') === undefined || files.length === 0) return undefined
  const samples = files.reduce((sum, { bytes }) => sum + bytes / 2, 0)
  const byRate = Map.groupBy(files, ({ rate }) => rate)
  const theirs = []
  const ours = []
  for (let round = 0; round < rounds; round++) {
    const runs = [...byRate].map(([rate, some]) =>
      run('rtl_433', [
        ...['-F', 'null', '-A', '-s', rate],
        ...Array.from({ length: times }, () => some.flatMap(({ path }) => ['-r', path])).flat(),
      ]),
    )
    const sum = (name) => runs.reduce((total, one) => total + one[name], 0)
    theirs.push({ samples: samples * times, wall: sum('wall'), processor: sum('processor') })
    const args = [String(times), '5', ...files.flatMap(({ rate, path }) => [rate, path])]
    const done = run(process.execPath, [join(here, 'remote-measure.mjs'), ...args], { keep: true })
    ours.push(JSON.parse(done.output))
  }
  const middle = (runs) => ({
    samples: runs[0].samples,
    wall: median(runs.map((one) => one.wall)),
    processor: median(runs.map((one) => one.processor)),
  })
  const speed = ({ samples: count, processor }) => count / processor
  return {
    files: files.length,
    rtl433: middle(theirs),
    ours: middle(ours),
    samplesPerSecond: { rtl433: speed(middle(theirs)), ours: speed(middle(ours)) },
    ratio: median(ours.map((one, at) => speed(one) / speed(theirs[at]))),
  }
}

/** The rows for the report: samples stand where other rows have frames. */
export function remoteRows(rounds) {
  const measured = remoteAgainstRtl433(rounds)
  if (measured === undefined) return []
  const { files, rtl433, ours, ratio, samplesPerSecond } = measured
  const row = (what, { samples, wall, processor }, more = {}) => ({
    what,
    frames: samples,
    wall,
    processor,
    ...more,
  })
  return [
    row(`rtl_433 -A, ${files} radio recordings, samples`, rtl433),
    row('the remote measured, the same recordings, samples', ours, {
      ratio: `${ratio.toFixed(2)} x rtl_433's samples/s; ${(samplesPerSecond.ours / 1e6).toFixed(1)} M/s (processor)`,
      target: '10 M/s',
    }),
  ]
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  console.log(JSON.stringify(remoteAgainstRtl433(), null, 2))
