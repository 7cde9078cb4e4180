/** @module Reads, hashes and decodes a recording away from the page, so that the page stays answering. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import { decodeCapture, type Finding } from '@shearline/bus'
import { keptLine, RecordingIntake } from '@shearline/jobfile'
import { Kept } from './kept.ts'
import { readFile } from './read-file.ts'
import type { Answer, Ask, Decoded } from './worker-messages.ts'

/** Findings listed one by one; the rest are counted. */
const mostFindings = 60
/** Bytes between two signs of progress. */
const stride = 4 << 20

function answer(message: Answer): void {
  postMessage(message)
}

addEventListener('message', (event: MessageEvent<Ask>) => {
  const { what, file } = event.data
  const work = what === 'decode' ? decode(file) : hash(file)
  work.then(answer, (error: unknown) =>
    answer({ what: 'failed', why: error instanceof Error ? error.message : String(error) }),
  )
})

async function hash(file: File): Promise<Answer> {
  const hasher = sha256.create()
  await readFile(file, (chunk) => hasher.update(chunk))
  return { what: 'hashed', sha256: bytesToHex(hasher.digest()) }
}

async function decode(file: File): Promise<Answer> {
  const hasher = sha256.create()
  const intake = new RecordingIntake()
  const kept = new Kept()
  const findings: Finding[] = []
  let count = 0
  const decoding = decodeCapture({
    message: (message) => {
      intake.message(message)
      kept.add(keptLine(message))
    },
    announcement: intake.announcement,
    finding: (finding) => {
      intake.finding(finding)
      if (count++ < mostFindings) findings.push(finding)
    },
  })
  let bytes = 0
  let told = 0
  await readFile(file, (chunk) => {
    hasher.update(chunk)
    decoding.push(chunk)
    bytes += chunk.length
    if (bytes - told < stride) return
    told = bytes
    answer({ what: 'progress', bytes })
  })
  const result = decoding.end()
  const keptBytes = kept.end()
  const taken = intake.finish(result, {
    name: file.name,
    bytes: file.size,
    sha256: bytesToHex(hasher.digest()),
    keptSha256: keptBytes.sha256,
  })
  const { frames, messages, incomplete, negative } = result.summary
  const decoded: Decoded = {
    kept: { ...keptBytes, name: file.name },
    name: file.name,
    bytes: file.size,
    format: result.recognised.format,
    reason: result.recognised.reason,
    frames,
    messages,
    incomplete,
    negative,
    units: taken.recording.units,
    vins: taken.vins,
    notVins: taken.notVins,
    scannedUnits: taken.scannedUnits,
    faults: taken.faults,
    findings,
    moreFindings: count - findings.length,
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
