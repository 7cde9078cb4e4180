/**
 * @module The loop over lines that are alike, compiled: sixteen characters at a time.
 *
 * It does what `AlikeLines` does in TypeScript (see there for what is taken). A line's beginning is compared with a
 * pattern: a character must not be above its limit after it was combined (exclusive or) with the pattern's, which is
 * 0 for a fixed character and 9 for a decimal digit (`0` to `9` are 30 to 39 in ASCII).
 */

import { findSlot, setSlotDigits, slotDigits, slotIsPlain } from '../capture/known-ids.ts'
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
  sixteen,
  v128,
} from '../wasm/instructions.ts'
import { Locals, type Memory, moduleBytes, start } from '../wasm/module.ts'

/** Places in a track's control, in bytes. */
export const CONTROL = {
  /** The beginning of a line and the sixteen characters before its identifier: pattern and limits of each. */
  headPattern: 0,
  headLimits: 16,
  namePattern: 32,
  nameLimits: 48,
  /** The sixteen characters before `)` of the last line, the last one lowest; and which of the upper eight count. */
  timeLow: 64,
  timeHigh: 72,
  timeHighMask: 80,
  /** Where `)` and the identifier stand in a line. */
  closeAt: 88,
  idAt: 92,
  /** The line end as a number, which of its two bytes count, how many they are. */
  lineEnd: 96,
  lineEndMask: 100,
  lineEndBytes: 104,
  /** Told by the loop: how many lines were only counted, and the start of the last of them. */
  count: 108,
  lastCounted: 112,
  /** Told by the loop of the line a frame must be made of: its slot (0 when there is none), start, data and digits. */
  slot: 116,
  line: 120,
  data: 124,
  digits: 128,
} as const

/**
 * Reads lines from address `at` on; gives the address of the first that is not taken, or the one after a line of
 * which a frame must be made. `end` is the end of the chunk.
 */
export type ScanLines = (control: number, table: number, at: number, end: number) => number

const HASH = 0x23
const REVERSED: readonly number[] = Array.from({ length: 16 }, (_, index) => 15 - index)
const MOST_DIGITS = 16

/** Starts the loop over a memory; `undefined` where the host cannot. */
export function startScanLines(memory: Memory): ScanLines | undefined {
  new Uint8Array(memory.buffer, BEYOND_AT + 16, 16).fill(0xff)
  return start<Parameters<ScanLines>>(scanLinesModule(), memory)
}

