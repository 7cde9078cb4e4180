/** @module Writes what was measured as docs/performance.md. */

import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { cpus, release, totalmem } from 'node:os'

const number = (value, digits = 2) => value.toFixed(digits)
const millions = (perSecond) => `${number(perSecond / 1e6, perSecond < 1e6 ? 3 : 1)} M/s`

/** One row: what, frames, times, frames per second, ratios. */
function row(one) {
  const cells = [
    one.what,
    `${one.frames / 1e6} M`,
    `${number(one.wall)} s`,
    one.processor === undefined ? '' : `${number(one.processor)} s`,
    millions(one.frames / one.wall),
    one.ratio ?? '',
    one.target ?? '',
  ]
  return `| ${cells.join(' | ')} |`
}

/** Writes the page. `measured` holds rows, memory, what was left out and what the recording holds. */
export function writeReport(path, measured) {
  const { holds, rows, memory, leftOut, rounds, closeRounds, load } = measured
  const [processor] = cpus()
  const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { encoding: 'utf8' }).trim()
  const text = `# Performance

Written by \`npm run bench\`; do not edit. Times are medians of paired runs of whole processes, output included: ${closeRounds} pairs for text and pcapng, at most ${rounds} for the rest.

- Machine: ${processor?.model.trim()}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GB, Linux ${release()}, Node ${process.version}; load average ${number(load[0])} before and ${number(load[1])} after. On a shared machine trust the ratios more than the times.
- Recording: ${holds.frames / 1e6} million frames, ${number(holds.seconds / 60, 0)} minutes of 500 kbit/s at ${number(holds.load * 100, 0)} % load, 60 modules with periodic plain traffic; every three minutes a tester scans all modules, four at a time (multi-frame messages both ways, NRC 78, refusals): ${holds.diagnosticFrames} diagnostic frames, ${holds.messages} messages. Made by \`scripts/bench/generate.mjs\`, the same in every run.
- Every decode found all ${holds.messages} messages, ${holds.negative} refusals (${holds.pending} of them NRC 78) and ${holds.dtcRecords} fault records the generator put in; otherwise the run would have stopped.
- Commit ${commit} and what was changed since.

| what | frames | wall | processor | frames | ratio (wall; processor) | aim |
| --- | --- | --- | --- | --- | --- | --- |
${rows.map(row).join('\n')}

Most memory held (resident set): ${memory.map(({ what, kilobytes }) => `${what} ${number(kilobytes / 1000, 0)} MB`).join(', ')}; aim: under 80 MB.

## How it was measured

- \`wc -l\` reads the same text: a ratio of 22 % means that the decoder takes 4.5 times as long as counting the line ends.
- tshark reads the first million frames with its ISO 15765 and UDS dissectors, told all 120 identifiers, and writes time, identifier, service, request or reply, identifier of data and response code (\`-Y uds -T fields\`); \`shearline decode --fields time,id,service,kind,did,nrc\` writes the same of every message. Compared by frames per second; its start (about half a second) counts once per million frames. tshark loses multi-frame messages that run at the same time.
- log2asc (can-utils) reads the first million lines and only rewrites them. Compared by frames per second.
- "in process" is the decoder alone, without starting Node: \`scripts/bench/in-process.mjs\`. The other layouts are the first million frames, so most of their time is the engine still compiling.
- The browser's worker reads the file as the bench does: a File, a BYOB stream, pieces of 1 MB (\`scripts/bench/browser.mjs\`); each run is paired with one in process. Its time is the worker's own, without loading the page.
- Facts: 500 invented jobs of 85 facts each, in the text a store keeps (\`scripts/bench/fold.mjs\`), counted by processor time. Three rows are bounds and no readers: bodies alone, each character looked at once, and members cut out where they should stand without proving it; none reaches the aim together with the fold, so facts are read by JSON.parse (decision 0022). "fold" includes what the board shows of a job; a job of thousands of plain facts folds several times as fast for each, because scans, grid and tally are computed once for a job.
${leftOut.length === 0 ? '' : `\nNot measured: ${leftOut.join('; ')}.\n`}`
  writeFileSync(path, text)
}
