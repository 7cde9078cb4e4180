/** @module Messages as JSON text, without making objects of them first: long recordings hold tens of thousands. */

import type { Heard } from '../addressing/heard.ts'
import type { Where } from '../finding/index.ts'
import { formatTime } from '../frame/index.ts'
import { nameOfService } from '../message/interpret.ts'
import type { MessageKind, Protocol } from '../message/types.ts'
import { redactedHex, secretRanges } from '../redaction/index.ts'
import { hexByte } from '../uds/reader.ts'
import type { Received, Understood } from './present.ts'

/**
 * Writes messages as `JSON.stringify(messageLine(message))` does. What many messages have in common is written once.
 * Times, identifiers, hex and the words of our tables need no escapes; a channel has any name.
 */
export class MessageTexts {
  readonly #raw: boolean
  readonly #senders: Map<Heard, string> = new Map()
  /** By service, then by dialect and kind: all the values there are. */
  readonly #services: Map<string, string>[] = []

  /** With `raw` secret bytes are written too. */
  constructor(raw: boolean) {
    this.#raw = raw
  }

  /** One message. */
  text(received: Received, { kind, service, protocol, meaning }: Understood): string {
    const { from, payload, incomplete, direction, time, startTime } = received
    const ended = formatTime(time)
    const same = time.seconds === startTime.seconds && time.nanoseconds === startTime.nanoseconds
    const began = same && time.decimals === startTime.decimals ? ended : formatTime(startTime)
    const hex = redactedHex(payload, this.#raw ? [] : secretRanges(payload))
    const head = `{"time":"${ended}${this.#sender(from)}${hex}","complete":`
    const what = `${incomplete === undefined}${this.#service(protocol, service, kind)}${began}","length":${received.expected}`
    const where = `,"where":${whereText(received.where)}`
    const rare = incomplete === undefined ? where : `,"incomplete":"${incomplete}"${where}`
    const told = direction === undefined ? rare : `${rare},"direction":"${direction}"`
    const said = JSON.stringify(meaning)
    return said === '{}' ? `${head}${what}${told}}` : `${head}${what}${told},${said.slice(1)}`
  }

  #sender(from: Heard): string {
    let text = this.#senders.get(from)
    if (text === undefined) {
      text = `","channel":${JSON.stringify(from.channel)},"id":"${from.id}","payload":"`
      this.#senders.set(from, text)
    }
    return text
  }

  #service(protocol: Protocol, service: number, kind: MessageKind): string {
    const texts = this.#services[service] ?? new Map<string, string>()
    this.#services[service] = texts
    const key = protocol + kind
    let text = texts.get(key)
    if (text === undefined) {
      const name = nameOfService(protocol, service)
      text = `,"protocol":"${protocol}","service":"${hexByte(service)}","kind":"${kind}","name":"${name}","startTime":"`
      texts.set(key, text)
    }
    return text
  }
}

function whereText(where: Where): string {
  if (where.part !== undefined || (where.line !== undefined && where.byteOffset !== undefined))
    return JSON.stringify(where)
  if (where.line !== undefined) return `{"line":${where.line}}`
  return where.byteOffset === undefined ? '{}' : `{"byteOffset":${where.byteOffset}}`
}
