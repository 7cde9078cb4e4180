/**
 * @module Measures how fast recordings are decoded, against other programs on the same bytes, and writes
 * docs/performance.md.
 *
 *     npm run bench               10 million frames, about five minutes
 *     npm run bench -- --quick    1 million frames, written to .cache/bench/performance.md
 */

import { createReadStream, createWriteStream, existsSync } from 'node:fs'
import { loadavg } from 'node:os'
import { dirname, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { fileURLToPath } from 'node:url'
import { createGzip } from 'node:zlib'
import { openBrowser } from './bench/browser.mjs'
import { foldRows } from './bench/fold.mjs'
import { recordings } from './bench/generate.mjs'
import { otherLayouts } from './bench/layouts.mjs'
import { installed, median, paired, run } from './bench/measure.mjs'
import { rehearseRows } from './bench/rehearse.mjs'
import { remoteRows } from './bench/remote.mjs'
import { writeReport } from './bench/report.mjs'
import { pcapngSlice, textSlice } from './bench/slices.mjs'
import { diagnosticIds } from './bench/traffic.mjs'

const root = join(dirname(fileURLToPath(import.meta.url)), '..')
const folder = join(root, '.cache', 'bench')
const quick = process.argv.includes('--quick')
const frames = quick ? 1_000_000 : 10_000_000
const rounds = quick ? 3 : 5
/** Recordings are compared with each other by more: they differ by a few percent, a shared machine by as much. */
const closeRounds = rounds * 3
const cli = join(root, 'apps', 'cli', 'bin', 'shearline.js')

const say = (text) => console.error(text)
const percent = (ratio) => `${(ratio * 100).toFixed(1)} %`
const times = (ratio) => `${ratio.toFixed(ratio < 10 ? 1 : 0)} x`

if (!existsSync(join(root, 'apps', 'cli', 'dist', 'index.js'))) {
  console.error('Shearline is not built: run "npm run build" and then this again.')
  process.exit(2)
}

// The bundle is only used when nothing was built after it.
await import('./bundle-decode.mjs')

const load = [loadavg()[0], 0]
say(`Making recordings of ${frames} frames in ${folder} (once) ...`)
const { text, pcapng, holds } = recordings(frames, folder)

/** Stops when a summary is not what the generator put in: a fast wrong answer is no answer. */
function check(summary, expected) {
  for (const [name, count] of Object.entries(expected)) {
    if (summary[name] !== count) throw new Error(`the summary has ${summary[name]} ${name}, not ${count}`)
  }
}
const { messages, negative, pending, dtcRecords } = holds
const expected = { frames, messages, negative, pending, dtcRecords, incomplete: 0 }

function summary(file, of = expected) {
  const done = run(process.execPath, [cli, 'decode', file, '--summary', '--json'], { keep: true })
  check(JSON.parse(done.output), of)
  return done
}

function inProcess(file, of = expected) {
  const done = run(process.execPath, [join(root, 'scripts', 'bench', 'in-process.mjs'), file], { keep: true })
  const { seconds, processorSeconds, summary: counted } = JSON.parse(done.output)
  check(counted, of)
  return { wall: seconds, processor: processorSeconds, kilobytes: done.kilobytes }
}

const rows = []
const memory = []
const leftOut = []
const both = (measured, show) => `${show(measured.wallRatio)}; ${show(measured.processorRatio)}`

say('candump text against wc -l ...')
const count = () => run('wc', ['-l', text])
count()
const asText = paired(closeRounds, count, () => summary(text))
rows.push({ what: '`wc -l`', frames, ...asText.first })
rows.push({
  what: 'decode --summary, text',
  frames,
  ...asText.second,
  ratio: `${both(asText, percent)} of wc -l`,
  target: '22 % (30 %)',
})
memory.push({ what: 'text', kilobytes: asText.second.kilobytes })

say('pcapng against text ...')
const asPcapng = paired(
  closeRounds,
  () => summary(text),
  () => summary(pcapng),
)
rows.push({
  what: 'decode --summary, pcapng',
  frames,
  ...asPcapng.second,
  ratio: `${both(asPcapng, (ratio) => `${ratio.toFixed(2)} x`)} as fast as text`,
  target: '1 x',
})
memory.push({ what: 'pcapng', kilobytes: asPcapng.second.kilobytes })

say('in process ...')
const inner = paired(
  rounds,
  () => inProcess(text),
  () => inProcess(pcapng),
)
rows.push({ what: 'in process, text', frames, ...inner.first })
rows.push({ what: 'in process, pcapng', frames, ...inner.second })

say('a browser worker ...')
const chromium = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync)
if (chromium === undefined) leftOut.push('the browser worker (Chromium is not installed)')
else {
  const browser = await openBrowser(chromium)
  const pairs = []
  for (let round = 0; round < rounds; round++) {
    const here = inProcess(text)
    const { seconds, summary: counted } = await browser.decode(text)
    check(counted, expected)
    pairs.push({ seconds, ratio: seconds / here.wall })
  }
  await browser.close()
  rows.push({
    what: `worker of Chromium ${browser.version.split('.')[0]}, text`,
    frames,
    wall: median(pairs.map((pair) => pair.seconds)),
    ratio: `${times(median(pairs.map((pair) => pair.ratio)))} as long as in process`,
    target: 'at most 3 x',
  })
}

