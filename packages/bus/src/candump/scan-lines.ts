/**
 * @module The loop over lines that are alike, compiled: sixteen characters at a time.
 *
 * It does what `AlikeLines` does in TypeScript (see there for what is taken). A line's beginning is compared with a
 * pattern: a character must not be above its limit after it was combined (exclusive or) with the pattern's, which is
 * 0 for a fixed character and 9 for a decimal digit (`0` to `9` are 30 to 39 in ASCII).
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
  /** Told by the loop of the line a frame must be made of: its slot (0 when there is none), start, digits and data. */
  slot: 116,
  line: 120,
  digits: 124,
  data: 128,
} as const

/**
 * Reads lines from address `at` on; gives the address of the first that is not taken, or the one after a line of
 * which a frame must be made. `end` is the end of the chunk.
 */
export type ScanLines = (control: number, table: number, at: number, end: number) => number

const HASH = 0x23
const REVERSED: readonly number[] = Array.from({ length: 16 }, (_, index) => 15 - index)
const MOST_DIGITS = 16

/** More decimals than stand in one 64-bit number. */
export const MANY_DECIMALS = 9

/** Starts the loop over a memory, for times with `MANY_DECIMALS` or with fewer; `undefined` where the host cannot. */
export function startScanLines(memory: Memory, isLong: boolean): ScanLines | undefined {
  new Uint8Array(memory.buffer, MARKS_AT).set(Object.values(MARKS))
  return start<Parameters<ScanLines>>(scanLinesModule(isLong), memory)
}

