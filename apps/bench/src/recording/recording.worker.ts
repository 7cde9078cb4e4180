/** @module Reads, hashes and decodes a recording away from the page, so that the page stays answering. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import { decodeCapture, type Finding } from '@shearline/bus'
import { keptLine, RecordingIntake } from '@shearline/jobfile'
import { Kept } from './kept.ts'
import { look } from './look.ts'
import { readFile } from './read-file.ts'
import { StripGatherer } from './strip.ts'
import type { Answer, Ask, Decoded } from './worker-messages.ts'

/** Findings listed one by one; the rest are counted. */
const mostFindings = 60
/** Bytes between two signs of progress. */
const stride = 2 << 20

function answer(message: Answer): void {
  postMessage(message)
}

addEventListener('message', (event: MessageEvent<Ask>) => {
  work(event.data).then(answer, (error: unknown) =>
    answer({ what: 'failed', why: error instanceof Error ? error.message : String(error) }),
  )
})

async function work(ask: Ask): Promise<Answer> {
  if (ask.what === 'look') return { what: 'looked', looked: await look(ask.file) }
  return ask.what === 'decode' ? decode(ask.file, ask.columns) : hash(ask.file)
}

async function hash(file: File): Promise<Answer> {
  const hasher = sha256.create()
  await readFile(file, (chunk) => hasher.update(chunk))
  return { what: 'hashed', sha256: bytesToHex(hasher.digest()) }
}

async function decode(file: File, columns: Readonly<Record<string, string>> | null): Promise<Answer> {
  const hasher = sha256.create()
  const intake = new RecordingIntake()
  const kept = new Kept()
  const strip = new StripGatherer()
  const findings: Finding[] = []
  let messages = 0
  let count = 0
  let leftOut = 0
  const decoding = decodeCapture({
    message: (message) => {
      messages++
      intake.message(message)
      strip.message(message)
      kept.add(keptLine(message))
    },
    announcement: intake.announcement,
    finding: (finding) => {
      intake.finding(finding)
      if (finding.severity === 'error') leftOut++
      if (count++ < mostFindings) findings.push(finding)
    },
    ...(columns === null ? {} : { columns }),
  })
  let bytes = 0
  let told = 0
  await readFile(file, (chunk) => {
    hasher.update(chunk)
    decoding.push(chunk)
    bytes += chunk.length
    if (bytes - told < stride) return
    told = bytes
    answer({ what: 'progress', bytes, frames: decoding.summary.frames, messages })
  })
  const result = decoding.end()
  const keptBytes = kept.end()
  const taken = intake.finish(result, {
    name: file.name,
    bytes: file.size,
    sha256: bytesToHex(hasher.digest()),
    keptSha256: keptBytes.sha256,
  })
  const { summary } = result
  const decoded: Decoded = {
    kept: { ...keptBytes, name: file.name },
    name: file.name,
    bytes: file.size,
    format: result.recognised.format,
    reason: result.recognised.reason,
    frames: summary.frames,
    messages: summary.messages,
    incomplete: summary.incomplete,
    negative: summary.negative,
    units: taken.recording.units,
    vins: taken.vins,
    notVins: taken.notVins,
    scannedUnits: taken.scannedUnits,
    faults: taken.faults,
    findings,
    moreFindings: count - findings.length,
    leftOut,
    strip: strip.end(),
    facts: {
      before: taken.facts('before'),
      after: taken.facts('after'),
      cleared: taken.facts('cleared'),
      cycled: taken.facts('cycled'),
      keep: taken.facts(null),
    },
  }
  return { what: 'decoded', decoded }
}