say('other layouts ...')
const few = 1_000_000
for (const { what, file } of otherLayouts(textSlice(text, few), pcapngSlice(pcapng, few))) {
  const runs = Array.from({ length: 3 }, () => inProcess(file, { frames: few, incomplete: 0 }))
  rows.push({
    what: `in process, ${what}`,
    frames: few,
    wall: median(runs.map((one) => one.wall)),
    processor: median(runs.map((one) => one.processor)),
  })
}

say('gzip ...')
const packed = `${text}.gz`
if (!existsSync(packed))
  await pipeline(createReadStream(text), createGzip({ level: 6 }), createWriteStream(packed))
const asGzip = Array.from({ length: Math.min(rounds, 3) }, () => summary(packed))
const middle = (name) => median(asGzip.map((one) => one[name]))
rows.push({
  what: 'decode --summary, text in gzip',
  frames,
  wall: middle('wall'),
  processor: middle('processor'),
})
memory.push({ what: 'gzip', kilobytes: Math.max(...asGzip.map((one) => one.kilobytes ?? 0)) })

const everyMessage = (...how) => run(process.execPath, [cli, 'decode', pcapng, ...how])
/** What tshark is asked for, in our words; `kind` says what `uds.reply` says. */
const sameFields = ['--fields', 'time,id,service,kind,did,nrc']
const perFrame = (measured, otherFrames) => {
  const share = frames / otherFrames
  return `${times(measured.wallRatio * share)}; ${times(measured.processorRatio * share)} as fast`
}

if (installed('tshark') === undefined) leftOut.push('tshark (not installed)')
else {
  say('tshark ...')
  const slice = 1_000_000
  const file = pcapngSlice(pcapng, slice)
  const ids = diagnosticIds()
  const list = (extended) =>
    ids
      .filter((id) => id.extended === extended)
      .map((id) => `0x${id.id.toString(16)}`)
      .join(',')
  const fields = [
    'frame.time_epoch',
    'can.id',
    'uds.sid',
    'uds.reply',
    'uds.rdbi.data_identifier',
    'uds.err.code',
  ]
  const args = [
    '-r',
    file,
    '-o',
    `iso15765.can.ids:${list(false)}`,
    '-o',
    `iso15765.can.extended_ids:${list(true)}`,
    '-d',
    'iso15765.subdissector,uds',
    '-Y',
    'uds',
    '-T',
    'fields',
    ...fields.flatMap((field) => ['-e', field]),
  ]
  const theirs = () => run('tshark', args)
  const measured = paired(Math.min(rounds, 3), theirs, () => everyMessage(...sameFields))
  const asJson = Array.from({ length: Math.min(rounds, 3) }, () => everyMessage('--json'))
  rows.push({ what: 'tshark with UDS', frames: slice, ...measured.first })
  rows.push({
    what: 'decode --fields, pcapng: the same fields',
    frames,
    ...measured.second,
    ratio: `${perFrame(measured, slice)} as tshark`,
    target: '150 x',
  })
  rows.push({
    what: 'decode --json, pcapng: everything',
    frames,
    wall: median(asJson.map((one) => one.wall)),
    processor: median(asJson.map((one) => one.processor)),
  })
}

if (installed('log2asc') === undefined) leftOut.push('log2asc (not installed: can-utils)')
else {
  say('log2asc ...')
  const slice = 1_000_000
  const file = textSlice(text, slice)
  const measured = paired(
    Math.min(rounds, 3),
    () => run('log2asc', ['-I', file, '-O', '/dev/null', 'can0']),
    () => summary(text),
  )
  rows.push({ what: 'log2asc', frames: slice, ...measured.first })
  rows.push({
    what: 'decode --summary, text',
    frames,
    ...measured.second,
    ratio: `${perFrame(measured, slice)} as log2asc`,
    target: '20 x',
  })
}
rows.push(...rehearseRows(rounds))
rows.push(...foldRows(quick))
rows.push(...remoteRows(Math.min(rounds, 3)))
load[1] = loadavg()[0]
const page = quick ? join(folder, 'performance.md') : join(root, 'docs', 'performance.md')
writeReport(page, { holds, rows, memory, leftOut, rounds, closeRounds, load })
say(`Written: ${page}`)

say('taps on the bench ...')
run(process.execPath, [
  '--conditions=@shearline/source',
  join(root, 'scripts', 'bench', 'interactions.mjs'),
  ...process.argv.slice(2),
])

say('durable appends of the store ...')
run(process.execPath, [
  '--conditions=@shearline/source',
  join(root, 'scripts', 'bench', 'store.mjs'),
  ...process.argv.slice(2),
])
