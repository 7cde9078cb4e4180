/**
 * @module Raw IQ sample formats: how a receiver's file stores pairs of in-phase and quadrature values.
 *
 * Names follow the file endings in common use and the datatypes of SigMF (https://github.com/sigmf/SigMF).
 */

/** `c` complex, `u`/`s`/`f` unsigned, signed or float, then the bits of one value. Little-endian unless `be`. */
export type SampleFormat = 'cu8' | 'cs8' | 'cs16' | 'cs16be' | 'cf32' | 'cf32be'

/** The stored values of one block: I, Q, I, Q ... */
export type RawValues = Uint8Array | Int8Array | Int16Array | Float32Array

/** What a format means: size, zero level, and the values at which a converter has run out of range. */
export interface SampleLayout {
  readonly bytesPerValue: 1 | 2 | 4
  readonly bigEndian: boolean
  /** Stored value that means zero. */
  readonly zero: number
  /** Stored value of full scale, counted from zero. */
  readonly fullScale: number
  /** A value at or below / at or above these has met the converter's end. null: the format has no end. */
  readonly rails: readonly [number, number] | null
  /** The SigMF `core:datatype` of the format. */
  readonly sigmf: string
}

/** Every format this reader knows. */
export const SAMPLE_LAYOUTS: Readonly<Record<SampleFormat, SampleLayout>> = {
  cu8: { bytesPerValue: 1, bigEndian: false, zero: 127.5, fullScale: 127.5, rails: [0, 255], sigmf: 'cu8' },
  cs8: { bytesPerValue: 1, bigEndian: false, zero: 0, fullScale: 128, rails: [-128, 127], sigmf: 'ci8' },
  cs16: {
    bytesPerValue: 2,
    bigEndian: false,
    zero: 0,
    fullScale: 32768,
    rails: [-32768, 32767],
    sigmf: 'ci16_le',
  },
  cs16be: {
    bytesPerValue: 2,
    bigEndian: true,
    zero: 0,
    fullScale: 32768,
    rails: [-32768, 32767],
    sigmf: 'ci16_be',
  },
  cf32: { bytesPerValue: 4, bigEndian: false, zero: 0, fullScale: 1, rails: null, sigmf: 'cf32_le' },
  cf32be: { bytesPerValue: 4, bigEndian: true, zero: 0, fullScale: 1, rails: null, sigmf: 'cf32_be' },
}

/** Bytes of one IQ sample. */
export function bytesPerSample(format: SampleFormat): number {
  return 2 * SAMPLE_LAYOUTS[format].bytesPerValue
}

/** The format of a SigMF `core:datatype`, null for real samples and for widths this reader does not know. */
export function formatOfSigmfDatatype(datatype: string): SampleFormat | null {
  for (const [format, layout] of Object.entries(SAMPLE_LAYOUTS)) {
    if (layout.sigmf === datatype) return format as SampleFormat
  }
  // SigMF wants the byte order only where it matters; some writers add it to single bytes.
  if (/^cu8_[lb]e$/.test(datatype)) return 'cu8'
  if (/^ci8_[lb]e$/.test(datatype)) return 'cs8'
  return null
}

/** True where this machine's typed arrays store the low byte first. */
const littleEndianHere: boolean = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1

/** Views a whole number of values as numbers; turns the bytes round in place where the orders differ. */
export function viewValues(bytes: Uint8Array<ArrayBuffer>, format: SampleFormat): RawValues {
  const layout = SAMPLE_LAYOUTS[format]
  const values = Math.floor(bytes.byteLength / layout.bytesPerValue)
  if (layout.bytesPerValue === 1)
    return format === 'cu8' ? bytes : new Int8Array(bytes.buffer, bytes.byteOffset, values)
  if (layout.bigEndian === littleEndianHere) swapBytes(bytes, layout.bytesPerValue)
  return layout.bytesPerValue === 2
    ? new Int16Array(bytes.buffer, bytes.byteOffset, values)
    : new Float32Array(bytes.buffer, bytes.byteOffset, values)
}

function swapBytes(bytes: Uint8Array, width: number): void {
  for (let at = 0; at + width <= bytes.length; at += width) bytes.subarray(at, at + width).reverse()
}
