/**
 * @module A plain reading of candump's log layout, to check the fast parser against: short and obvious, with the
 * pattern taken from how `can-utils` prints (`snprintf_canframe`). It knows nothing of the parser it checks.
 */

const LINE =
  /^[ \t]*\([ \t]*(\d+)(?:\.(\d*))?\)[ \t]+(\S{1,15})[ \t]+([0-9A-Fa-f]{3}|[0-9A-Fa-f]{8})#(?:(#[0-9A-Fa-f])?((?:[0-9A-Fa-f]{2})*)(_[0-9A-Fa-f])?|(R(?:[0-8](?:_[0-9A-Fa-f])?)?))(?:[ \t]+[RT]?)?[ \t]*$/

export interface PlainFrame {
  readonly seconds: number
  readonly fraction: string
  readonly channel: string
  readonly id: number
  readonly extended: boolean
  readonly error: boolean
  readonly remote: boolean
  readonly fd: boolean
  readonly data: readonly number[]
}

/** The frame on a line of log text, or `undefined`. */
export function plainFrame(line: string): PlainFrame | undefined {
  const parts = LINE.exec(line)
  if (parts === null) return undefined
  const [, seconds = '', fraction = '', channel = '', digits = '', fd, hex = '', raw, remote] = parts
  const id = Number.parseInt(digits, 16)
  const error = digits.length === 8 && Math.floor(id / 0x20000000) % 2 === 1
  if (digits.length === 3 ? id > 0x7ff : !error && id > 0x1fffffff) return undefined
  const data = (hex.match(/../g) ?? []).map((pair) => Number.parseInt(pair, 16))
  const lengths =
    fd === undefined ? [0, 1, 2, 3, 4, 5, 6, 7, 8] : [0, 1, 2, 3, 4, 5, 6, 7, 8, 12, 16, 20, 24, 32, 48, 64]
  if (!lengths.includes(data.length) || (raw !== undefined && (fd !== undefined || data.length !== 8)))
    return undefined
  if (seconds.length > 15) return undefined
  return {
    seconds: Number(seconds),
    fraction: fraction.slice(0, 9),
    channel,
    id: error ? id % 0x20000000 : id,
    extended: digits.length === 8 && !error,
    error,
    remote: remote !== undefined,
    fd: fd !== undefined,
    data,
  }
}
