/** @module Writes frames as candump log text (`candump -L`), for exports, demo recordings and tests. */

import { type CanFrame, formatId, formatTime } from '../frame/index.ts'

/** One frame as a line of log text, with its line end. Error frames carry CAN_ERR_FLAG as `linux/can.h` has it. */
export function candumpLine(frame: CanFrame): string {
  const id = frame.error ? formatId((frame.id | 0x2000_0000) >>> 0, true) : formatId(frame.id, frame.extended)
  return `(${formatTime(frame.time)}) ${frame.channel} ${id}#${contents(frame)}\n`
}

function contents(frame: CanFrame): string {
  if (frame.remote) return 'R'
  let hex = frame.fd ? '#0' : ''
  for (const byte of frame.data) hex += byte.toString(16).toUpperCase().padStart(2, '0')
  return hex
}
