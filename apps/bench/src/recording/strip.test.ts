import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import { decodeCapture, type Message } from '@shearline/bus'
import { keptLine } from '@shearline/jobfile'
import { recordingAfter } from '@shearline/jobfile/demo'
import { describe, expect, it } from 'vitest'
import { filtersPassed } from './filters.ts'
import { marksOf, mostLanes } from './marks.ts'
import { MessageLog, NotTheKept } from './message-log.ts'
import { StripGatherer } from './strip.ts'

/** The messages of a text, as the engine reads them. */
function messagesOf(text: string): Message[] {
  const messages: Message[] = []
  const decoding = decodeCapture({ message: (message) => messages.push(message) })
  decoding.push(new TextEncoder().encode(text))
  decoding.end()
  return messages
}

async function logOf(messages: readonly Message[]) {
  const text = messages.map(keptLine).join('')
  const hash = bytesToHex(sha256(new TextEncoder().encode(text)))
  return MessageLog.read(new Blob([text]), hash, () => undefined)
}

const messages = messagesOf(recordingAfter(1_767_960_000))
const all = { filter: 'all', words: '', slices: 20 } as const

describe('a strip', () => {
  it('made of the kept lines is the one made of the messages themselves', async () => {
    const gatherer = new StripGatherer()
    for (const message of messages) gatherer.message(message)
    expect(messages.length).toBeGreaterThan(50)
    expect((await logOf(messages)).strip).toEqual(gatherer.end())
  })

  it('marks the restart and the sessions that the invented recording holds, in few lanes', async () => {
    const { strip } = await logOf(messages)
    const { marks, lanes } = marksOf(strip)
    expect(marks.filter((mark) => mark.kind === 'reset').map((mark) => mark.unit)).toEqual(['758'])
    expect(lanes.length).toBeLessThanOrEqual(mostLanes)
    for (const mark of marks) {
      expect(mark.from).toBeGreaterThanOrEqual(strip.from)
      expect(mark.to).toBeLessThanOrEqual(strip.to)
    }
  })

  it('tells supply volts of PID 42 in millivolts (SAE J1979)', async () => {
    const { strip } = await logOf(
      messagesOf('(1.000000) can0 7E0#0201420000000000\n(1.010000) can0 7E8#04414230D4000000\n'),
    )
    expect(marksOf(strip).supply).toMatchObject([{ unit: '7E8', low: 12.5, high: 12.5 }])
  })
})

describe('the log of kept messages', () => {
  it('answers a span, a filter and words as looking at every message does', async () => {
    const log = await logOf(messages)
    const { from, to } = log.strip
    const whole = log.ask({ from, to, ...all })
    expect(whole.matches.length).toBe(messages.length)
    expect(whole.total.reduce((sum, count) => sum + count)).toBe(messages.length)
    const changed = log.ask({ from, to, ...all, filter: 'changed' })
    expect([...changed.matches]).toEqual(
      messages.flatMap((message, index) => ((filtersPassed(message) & 2) === 0 ? [] : [index])),
    )
    expect(changed.matches.length).toBeGreaterThan(0)
    expect(changed.matches.length).toBeLessThan(messages.length)
    const found = log.ask({ from, to, ...all, words: '758' })
    expect([...found.matches]).toEqual(
      messages.flatMap((message, index) => (message.id === '758' ? [index] : [])),
    )
    const half = log.ask({ from, to: (from + to) / 2, ...all })
    expect(half.matches.length).toBeLessThan(messages.length)
  })

  it('gives back the very lines that were kept', async () => {
    const log = await logOf(messages)
    const last = messages.length - 1
    const lines = await log.lines([last, 0])
    expect(lines.map((line) => `${JSON.stringify(line)}\n`)).toEqual(
      [messages[last], messages[0]].map((message) => keptLine(message as Message)),
    )
  })

  it('refuses bytes that are not those on record', async () => {
    await expect(MessageLog.read(new Blob(['{}\n']), '0'.repeat(64), () => undefined)).rejects.toThrow()
    await expect(MessageLog.read(new Blob([]), '0'.repeat(64), () => undefined)).rejects.toThrow(NotTheKept)
  })
})

describe('a message that changed the car', () => {
  const one = (...data: string[]) =>
    messagesOf(data.map((line, index) => `(${index + 1}.000000) can0 ${line}\n`).join(''))

  it('is what a unit confirmed, not what was asked or refused (ISO 14229-1 service 11)', () => {
    const [asked, refused] = one('758#0211010000000000', '760#037F112200000000')
    const [, confirmed] = one('758#0211010000000000', '760#0251010000000000')
    const changed = (message: Message | undefined) =>
      message !== undefined && (filtersPassed(message) & 2) !== 0
    expect([asked, refused, confirmed].map(changed)).toEqual([false, false, true])
    expect(refused && filtersPassed(refused) & 4).toBe(4)
  })
})
