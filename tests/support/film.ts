/** What a camera sees, made from nothing: bar codes as a film for Chromium's stand-in camera, and as photos. */
import { writeFileSync } from 'node:fs'
import bwip from 'bwip-js/node'

/** bwip-js (MIT) draws the codes; the bench reads them with another library, so neither proves itself. */
export type CodeKind = 'code39' | 'datamatrix' | 'qrcode'

interface RawCode {
  readonly sbs?: readonly number[]
  readonly pixs?: readonly number[]
  readonly pixx?: number
  readonly pixy?: number
}

const width = 1280
const height = 720

/** True where a picture of this code is dark; modules are `module` pixels wide, the code stands in the middle. */
function painter(kind: CodeKind, text: string, module: number): (x: number, y: number) => boolean {
  const [code] = bwip.raw({ bcid: kind, text }) as unknown as readonly RawCode[]
  if (code === undefined) throw new Error('no code')
  const { sbs, pixs = [], pixx = 0, pixy = 0 } = code
  if (sbs === undefined) {
    const left = Math.round((width - pixx * module) / 2)
    const top = Math.round((height - pixy * module) / 2)
    return (x, y) => {
      const column = Math.floor((x - left) / module)
      const row = Math.floor((y - top) / module)
      const inside = column >= 0 && column < pixx && row >= 0 && row < pixy
      return inside && pixs[row * pixx + column] === 1
    }
  }
  const bars: boolean[] = []
  for (const [index, size] of sbs.entries()) for (let i = 0; i < size; i++) bars.push(index % 2 === 0)
  const left = Math.round((width - bars.length * module) / 2)
  return (x, y) => Math.abs(y - height / 2) < 130 && bars[Math.floor((x - left) / module)] === true
}

/** Module widths that fill a good part of the picture. */
const modules = { code39: 3, datamatrix: 14, qrcode: 10 } as const

/**
 * Writes a film (YUV4MPEG2, 4:2:0) that shows nothing, then the code, a little paler in every picture and never fully
 * black or white, as a camera sees it.
 */
export function writeFilm(path: string, kind: CodeKind, text: string): void {
  const dark = painter(kind, text, modules[kind])
  const colour = Buffer.alloc((width * height) / 2, 128)
  const pieces: Buffer[] = [Buffer.from(`YUV4MPEG2 W${width} H${height} F5:1 Ip A1:1 C420jpeg\n`)]
  for (let picture = 0; picture < 6; picture++) {
    const luma = Buffer.alloc(width * height)
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        const shade = (x + y) % 7
        luma[y * width + x] = picture > 1 && dark(x, y) ? 40 + picture * 4 + shade : 190 + shade
      }
    }
    pieces.push(Buffer.from('FRAME\n'), luma, colour)
  }
  writeFileSync(path, Buffer.concat(pieces))
}

/** A code as a photo somebody saved. */
export function codePhoto(kind: CodeKind, text: string): Promise<Buffer> {
  return bwip.toBuffer({ bcid: kind, text, scale: 4, padding: 12, backgroundcolor: 'FFFFFF' })
}

/** What a camera writes beside a photo: turned by 90 degrees (orientation 6), and a place (GPS latitude reference N). */
export function withCameraNotes(jpeg: Buffer): Buffer {
  const tiff = Buffer.alloc(64)
  tiff.write('MM\0*', 0, 'latin1')
  tiff.writeUInt32BE(8, 4)
  tiff.writeUInt16BE(2, 8)
  // Orientation (0x0112), SHORT, one value: 6.
  tiff.writeUInt16BE(0x0112, 10)
  tiff.writeUInt16BE(3, 12)
  tiff.writeUInt32BE(1, 14)
  tiff.writeUInt16BE(6, 18)
  // Pointer to the GPS directory (0x8825), LONG.
  tiff.writeUInt16BE(0x8825, 22)
  tiff.writeUInt16BE(4, 24)
  tiff.writeUInt32BE(1, 26)
  tiff.writeUInt32BE(38, 30)
  tiff.writeUInt16BE(1, 38)
  // GPSLatitudeRef (0x0001), ASCII, two bytes: N.
  tiff.writeUInt16BE(1, 40)
  tiff.writeUInt16BE(2, 42)
  tiff.writeUInt32BE(2, 44)
  tiff.write('N\0', 48, 'latin1')
  const notes = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff])
  const head = Buffer.alloc(4)
  head.writeUInt16BE(0xffe1, 0)
  head.writeUInt16BE(notes.length + 2, 2)
  return Buffer.concat([jpeg.subarray(0, 2), head, notes, jpeg.subarray(2)])
}
