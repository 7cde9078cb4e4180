/**
 * @module The instructions of WebAssembly that the scanners use, as functions that give their bytes.
 *
 * Source: WebAssembly Core Specification 2.0, section 5.4 (binary format of instructions), with 128-bit vectors.
 */

/** Bytes of instructions that leave one value, or none, on the stack. */
export type Code = readonly number[]

/** A whole number in as few bytes as hold it (LEB128, section 5.2.2); signed. */
function signed(value: bigint): number[] {
  const bytes: number[] = []
  for (let rest = value; ; ) {
    const low = Number(rest & 0x7fn)
    rest >>= 7n
    if ((rest === 0n && low < 0x40) || (rest === -1n && low >= 0x40)) return [...bytes, low]
    bytes.push(low | 0x80)
  }
}

/** The same, unsigned. */
export function unsigned(value: number): number[] {
  const bytes: number[] = []
  let rest = value
  for (; rest > 0x7f; rest >>>= 7) bytes.push((rest & 0x7f) | 0x80)
  return [...bytes, rest]
}

type One = (value: Code) => Code
type Two = (left: Code, right: Code) => Code
type Load = (address: Code, offset?: number) => Code
type Store = (address: Code, value: Code, offset?: number) => Code

const two =
  (...operation: readonly number[]): Two =>
  (left, right) => [...left, ...right, ...operation]
const one =
  (...operation: readonly number[]): One =>
  (value) => [...value, ...operation]
/** Every address may stand anywhere: the stated alignment is one byte. */
const load =
  (...operation: readonly number[]): Load =>
  (address, offset = 0) => [...address, ...operation, 0, ...unsigned(offset)]
const store =
  (...operation: readonly number[]): Store =>
  (address, value, offset = 0) => [...address, ...value, ...operation, 0, ...unsigned(offset)]
/** Vector instructions have a prefix and a number of their own. */
const vector = (number: number): number[] => [0xfd, ...unsigned(number)]

/** 32-bit numbers. */
export const i32: {
  readonly const: (value: number) => Code
  readonly store: Store
} & Readonly<Record<'load' | 'load8' | 'load16', Load>> &
  Readonly<Record<'eqz' | 'ctz', One>> &
  Readonly<
    Record<
      'eq' | 'ne' | 'ltU' | 'gtU' | 'add' | 'sub' | 'mul' | 'and' | 'or' | 'xor' | 'shl' | 'shrU' | 'rotl',
      Two
    >
  > = {
  const: (value) => [0x41, ...signed(BigInt(value | 0))],
  load: load(0x28),
  load8: load(0x2d),
  load16: load(0x2f),
  store: store(0x36),
  eqz: one(0x45),
  /** How many zero bits stand below the lowest that is set; 32 when none is. */
  ctz: one(0x68),
  eq: two(0x46),
  ne: two(0x47),
  ltU: two(0x49),
  gtU: two(0x4b),
  add: two(0x6a),
  sub: two(0x6b),
  mul: two(0x6c),
  and: two(0x71),
  or: two(0x72),
  xor: two(0x73),
  shl: two(0x74),
  shrU: two(0x76),
  rotl: two(0x77),
}

/** 64-bit numbers. */
export const i64: Readonly<Record<'load', Load>> &
  Readonly<Record<'eqz' | 'fromI32' | 'toI32' | 'high', One>> &
  Readonly<Record<'eq' | 'ltU' | 'and', Two>> & {
    readonly store: Store
    readonly withUpper: (value: Code, upper: number) => Code
  } = {
  load: load(0x29),
  store: store(0x37),
  eqz: one(0x50),
  eq: two(0x51),
  ltU: two(0x54),
  and: two(0x83),
  fromI32: one(0xad),
  toI32: one(0xa7),
  /** With these bits above its lower half. */
  withUpper: (value, upper) => [...value, 0x42, ...signed(BigInt(upper) << 32n), 0x84],
  /** The upper half. */
  high: (value) => [...value, 0x42, 32, 0x88, 0xa7],
}

/** 128-bit vectors, seen as sixteen bytes. */
export const v128: {
  readonly load: Load
  readonly const: (bytes: readonly number[]) => Code
  readonly allSet: One
  readonly anySet: One
  readonly splat: One
  readonly upperBits: One
  readonly shiftPairs: (value: Code, left: number) => Code
  readonly shuffle: (value: Code, order: readonly number[]) => Code
  readonly i64: (value: Code, lane: 0 | 1) => Code
  readonly withI32: (value: Code, lane: number, number: Code) => Code
} & Readonly<Record<'and' | 'or' | 'xor' | 'notAbove' | 'above' | 'add' | 'sub' | 'narrow', Two>> = {
  load: load(...vector(0)),
  const: (bytes) => [...vector(12), ...bytes],
  and: two(...vector(78)),
  or: two(...vector(80)),
  xor: two(...vector(81)),
  /** Each byte all ones where the left one is not above the right one, unsigned. */
  notAbove: two(...vector(42)),
  /** By how much each left byte is above the right one, unsigned; zero where it is not. */
  above: two(...vector(115)),
  add: two(...vector(110)),
  sub: two(...vector(113)),
  /** Pairs of bytes, seen as numbers of sixteen bits, moved by so many bits to the left, or to the right when negative. */
  shiftPairs: (value, left) => [...value, ...i32.const(Math.abs(left)), ...vector(left < 0 ? 141 : 139)],
  /** Two times eight numbers of sixteen bits as sixteen bytes; numbers above 255 become 255. */
  narrow: two(...vector(102)),
  /** A number's lowest byte sixteen times. */
  splat: one(...vector(15)),
  /** The upper bit of each byte as a number of sixteen bits, the first byte's lowest. */
  upperBits: one(...vector(100)),
  /** 1 when no byte is zero. */
  allSet: one(...vector(99)),
  /** 1 when any bit is set. */
  anySet: one(...vector(83)),
  /** The sixteen bytes in the order of their numbers in `order`. */
  shuffle: (value, order) => [...value, ...value, ...vector(13), ...order],
  i64: (value, lane) => [...value, ...vector(29), lane],
  /** With another number of 32 bits in one of its four lanes. */
  withI32: (value, lane, number) => [...value, ...number, ...vector(28), lane],
}

/** The same byte sixteen times. */
export function sixteen(byte: number): Code {
  return v128.const(new Array<number>(16).fill(byte))
}

/** A place for a value inside a function. */
export interface Local {
  readonly get: Code
  set(value: Code): Code
}

const EMPTY = 0x40

/** Runs `body` again whenever it jumps to the loop (`repeat`), until it falls out of its end. */
export function loop(...body: readonly Code[]): Code {
  return [0x03, EMPTY, ...body.flat(), 0x0b]
}

/** A stretch that `leave` jumps out of. */
export function block(...body: readonly Code[]): Code {
  return [0x02, EMPTY, ...body.flat(), 0x0b]
}

/** Runs one of two stretches. */
export function choose(condition: Code, then: readonly Code[], otherwise: readonly Code[] = []): Code {
  const rest = otherwise.length === 0 ? [] : [0x05, ...otherwise.flat()]
  return [...condition, 0x04, EMPTY, ...then.flat(), ...rest, 0x0b]
}

/** Jumps to the `depth`th stretch around this place, counted from 0: to the start of a loop, to the end of the others. */
export function jump(depth: number): Code {
  return [0x0c, depth]
}

/** The same when a condition holds. */
export function jumpIf(depth: number, condition: Code): Code {
  return [...condition, 0x0d, depth]
}