function scanLinesModule(): Uint8Array {
  const locals = new Locals(4)
  const [control, table, at, end] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [closeAt, idAt, lineEnd, lineEndMask] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [count, last, data, digits, slot] = [
    locals.i32(),
    locals.i32(),
    locals.i32(),
    locals.i32(),
    locals.i32(),
  ]
  const [low, high, highMask, thisLow, thisHigh] = [
    locals.i64(),
    locals.i64(),
    locals.i64(),
    locals.i64(),
    locals.i64(),
  ]
  const [key, found] = [locals.i64(), locals.i64()]
  const [headPattern, headLimits, namePattern, nameLimits, time, next] = [
    locals.v128(),
    locals.v128(),
    locals.v128(),
    locals.v128(),
    locals.v128(),
    locals.i32(),
  ]

  const endsHere = i32.eq(i32.and(i32.load16(i32.add(data.get, digits.get)), lineEndMask.get), lineEnd.get)
  const isAlike = (from: Code, pattern: Local, limits: Local): Code =>
    v128.notAbove(v128.xor(v128.load(from), pattern.get), limits.get)

  const line: Code[] = [
    // The beginning: brackets, point, blanks, name and whole seconds as before, decimals any digits.
    jumpIf(
      1,
      i32.eqz(
        v128.allSet(
          v128.and(
            isAlike(at.get, headPattern, headLimits),
            isAlike(i32.add(at.get, i32.sub(idAt.get, i32.const(16))), namePattern, nameLimits),
          ),
        ),
      ),
    ),
    // The time is not before the last one.
    time.set(v128.shuffle(v128.load(i32.add(at.get, i32.sub(closeAt.get, i32.const(16)))), REVERSED)),
    thisLow.set(v128.i64(time.get, 0)),
    thisHigh.set(i64.and(v128.i64(time.get, 1), highMask.get)),
    jumpIf(
      1,
      i32.or(
        i64.ltU(thisHigh.get, high.get),
        i32.and(i64.eq(thisHigh.get, high.get), i64.ltU(thisLow.get, low.get)),
      ),
    ),
    // The identifier with its `#`: three digits, or eight.
    data.set(i32.add(at.get, idAt.get)),
    digits.set(i32.load(data.get)),
    choose(
      i32.eq(i32.shrU(digits.get, i32.const(24)), i32.const(HASH)),
      [key.set(i64.fromI32(digits.get)), data.set(i32.add(data.get, i32.const(4)))],
      [
        jumpIf(2, i32.ne(i32.load8(data.get, 8), i32.const(HASH))),
        key.set(i64.load(data.get)),
        data.set(i32.add(data.get, i32.const(9))),
      ],
    ),
    findSlot(key, table, slot, found, 1),
    // The line end stands where it stood on this identifier's last line, or is looked for.
    digits.set(slotDigits(slot)),
    choose(i32.eqz(endsHere), [
      digits.set(i32.const(0)),
      loop(
        choose(i32.eqz(endsHere), [
          digits.set(i32.add(digits.get, i32.const(2))),
          jumpIf(4, i32.gtU(digits.get, i32.const(MOST_DIGITS))),
          jump(1),
        ]),
      ),
      setSlotDigits(slot, digits),
    ]),
    next.set(i32.add(i32.add(data.get, digits.get), i32.load(control.get, CONTROL.lineEndBytes))),
    // What stands beyond the chunk is of another time.
    jumpIf(1, i32.gtU(next.get, end.get)),
    time.set(v128.load(data.get)),
    jumpIf(1, i32.eqz(v128.allSet(v128.or(isHex(time.get), beyond(digits.get))))),
    low.set(thisLow.get),
    high.set(thisHigh.get),
    // One after the other as long as they are plain.
    choose(slotIsPlain(slot), [
      count.set(i32.add(count.get, i32.const(1))),
      last.set(at.get),
      at.set(next.get),
      jumpIf(1, i32.ltU(at.get, end.get)),
      jump(2),
    ]),
    i32.store(control.get, slot.get, CONTROL.slot),
    i32.store(control.get, at.get, CONTROL.line),
    at.set(next.get),
    i32.store(control.get, data.get, CONTROL.data),
    i32.store(control.get, digits.get, CONTROL.digits),
  ]

  const body = [
    ...closeAt.set(i32.load(control.get, CONTROL.closeAt)),
    ...idAt.set(i32.load(control.get, CONTROL.idAt)),
    ...lineEnd.set(i32.load(control.get, CONTROL.lineEnd)),
    ...lineEndMask.set(i32.load(control.get, CONTROL.lineEndMask)),
    ...low.set(i64.load(control.get, CONTROL.timeLow)),
    ...high.set(i64.load(control.get, CONTROL.timeHigh)),
    ...highMask.set(i64.load(control.get, CONTROL.timeHighMask)),
    ...headPattern.set(v128.load(control.get, CONTROL.headPattern)),
    ...headLimits.set(v128.load(control.get, CONTROL.headLimits)),
    ...namePattern.set(v128.load(control.get, CONTROL.namePattern)),
    ...nameLimits.set(v128.load(control.get, CONTROL.nameLimits)),
    ...i32.store(control.get, i32.const(0), CONTROL.slot),
    ...block(loop(...line)),
    ...i32.store(control.get, count.get, CONTROL.count),
    ...i32.store(control.get, last.get, CONTROL.lastCounted),
    ...i64.store(control.get, low.get, CONTROL.timeLow),
    ...i64.store(control.get, high.get, CONTROL.timeHigh),
    ...at.get,
  ]
  return moduleBytes(locals, body)
}

/** Which characters are hex digits of either case: all ones for those, zero for the others. */
function isHex(characters: Code): Code {
  const decimal = v128.notAbove(v128.xor(characters, sixteen(0x30)), sixteen(9))
  const letter = v128.notAbove(v128.sub(v128.or(characters, sixteen(0x20)), sixteen(0x61)), sixteen(5))
  return v128.or(decimal, letter)
}

/** All ones for the characters from the `digits`th on: part of a row of sixteen zeros and sixteen of all ones. */
function beyond(digits: Code): Code {
  return v128.load(i32.sub(i32.const(BEYOND_AT + 16), digits))
}

/** Where that row stands in the store: in front of the first control. */
const BEYOND_AT = 128
