/** @module Writes an invented car's answers as a candump recording, frame by frame as ISO-TP carries them. */
import { type CanFrame, candumpLine, continueToSend, segment } from '@shearline/bus'

/** A control unit of the invented car: request and response identifier, and what it is for. */
export interface DemoUnit {
  readonly request: number
  readonly response: number
  readonly role: string
}

const frameMicroseconds = 300
const answerMicroseconds = 7_000
const pauseMicroseconds = 25_000

/** A recording being written; time moves on with every frame, from an instant in whole seconds since 1970. */
export class DemoWire {
  readonly #lines: string[] = []
  #microseconds = 0
  readonly #start: number

  constructor(startSeconds: number) {
    this.#start = startSeconds
  }

  /** Lets time pass. */
  wait(seconds: number): void {
    this.#microseconds += Math.round(seconds * 1_000_000)
  }

  /** A request to one unit and its answers, with flow control where a message takes several frames. */
  ask(unit: DemoUnit, request: readonly number[], ...answers: readonly (readonly number[])[]): void {
    this.#send(unit.request, unit.response, request)
    for (const answer of answers) {
      this.#microseconds += answerMicroseconds
      this.#send(unit.response, unit.request, answer)
    }
    this.#microseconds += pauseMicroseconds
  }

  /** The recording as text. */
  text(): string {
    return this.#lines.join('')
  }

  #send(from: number, to: number, payload: readonly number[]): void {
    const frames = segment(Uint8Array.from(payload), { padding: 0x55 })
    frames.forEach((data, index) => {
      this.#frame(from, data)
      if (index === 0 && frames.length > 1) this.#frame(to, continueToSend(0, 0, { padding: 0x55 }))
    })
  }

  #frame(id: number, data: Uint8Array): void {
    this.#microseconds += frameMicroseconds
    const seconds = this.#start + Math.floor(this.#microseconds / 1_000_000)
    const frame: CanFrame = {
      time: { seconds, nanoseconds: (this.#microseconds % 1_000_000) * 1000, decimals: 6 },
      channel: 'can0',
      id,
      extended: false,
      fd: false,
      remote: false,
      error: false,
      data,
      where: {},
    }
    this.#lines.push(candumpLine(frame))
  }
}
