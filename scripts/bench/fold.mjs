/**
 * @module Measures how fast facts become jobs: reading JSON, folding, and both, for a board of 500 jobs.
 *
 *     node scripts/bench/fold.mjs [--quick]      prints one JSON object
 *
 * The facts are those of the invented van job with two scans, varied from job to job (words, instants, volts, counts,
 * outcomes, identifiers), each in the RFC 8785 text a store keeps. Signatures and links are filler of the right form:
 * the fold does not look at them, and proving them is not measured here. Times are processor seconds of this process
 * (user and system), which other work on the machine disturbs less than time on the wall; both are given.
 */

import { fileURLToPath } from 'node:url'
import { settled, vanAfterSession, vanUntilSession } from '../../packages/jobfile/dist/demo/index.js'
import {
  bodyOf,
  canonicalJson,
  foldJob,
  readBody,
  summarise,
  versionOf,
} from '../../packages/jobfile/dist/index.js'
import { median } from './measure.mjs'
import { Random } from './random.mjs'

const jobCount = 500
const warmUp = 10

/** The texts of `count` jobs, a list for each. The same in every run. */
export function boardOf(count) {
  const random = new Random(20260112)
  const hex = (digits) => Array.from({ length: digits }, () => random.between(0, 16).toString(16)).join('')
  const uuid = () => `${hex(8)}-${hex(4)}-4${hex(3)}-a${hex(3)}-${hex(12)}`
  const scan = (minute, phase) => ({
    minute,
    kind: 'scan-attached',
    body: {
      phase,
      units: ['7E8', '7E9', '7B8', '728'].map((unit) => ({
        unit,
        time: `${random.between(10, 99)}.${random.between(100, 999)}`,
        availability: 127,
        faults: unit === '7B8' ? [{ code: 'C0035-11', raw: '403511', status: 8 }] : [],
      })),
    },
  })
  const vary = (value, name) => {
    if (Array.isArray(value)) return value.map((one) => vary(one, name))
    if (typeof value === 'object' && value !== null)
      return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, vary(inner, key)]))
    if (['text', 'reason', 'note', 'title', 'place', 'issuer', 'vehicle'].includes(name))
      return `${value} (${random.between(1, 1000)})`
    if (name === 'volts') return Math.round((value + random.between(-3, 8) / 10) * 10) / 10
    if (name === 'lastCharacters') return String(random.between(100, 9999))
    if (name === 'amountMinor') return value + random.between(0, 40) * 50
    if (name === 'outcome' && value === 'works' && random.between(0, 30) === 0) return 'fails'
    return value
  }
  return Array.from({ length: count }, (_, index) => {
    const scene = [
      ...vanUntilSession(),
      scan(45, 'before'),
      ...vanAfterSession(),
      scan(76, 'after'),
      ...settled(80),
    ]
    const start = Date.UTC(2026, 0, 1 + random.between(0, 300), 7, random.between(0, 600))
    const device = `dev-${hex(16)}`
    const facts = scene.map(({ minute, kind, body }, order) => {
      const read = readBody(kind, vary(body, ''))
      if (!read.ok) throw new Error(`${kind}: ${read.path} ${read.what}`)
      return {
        v: versionOf(kind),
        id: uuid(),
        job: `job-${index}`,
        device,
        seq: order + 1,
        at: new Date(start + Math.round(minute * 60_000)).toISOString(),
        by: index % 3 === 0 ? 'technician' : 'second technician',
        kind,
        body: read.body,
        prev: order === 0 ? null : hex(64),
        sig: hex(86),
      }
    })
    // Stores hand facts over in fold order.
    return facts
      .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.seq - b.seq))
      .map((fact) => flat(canonicalJson(fact)))
  })
}

/** Seconds of one run of a piece of work, on the wall and of the processor. */
function timed(work) {
  const begin = performance.now()
  const before = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(before)
  return { wall: (performance.now() - begin) / 1000, processor: (user + system) / 1e6 }
}

/**
 * What a reader of the kept text would at least have to do: cut the members out where they stand when the text is in
 * its canonical form, and parse the body. It looks at nothing and proves nothing, so it is no reader, only a bound.
 */
function cutOut(text) {
  const sigAt = text.length - 94
  const seqAt = text.lastIndexOf('"seq":', sigAt)
  const prevAt = text.lastIndexOf('"prev":', seqAt)
  const kindAt = text.lastIndexOf('"kind":', prevAt)
  const jobAt = text.lastIndexOf('"job":', kindAt)
  const byAt = text.lastIndexOf('"by":', jobAt - 84)
  return {
    at: text.slice(7, 31),
    body: JSON.parse(text.slice(40, byAt - 1)),
    by: text.slice(byAt + 6, jobAt - 78),
    device: text.slice(jobAt - 66, jobAt - 46),
    id: text.slice(jobAt - 38, jobAt - 2),
    job: text.slice(jobAt + 7, kindAt - 2),
    kind: text.slice(kindAt + 8, prevAt - 2),
    prev: text.slice(prevAt + 7, seqAt - 1),
    seq: Number(text.slice(seqAt + 6, sigAt - 8)),
    sig: text.slice(sigAt, sigAt + 86),
    v: Number(text.slice(-2, -1)),
  }
}

