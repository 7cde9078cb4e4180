/**
 * @module Services 01 (current data) and 02 (freeze frame) of SAE J1979 on CAN.
 *
 * An answer may hold several PIDs without their lengths. It is divided only when lengths two sources agree on fill it
 * to the last byte with PIDs that are all different; else the first PID is read and the rest handed on undivided.
 */

import type { DataRecord, Meaning } from '../message/types.ts'
import { hexByte, hexBytes, identifier, tooShort } from '../uds/reader.ts'
import { joined, pidMeaning } from './pid-data.ts'
import { certainPidBytes, nameOfPid, PIDS } from './pids.ts'

interface Piece {
  readonly pid: number
  /** First byte of the data, and the byte behind it. */
  readonly from: number
  readonly to: number
}

/** Cuts a message into PIDs; `head` bytes (PID, and frame in service 02) stand before the data of each. */
function pieces(payload: Uint8Array, head: number): readonly Piece[] | undefined {
  const found: Piece[] = []
  const seen = new Set<number>()
  for (let at = 1; at < payload.length; ) {
    const pid = payload[at] as number
    const bytes = certainPidBytes(pid)
    // The same PID may stand once per frame.
    const key = (pid << 8) | (head === 2 ? (payload[at + 1] ?? 0) : 0)
    if (bytes === undefined || at + head + bytes > payload.length || seen.has(key)) return undefined
    seen.add(key)
    found.push({ pid, from: at + head, to: at + head + bytes })
    at += head + bytes
  }
  return found
}

function pieceMeaning(payload: Uint8Array, piece: Piece, frame: number | undefined): Meaning {
  const { pid, from, to } = piece
  const data = payload.subarray(from, to)
  const row = PIDS.get(pid)
  const meaning = row !== undefined && row.bytes === data.length ? pidMeaning(row, data) : {}
  const dids = [identifier(hexByte(pid), nameOfPid(pid))]
  const known = Object.keys(meaning).length > 0
  if (known && frame === undefined) return { dids, ...meaning }
  const record: DataRecord = {
    kind: frame === undefined ? 'data' : 'freeze-frame',
    ...(frame === undefined ? {} : { number: frame }),
    did: hexByte(pid),
    name: nameOfPid(pid),
    bytes: hexBytes(payload, from, to),
  }
  return { dids, ...meaning, records: [record] }
}

function answer(payload: Uint8Array, head: 1 | 2): Meaning {
  const pid = payload[1]
  if (pid === undefined) return tooShort(2)
  const from = 1 + head
  const frame = head === 2 ? payload[2] : undefined
  if (head === 2 && frame === undefined)
    return { dids: [identifier(hexByte(pid), nameOfPid(pid))], ...tooShort(3) }
  // Nearly every answer holds one PID.
  if (head === 1 && certainPidBytes(pid) === payload.length - from) {
    return pieceMeaning(payload, { pid, from, to: payload.length }, undefined)
  }
  const divided = pieces(payload, head)
  if (divided !== undefined) {
    let meaning: Meaning = frame === undefined ? {} : { values: { frameNumber: frame } }
    for (const piece of divided) {
      meaning = joined(
        meaning,
        pieceMeaning(payload, piece, head === 2 ? payload[piece.from - 1] : undefined),
      )
    }
    return meaning
  }
  return alone(payload, pid, from, frame)
}

/** An answer that cannot be divided: its first PID is certain, and its data where there is enough of it. */
function alone(payload: Uint8Array, pid: number, from: number, frame: number | undefined): Meaning {
  const first: Meaning = {
    dids: [identifier(hexByte(pid), nameOfPid(pid))],
    ...(frame === undefined ? {} : { values: { frameNumber: frame } }),
  }
  const left = payload.length - from
  const bytes = certainPidBytes(pid)
  if (bytes !== undefined && left < bytes) return { ...first, ...tooShort(from + bytes) }
  // Lengths of one source only: believed when the message ends just there.
  const whole = bytes ?? (PIDS.get(pid)?.bytes === left ? left : undefined)
  const place = whole === undefined ? from : from + whole
  const read = whole === undefined ? {} : pieceMeaning(payload, { pid, from, to: place }, frame)
  if (place === payload.length) return whole === undefined ? first : joined(first, { ...read, dids: [] })
  const rest: DataRecord = {
    kind: frame === undefined ? 'data' : 'freeze-frame',
    ...(frame === undefined || whole !== undefined ? {} : { number: frame }),
    ...(whole === undefined ? { did: hexByte(pid), name: nameOfPid(pid) } : {}),
    bytes: hexBytes(payload, place),
    undivided: true,
  }
  return joined(joined(first, { ...read, dids: [] }), { records: [rest] })
}

/** 41: PIDs with their data. */
export function currentData(payload: Uint8Array): Meaning {
  return answer(payload, 1)
}

/** 42: PIDs, each with its frame number and data. */
export function freezeFrame(payload: Uint8Array): Meaning {
  return answer(payload, 2)
}

/** 02: PIDs, each with the number of the frame asked for. */
export function askFreezeFrame(payload: Uint8Array): Meaning {
  if (payload.length < 3) return tooShort(3)
  const dids = []
  for (let at = 1; at + 2 <= payload.length; at += 2) {
    const pid = payload[at] as number
    dids.push(identifier(hexByte(pid), nameOfPid(pid)))
  }
  return { dids, values: { frameNumber: payload[2] as number } }
}
