/**
 * @module Makes the recordings that speed is measured on: the same frames as candump text and as pcapng.
 *
 *     node scripts/bench/generate.mjs 1000000 .cache/bench
 */

import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { Random } from './random.mjs'
import { frameMicroseconds, nextPlain, plainTraffic, Tester } from './traffic.mjs'
import { PcapngFile, TextWriter } from './writers.mjs'

/** Raise it when the traffic changes, so that recordings made before are made again. */
const VERSION = 3
const SEED = 20260
const START_SECONDS = 1_700_000_000
/** No session begins so close to the end, so that none is cut. */
const QUIET_FRAMES = 60_000

/** Speakers ordered by when they want to speak: a binary heap. */
class Queue {
  #items = []

  add(item) {
    const items = this.#items
    let at = items.length
    items.push(item)
    while (at > 0) {
      const parent = (at - 1) >> 1
      if (items[parent].due <= item.due) break
      items[at] = items[parent]
      at = parent
    }
    items[at] = item
  }

  get first() {
    return this.#items[0]
  }

  /** Puts the first item, or another in its stead, where it belongs now. */
  replaceFirst(item) {
    const items = this.#items
    let at = 0
    for (;;) {
      let child = at * 2 + 1
      if (child >= items.length) break
      if (child + 1 < items.length && items[child + 1].due < items[child].due) child++
      if (items[child].due >= item.due) break
      items[at] = items[child]
      at = child
    }
    items[at] = item
  }

  dropFirst() {
    const last = this.#items.pop()
    if (this.#items.length > 0) this.replaceFirst(last)
  }
}

/** Tells every frame to the writers; returns what a decoder must find in them. */
function speak(frames, writers) {
  const random = new Random(SEED)
  const tester = new Tester(SEED + 1)
  const queue = new Queue()
  for (const message of plainTraffic(random)) queue.add(message)
  let now = 0
  let busy = 0
  let diagnostic = 0
  const send = (id, extended, data, length) => {
    const time = frameMicroseconds(extended, length)
    now += time
    busy += time
    const seconds = START_SECONDS + Math.floor(now / 1e6)
    for (const writer of writers) writer.frame(seconds, now % 1e6, id, extended, data, length)
  }
  for (let count = 0; count < frames; count++) {
    if (now >= tester.due && count < frames - QUIET_FRAMES)
      for (const talk of tester.begin(now)) if (talk !== undefined) queue.add(talk)
    const speaker = queue.first
    if (speaker.due > now) now = speaker.due
    if (speaker.frames === undefined) {
      nextPlain(speaker, random)
      send(speaker.id, speaker.extended, speaker.data, speaker.length)
      speaker.due += speaker.period
      queue.replaceFirst(speaker)
      continue
    }
    const frame = speaker.frames[speaker.at++]
    send(frame.id, frame.extended, frame.data, 8)
    diagnostic++
    const next = speaker.frames[speaker.at]
    const following = next === undefined ? tester.over(now) : speaker
    if (next !== undefined) speaker.due = now + next.pause
    if (following === undefined) queue.dropFirst()
    else queue.replaceFirst(following)
  }
  return { frames, diagnosticFrames: diagnostic, seconds: now / 1e6, load: busy / now, ...tester.counts }
}

/** The recordings of `frames` frames in `folder`, made unless they are there: their paths and what they hold. */
export function recordings(frames, folder) {
  mkdirSync(folder, { recursive: true })
  const text = join(folder, `${frames}.log`)
  const pcapng = join(folder, `${frames}.pcapng`)
  const about = join(folder, `${frames}.json`)
  if (existsSync(about)) {
    const known = JSON.parse(readFileSync(about, 'utf8'))
    if (known.version === VERSION) return { text, pcapng, holds: known }
  }
  const writers = [new TextWriter(`${text}.part`), new PcapngFile(`${pcapng}.part`)]
  const holds = { version: VERSION, ...speak(frames, writers) }
  for (const writer of writers) writer.close()
  renameSync(`${text}.part`, text)
  renameSync(`${pcapng}.part`, pcapng)
  writeFileSync(about, `${JSON.stringify(holds)}\n`)
  return { text, pcapng, holds }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const [frames = '1000000', folder = '.cache/bench'] = process.argv.slice(2)
  console.log(JSON.stringify(recordings(Number(frames), folder)))
}
