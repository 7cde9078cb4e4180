/** @module Which bytes of a file the seal covers, and whether they are the sealed ones. */
import { sha256OfBytes } from '../../chain/index.ts'
import { type Part, placesOf } from '../seal/parts.ts'

/** A named run of bytes of the file, as the seal lists it. */
export interface CoveredPart {
  readonly name: string
  /** Byte offset of its first byte and of the byte after it. */
  readonly from: number
  readonly to: number
  /** True when its bytes are the sealed ones. */
  readonly whole: boolean
}

/** What the seal says of the bytes of the file. */
export interface Coverage {
  /** Length of the file in bytes. */
  readonly bytes: number
  /** Parts in the order of the file, without a gap, up to the seal's own place. */
  readonly parts: readonly CoveredPart[]
  /** Byte offset at which the seal's own place begins; it reaches to the end of the file. */
  readonly sealAt: number
  /** True when the seal's own place is, byte for byte, what the seal makes it; null when a changed part hides that. */
  readonly sealWhole: boolean | null
  /** True when every byte of the file is covered and is the sealed one. */
  readonly everyByte: boolean
}

/** Holds every part of a list against the bytes. */
export function coveredParts(bytes: Uint8Array, parts: readonly Part[]): readonly CoveredPart[] {
  const places = placesOf(parts)
  return parts.map(({ name, sha256 }, index) => {
    const { from = 0, to = 0 } = places[index] ?? {}
    const whole = to <= bytes.length && sha256OfBytes(bytes.subarray(from, to)) === sha256
    return { name, from, to, whole }
  })
}