function scanLinesModule(isLong: boolean): Uint8Array {
  const locals = new Locals(4)
  const [control, table, at, end] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [timeAt, nameAt, idAt] = [locals.i32(), locals.i32(), locals.i32()]
  const [lineEnd, lineEndMask, lineEndBytes] = [locals.i32(), locals.i32(), locals.i32()]
  const [count, last, data, digits] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [slot, next, hexDigits, fullBytes] = [locals.i32(), locals.i32(), locals.i32(), locals.i32()]
  const [low, high, highMask] = [locals.i64(), locals.i64(), locals.i64()]
  const [thisLow, thisHigh] = [locals.i64(), locals.i64()]
  const [key, found] = [locals.i64(), locals.i64()]
  const [headPattern, headLimits, namePattern, nameLimits, sixteenThere] = [
    locals.v128(),
    locals.v128(),
    locals.v128(),
    locals.v128(),
    locals.v128(),
  ]

  const marks = {
    zero: locals.v128(),
    nine: locals.v128(),
    blank: locals.v128(),
    letterA: locals.v128(),
    five: locals.v128(),
  }

  const isAlike = (from: Code, pattern: Local, limits: Local): Code =>
    v128.notAbove(v128.xor(v128.load(from), pattern.get), limits.get)
  const endsAt = (place: Code): Code => i32.eq(i32.and(i32.load16(place), lineEndMask.get), lineEnd.get)
  const isEarlier = i64.ltU(thisLow.get, low.get)

  const line: Code[] = [
    // The beginning: brackets, point, blanks, name and whole seconds as before, decimals any digits.
    jumpIf(
      1,
      i32.eqz(
        v128.allSet(
          v128.and(
            isAlike(at.get, headPattern, headLimits),
            isAlike(i32.add(at.get, nameAt.get), namePattern, nameLimits),
          ),
        ),
      ),
    ),
    // The time is not before the last one.
    sixteenThere.set(v128.shuffle(v128.load(i32.add(at.get, timeAt.get)), REVERSED)),
    thisLow.set(v128.i64(sixteenThere.get, 0)),
    ...(isLong
      ? [
          thisHigh.set(i64.and(v128.i64(sixteenThere.get, 1), highMask.get)),
          jumpIf(
            1,
            i32.or(i64.ltU(thisHigh.get, high.get), i32.and(i64.eq(thisHigh.get, high.get), isEarlier)),
          ),
        ]
      : [jumpIf(1, isEarlier)]),
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
    // At most sixteen hex digits in pairs, and the line end behind them. Most lines have all sixteen: guessed so, the
    // place of the next line is known before the digits are looked at.
    sixteenThere.set(v128.load(data.get)),
    hexDigits.set(v128.upperBits(isHex(sixteenThere, marks))),
    choose(
      endsAt(i32.add(data.get, i32.const(MOST_DIGITS))),
      [
        jumpIf(2, i32.ne(hexDigits.get, i32.const((1 << MOST_DIGITS) - 1))),
        digits.set(i32.const(MOST_DIGITS)),
        next.set(i32.add(data.get, fullBytes.get)),
      ],
      [
        digits.set(i32.ctz(i32.xor(hexDigits.get, i32.const(-1)))),
        next.set(i32.add(data.get, digits.get)),
        jumpIf(2, i32.or(i32.eqz(endsAt(next.get)), i32.and(digits.get, i32.const(1)))),
        next.set(i32.add(next.get, lineEndBytes.get)),
      ],
    ),
    // What stands beyond the chunk is of another time.
    jumpIf(1, i32.gtU(next.get, end.get)),
    findSlot(key, table, slot, found, 1),
    low.set(thisLow.get),
    ...(isLong ? [high.set(thisHigh.get)] : []),
    // One after the other as long as they are plain.
    choose(slotIsPlain(slot), [
      count.set(i32.add(count.get, i32.const(1))),
      last.set(at.get),
      at.set(next.get),
      jump(1),
    ]),
    i32.store(control.get, slot.get, CONTROL.slot),
    i32.store(control.get, at.get, CONTROL.line),
    at.set(next.get),
    i32.store(control.get, digits.get, CONTROL.digits),
    i64.store(control.get, v128.i64(bytesOf(sixteenThere), 0), CONTROL.data),
  ]

  const body = [
    ...timeAt.set(i32.sub(i32.load(control.get, CONTROL.closeAt), i32.const(16))),
    ...idAt.set(i32.load(control.get, CONTROL.idAt)),
    ...nameAt.set(i32.sub(idAt.get, i32.const(16))),
    ...lineEnd.set(i32.load(control.get, CONTROL.lineEnd)),
    ...lineEndMask.set(i32.load(control.get, CONTROL.lineEndMask)),
    ...lineEndBytes.set(i32.load(control.get, CONTROL.lineEndBytes)),
    ...fullBytes.set(i32.add(lineEndBytes.get, i32.const(MOST_DIGITS))),
    ...low.set(i64.load(control.get, CONTROL.timeLow)),
    ...high.set(i64.load(control.get, CONTROL.timeHigh)),
    ...highMask.set(i64.load(control.get, CONTROL.timeHighMask)),
    ...headPattern.set(v128.load(control.get, CONTROL.headPattern)),
    ...headLimits.set(v128.load(control.get, CONTROL.headLimits)),
    ...namePattern.set(v128.load(control.get, CONTROL.namePattern)),
    ...nameLimits.set(v128.load(control.get, CONTROL.nameLimits)),
    ...Object.values(marks).flatMap((mark, index) =>
      mark.set(v128.splat(i32.load8(i32.const(MARKS_AT + index)))),
    ),
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

/** Characters that digits are compared with, in the order they stand in the store. */
const MARKS = { zero: 0x30, nine: 9, blank: 0x20, letterA: 0x61, five: 5 } as const

/** Where they stand: in front of the first control. A loop takes them from there once, and keeps them. */
const MARKS_AT = 240

/** Which characters are hex digits of either case: all ones for those, zero for the others. */
function isHex(characters: Local, marks: Readonly<Record<keyof typeof MARKS, Local>>): Code {
  const decimal = v128.notAbove(v128.xor(characters.get, marks.zero.get), marks.nine.get)
  const lower = v128.or(characters.get, marks.blank.get)
  return v128.or(decimal, v128.notAbove(v128.sub(lower, marks.letterA.get), marks.five.get))
}

/** The bytes that sixteen hex digits stand for, in the lower half; what is no hex digit gives anything. */
function bytesOf(characters: Local): Code {
  const isLetter = v128.notAbove(sixteen(0x40), characters.get)
  const digits = v128.add(v128.and(characters.get, sixteen(0x0f)), v128.and(isLetter, sixteen(9)))
  // Of each pair the first is the upper half of a byte.
  const both = v128.or(v128.shiftPairs(digits, 4), v128.shiftPairs(digits, -8))
  const pairs = v128.and(both, v128.const(Array.from({ length: 16 }, (_, at) => (at % 2 === 0 ? 0xff : 0))))
  return v128.narrow(pairs, pairs)
}
