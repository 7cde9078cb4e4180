/**
 * @module The loop over packets that are alike, compiled.
 *
 * It does what `AlikePackets` does in TypeScript (see there for what is taken), one loop for each way a packet can
 * stand in a recording (`Shape`).
 */

import { findSlotByFirst, slotIsPlain } from '../capture/known-ids.ts'
import { block, type Code, choose, i32, jump, jumpIf, type Local, loop, v128 } from '../wasm/instructions.ts'
import { Locals, type Memory, moduleBytes, start } from '../wasm/module.ts'

/** How packets stand in a recording: places from the start of a record or block. */
export interface Shape {
  readonly littleEndian: boolean
  /** The upper word of the time, in a block's first sixteen bytes; the lower one must not be less than the last. */
  readonly upperAt: number
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
  /** What a usual packet is like from its captured length on: pattern and limits of sixteen bytes. */
  usualPattern: 80,
  usualLimits: 96,
} as const

/**
 * Nearly all packets hold a whole classic frame and nothing beside it: sixteen bytes, whose length bytes, data length
 * and flags stand together. They are known by two comparisons.
 */
function usualBytes({ packetAt, lengthAt }: Shape): number {
  return packetAt + CLASSIC_BYTES + (lengthAt === undefined ? 0 : 4)
}

/** Whether a shape's packets have such a stretch: cooked ones have their header in between. */
function hasUsual({ packetAt, capturedAt, cookedBytes }: Shape): boolean {
  return cookedBytes === 0 && packetAt === capturedAt + 8
}

/** Writes into a track's control what usual packets are like. */
export function writeUsual(control: Uint8Array, { littleEndian }: Shape): void {
  const captured = littleEndian ? [CLASSIC_BYTES, 0, 0, 0] : [0, 0, 0, CLASSIC_BYTES]
  // Captured and original length, identifier, data length, flags (none from `FDF_FLAG` on), two bytes of no meaning.
  control.set([...captured, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0], CONTROL.usualPattern)
  const rest = [CLASSIC_BYTES - FRAME_HEAD_BYTES, FDF_FLAG - 1, 255, 255]
  control.set([0, 0, 0, 0, 255, 255, 255, 255, 255, 255, 255, 255, ...rest], CONTROL.usualLimits)
}

/**
 * Reads packets from address `at` on; gives the address of the first that is not taken, or the one after a packet of
 * which a frame must be made. `end` is the end of the chunk.
 */
export type ScanPackets = (control: number, table: number, at: number, end: number) => number

/** Starts the loop for a shape over a memory; `undefined` where the host cannot. */
export function startScanPackets(shape: Shape, memory: Memory): ScanPackets | undefined {
  return start<Parameters<ScanPackets>>(scanPacketsModule(shape), memory)
}

/** From inside a choice: out of the loop. */
const OUT = 2

