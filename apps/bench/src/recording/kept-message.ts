/** @module A kept line as the message it was written from, so that the engines can look at it again. */
import { type Message, type MessageLine, type RecordedTime, secondsBetween } from '@shearline/bus'

/** Reads a time as the recording wrote it: `1767960000.123456`. */
export function recordedTime(text: string): RecordedTime {
  const [whole = '0', fraction = ''] = text.split('.')
  return {
    seconds: Number(whole),
    nanoseconds: Number(fraction.slice(0, 9).padEnd(9, '0')),
    decimals: fraction.length,
  }
}

/** The message of a kept line, without its bytes: secret ones are not in it, and its meaning is read already. */
export function messageOf(line: MessageLine): Message {
  return {
    ...line,
    time: recordedTime(line.time),
    startTime: recordedTime(line.startTime),
    payload: new Uint8Array(0),
    redacted: [],
  }
}

/** A refusal that stands: "answer follows later" (78) is none. */
export function isRefusal(message: Pick<Message, 'kind' | 'nrc'>): boolean {
  return message.kind === 'negative' && message.nrc?.code !== '78'
}

/** Seconds from one recorded time to another, both as the recording wrote them. */
export function secondsAfter(start: string, time: string): number {
  return secondsBetween(recordedTime(start), recordedTime(time))
}
