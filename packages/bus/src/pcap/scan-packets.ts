/**
 * @module The loop over packets that are alike, compiled.
 *
 * It does what `AlikePackets` does in TypeScript (see there for what is taken), one loop for each way a packet can
 * stand in a recording (`Shape`).
 */

import { findSlot, slotIsPlain } from '../capture/known-ids.ts'
import {
  block,
  type Code,
  choose,
  i32,
  i64,
  jump,
  jumpIf,
  type Local,
  loop,
  v128,
} from '../wasm/instructions.ts'
import { Locals, type Memory, moduleBytes, start } from '../wasm/module.ts'

/** How packets stand in a recording: places from the start of a record or block. */
export interface Shape {
  readonly littleEndian: boolean
  /** The lower word of the time: it must not be less than the last one's. */
  readonly timeAt: number
  readonly capturedAt: number
  readonly packetAt: number
  /** Where the length of the whole block stands, and once more at its end; `undefined` where nothing states it. */
  readonly lengthAt: number | undefined
  /** Bytes of a packet before the SocketCAN frame: 0, 16 or 20 (cooked). */
  readonly cookedBytes: number
}

/** Bytes before the data of a SocketCAN frame, and of a whole classic one. */
export const FRAME_HEAD_BYTES = 8
export const CLASSIC_BYTES = 16
/** The longest block taken: a whole classic frame and some options. */
export const MOST_BLOCK_BYTES = 128
/** Set in the flags byte of a CAN FD frame (`CANFD_FDF` of linux/can.h). */
export const FDF_FLAG = 0x04
/** Every known identifier has this as its second word, so that identifier 0 can be told from a free slot. */
export const KNOWN = 1

/** Places in a track's control, in bytes. */
export const CONTROL = {
  /** The first sixteen bytes of a block, and which of them may differ (FF). */
  headPattern: 0,
  headLimits: 16,
  /** The cooked header. */
  cooked: 32,
  cookedRest: 48,
  /** The lower word of the last packet's time. */
  time: 52,
  /** Told by the loop: packets only counted, and the time of the last of them. */
  count: 56,
  lastCounted: 60,
  /** Told by the loop of the packet a frame must be made of: its slot (0 when there is none) and where it starts. */
  slot: 64,
  block: 68,
  /** The most the lower word of a time can be. */
  mostTime: 72,
} as const

/**
 * Reads packets from address `at` on; gives the address of the first that is not taken, or the one after a packet of
 * which a frame must be made. `end` is the end of the chunk.
 */
export type ScanPackets = (control: number, table: number, at: number, end: number) => number

/** Starts the loop for a shape over a memory; `undefined` where the host cannot. */
export function startScanPackets(shape: Shape, memory: Memory): ScanPackets | undefined {
  return start<Parameters<ScanPackets>>(scanPacketsModule(shape), memory)
}

function scanPacketsModule(shape: Shape): Uint8Array {
  const { packetAt, cookedBytes, lengthAt } = shape
  const frameAt = packetAt + cookedBytes
  const locals = new Locals(4)
  const [control, table, at, end] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [time, thisTime, captured, length] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [count, counted, slot, mostTime] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [key, found] = [locals.i64(), locals.i64()]
  const [pattern, limits] = [locals.v128(), locals.v128()]

  /** A number of the recording's byte order into a place. */
  const read = (place: Local, offset: number): Code => {
    const raw = place.set(i32.load(at.get, offset))
    if (shape.littleEndian) return raw
    const odd = i32.and(i32.rotl(place.get, i32.const(8)), i32.const(0x00ff00ff))
    const even = i32.and(i32.rotl(place.get, i32.const(24)), i32.const(0xff00ff00))
    return [...raw, ...place.set(i32.or(odd, even))]
  }
  const differs = (offset: number, from: number): Code =>
    i32.eqz(
      v128.allSet(
        v128.notAbove(
          v128.xor(v128.load(at.get, offset), v128.load(control.get, from)),
          v128.const(new Array<number>(16).fill(0)),
        ),
      ),
    )
  const cooked: Code[] =
    cookedBytes === 0
      ? []
      : [
          jumpIf(1, differs(packetAt, CONTROL.cooked)),
          ...(cookedBytes === 16
            ? []
            : [
                jumpIf(1, i32.ne(i32.load(at.get, packetAt + 16), i32.load(control.get, CONTROL.cookedRest))),
              ]),
        ]
  const lengths: Code[] =
    lengthAt === undefined
      ? [length.set(i32.add(captured.get, i32.const(packetAt)))]
      : [
          read(length, lengthAt),
          jumpIf(1, i32.gtU(length.get, i32.const(MOST_BLOCK_BYTES))),
          jumpIf(1, i32.ltU(length.get, i32.add(captured.get, i32.const(packetAt + 4)))),
          jumpIf(1, i32.and(length.get, i32.const(3))),
          jumpIf(
            1,
            i32.ne(i32.load(i32.sub(i32.add(at.get, length.get), i32.const(4))), i32.load(at.get, lengthAt)),
          ),
        ]

  const packet: Code[] = [
    jumpIf(1, i32.eqz(v128.allSet(v128.notAbove(v128.xor(v128.load(at.get), pattern.get), limits.get)))),
    read(thisTime, shape.timeAt),
    jumpIf(1, i32.ltU(thisTime.get, time.get)),
    jumpIf(1, i32.gtU(thisTime.get, mostTime.get)),
    read(captured, shape.capturedAt),
    jumpIf(
      1,
      i32.gtU(
        i32.sub(captured.get, i32.const(cookedBytes + FRAME_HEAD_BYTES)),
        i32.const(CLASSIC_BYTES - FRAME_HEAD_BYTES),
      ),
    ),
    ...lengths,
    // What stands beyond the chunk is of another time.
    jumpIf(1, i32.gtU(i32.add(at.get, length.get), end.get)),
    ...cooked,
    jumpIf(
      1,
      i32.gtU(
        i32.load8(at.get, frameAt + 4),
        i32.sub(captured.get, i32.const(cookedBytes + FRAME_HEAD_BYTES)),
      ),
    ),
    jumpIf(1, i32.and(i32.load8(at.get, frameAt + 5), i32.const(FDF_FLAG))),
    key.set(i64.withUpper(i64.load32(at.get, frameAt), KNOWN)),
    findSlot(key, table, slot, found, 1),
    time.set(thisTime.get),
    // One after the other as long as they are plain.
    choose(slotIsPlain(slot), [
      count.set(i32.add(count.get, i32.const(1))),
      counted.set(thisTime.get),
      at.set(i32.add(at.get, length.get)),
      jumpIf(1, i32.ltU(at.get, end.get)),
      jump(2),
    ]),
    i32.store(control.get, slot.get, CONTROL.slot),
    i32.store(control.get, at.get, CONTROL.block),
    at.set(i32.add(at.get, length.get)),
  ]

  const body = [
    ...pattern.set(v128.load(control.get, CONTROL.headPattern)),
    ...limits.set(v128.load(control.get, CONTROL.headLimits)),
    ...time.set(i32.load(control.get, CONTROL.time)),
    ...mostTime.set(i32.load(control.get, CONTROL.mostTime)),
    ...i32.store(control.get, i32.const(0), CONTROL.slot),
    ...block(loop(...packet)),
    ...i32.store(control.get, count.get, CONTROL.count),
    ...i32.store(control.get, counted.get, CONTROL.lastCounted),
    ...i32.store(control.get, time.get, CONTROL.time),
    ...at.get,
  ]
  return moduleBytes(locals, body)
}