/** Measures and gives facts per processor second and per wall second of each part. */
export function measureFold(quick) {
  const rounds = quick ? 9 : 25
  const board = boardOf(jobCount)
  const facts = board.reduce((sum, job) => sum + job.length, 0)
  const bytes = board.reduce((sum, job) => sum + job.reduce((length, text) => length + text.length, 0), 0)
  const parsed = board.map((job) => job.map((text) => JSON.parse(text)))
  const bodies = parsed.map((job) => job.map((fact) => flat(canonicalJson(fact.body))))
  checkCutOut(board[0])
  let looked = 0
  const each = (jobs, work) => {
    for (const [index, job] of jobs.entries()) work(job, index)
  }
  const fold = (job, index) => summarise(foldJob(`job-${index}`, job))
  const eachFact = (work) =>
    each(parsed, (job) => {
      for (const fact of job) work(fact)
    })
  const parts = {
    'JSON.parse': () =>
      each(board, (job) => {
        for (const text of job) JSON.parse(text)
      }),
    'JSON.parse of the bodies alone': () =>
      each(bodies, (job) => {
        for (const text of job) JSON.parse(text)
      }),
    'every character looked at once': () =>
      each(board, (job) => {
        for (const text of job) for (let at = 0; at < text.length; at++) looked ^= text.charCodeAt(at)
      }),
    'members cut out unproven, body parsed': () =>
      each(board, (job) => {
        for (const text of job) cutOut(text)
      }),
    'bodies checked by their schema': () => eachFact((fact) => readBody(fact.kind, fact.body, fact.v)),
    'bodies checked without a copy': () => eachFact((fact) => bodyOf(fact, fact.kind)),
    fold: () => each(parsed, fold),
    'JSON.parse and fold': () =>
      each(board, (job, index) => {
        const read = job.map((text) => JSON.parse(text))
        fold(read, index)
      }),
  }
  // All parts in turn, so that they see the same machine; the first rounds only warm the engine up.
  const runs = new Map(Object.keys(parts).map((name) => [name, []]))
  for (let round = 0; round < rounds + warmUp; round++)
    for (const [name, work] of Object.entries(parts)) {
      const run = timed(work)
      if (round >= warmUp) runs.get(name).push(run)
    }
  const rates = Object.fromEntries(
    [...runs].map(([name, all]) => {
      const processor = median(all.map((run) => run.processor))
      const wall = median(all.map((run) => run.wall))
      return [
        name,
        { factsPerSecond: facts / processor, factsPerWallSecond: facts / wall, boardSeconds: processor },
      ]
    }),
  )
  if (looked > 0xffff) throw new Error('A character beyond all characters.')
  return { jobs: jobCount, facts, bytesPerFact: bytes / facts, rates }
}

/** A text in one piece, as a database gives it. */
function flat(text) {
  return Buffer.from(text).toString()
}

/** The bound counts only if it finds what JSON.parse finds. */
function checkCutOut(job) {
  for (const text of job) {
    const { prev, ...cut } = cutOut(text)
    const { prev: before, ...fact } = JSON.parse(text)
    if (canonicalJson(cut) !== canonicalJson(fact) || prev !== JSON.stringify(before))
      throw new Error(`Cut out wrongly: ${text}`)
  }
}

/** The fold as rows of docs/performance.md; their count is of facts. */
export function foldRows(quick) {
  const { facts, rates, bytesPerFact } = measureFold(quick)
  const parse = rates['JSON.parse'].factsPerSecond
  return Object.entries(rates).map(([name, { factsPerSecond, factsPerWallSecond }]) => ({
    what: name === 'JSON.parse' ? `facts of ${Math.round(bytesPerFact)} bytes: JSON.parse` : `facts: ${name}`,
    frames: facts,
    wall: facts / factsPerWallSecond,
    processor: facts / factsPerSecond,
    ratio:
      name === 'JSON.parse' ? '' : `${(factsPerSecond / parse).toFixed(2)} x JSON.parse alone (processor)`,
    target: name === 'JSON.parse and fold' ? '2 M facts/s' : '',
  }))
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  console.log(JSON.stringify(measureFold(process.argv.includes('--quick')), null, 2))