function scanPacketsModule(shape: Shape): Uint8Array {
  const { packetAt, cookedBytes, lengthAt } = shape
  const frameAt = packetAt + cookedBytes
  const locals = new Locals(4)
  const [control, table, at, end] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [time, thisTime, captured, length] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [count, counted, slot, mostTime] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [key, found] = [locals.i64(), locals.i64()]
  const next = locals.i32()
  const id = locals.i32()
  const [pattern, limits] = [locals.v128(), locals.v128()]
  const [usualHead, usualHeadLimits] = [locals.v128(), locals.v128()]
  const [usualRest, usualRestLimits] = [locals.v128(), locals.v128()]

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
          jumpIf(OUT, differs(packetAt, CONTROL.cooked)),
          ...(cookedBytes === 16
            ? []
            : [
                jumpIf(
                  OUT,
                  i32.ne(i32.load(at.get, packetAt + 16), i32.load(control.get, CONTROL.cookedRest)),
                ),
              ]),
        ]
  const lengths: Code[] =
    lengthAt === undefined
      ? [length.set(i32.add(captured.get, i32.const(packetAt)))]
      : [
          read(length, lengthAt),
          jumpIf(OUT, i32.gtU(length.get, i32.const(MOST_BLOCK_BYTES))),
          jumpIf(OUT, i32.ltU(length.get, i32.add(captured.get, i32.const(packetAt + 4)))),
          jumpIf(OUT, i32.and(length.get, i32.const(3))),
          jumpIf(
            OUT,
            i32.ne(i32.load(i32.sub(i32.add(at.get, length.get), i32.const(4))), i32.load(at.get, lengthAt)),
          ),
        ]
  const room = i32.sub(captured.get, i32.const(cookedBytes + FRAME_HEAD_BYTES))

  /** Any packet that is alike: leaves the loop where it is not, and sets where the next one starts. */
  const any: Code[] = [
    jumpIf(OUT, i32.eqz(v128.allSet(v128.notAbove(v128.xor(v128.load(at.get), pattern.get), limits.get)))),
    read(captured, shape.capturedAt),
    jumpIf(OUT, i32.gtU(room, i32.const(CLASSIC_BYTES - FRAME_HEAD_BYTES))),
    ...lengths,
    ...cooked,
    jumpIf(OUT, i32.gtU(i32.load8(at.get, frameAt + 4), room)),
    jumpIf(OUT, i32.and(i32.load8(at.get, frameAt + 5), i32.const(FDF_FLAG))),
    next.set(i32.add(at.get, length.get)),
  ]
  const usual = usualBytes(shape)
  const isUnusual = v128.anySet(
    v128.or(
      v128.above(v128.xor(v128.load(at.get), usualHead.get), usualHeadLimits.get),
      v128.above(v128.xor(v128.load(at.get, shape.capturedAt), usualRest.get), usualRestLimits.get),
    ),
  )
  const usualLength = i32.const(shape.littleEndian ? usual : usual << 24)
  const packet: Code[] = [
    read(thisTime, shape.timeAt),
    jumpIf(1, i32.ltU(thisTime.get, time.get)),
    jumpIf(1, i32.gtU(thisTime.get, mostTime.get)),
    // Guessed to be usual, the place of the next one is known before this one is looked at.
    choose(hasUsual(shape) ? isUnusual : i32.const(1), any, [
      ...(lengthAt === undefined ? [] : [jumpIf(OUT, i32.ne(i32.load(at.get, usual - 4), usualLength))]),
      next.set(i32.add(at.get, i32.const(usual))),
    ]),
    // What stands beyond the chunk is of another time.
    jumpIf(1, i32.gtU(next.get, end.get)),
    id.set(i32.load(at.get, frameAt)),
    findSlotByFirst(id, KNOWN, key, table, slot, found, 1),
    time.set(thisTime.get),
    // One after the other as long as they are plain.
    choose(slotIsPlain(slot), [
      count.set(i32.add(count.get, i32.const(1))),
      counted.set(thisTime.get),
      at.set(next.get),
      jumpIf(1, i32.ltU(at.get, end.get)),
      jump(2),
    ]),
    i32.store(control.get, slot.get, CONTROL.slot),
    i32.store(control.get, at.get, CONTROL.block),
    at.set(next.get),
  ]

  const body = [
    ...pattern.set(v128.load(control.get, CONTROL.headPattern)),
    ...limits.set(v128.load(control.get, CONTROL.headLimits)),
    ...usualRest.set(v128.load(control.get, CONTROL.usualPattern)),
    ...usualRestLimits.set(v128.load(control.get, CONTROL.usualLimits)),
    ...usualHead.set(
      lengthAt === undefined ? pattern.get : v128.withI32(pattern.get, lengthAt / 4, usualLength),
    ),
    ...usualHeadLimits.set(
      lengthAt === undefined ? limits.get : v128.withI32(limits.get, lengthAt / 4, i32.const(0)),
    ),
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
