import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { beforeAll, describe, expect, it } from 'vitest'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import { fromBase64Url, sha256OfBytes } from '../../chain/index.ts'
import { recordText } from '../../record/index.ts'
import { testVerifier } from '../../testing/device.ts'
import { handoverText, type KeyCard, printedTexts } from '../document/index.ts'
import { makeHandover } from '../make.ts'
import { latin1 } from '../pdf/bytes.ts'
import { picturesCarried } from '../pictures-wanted.ts'
import { baseOf, present, run, skipNote } from '../testing/files.ts'
import { fact, fonts, type SealedJob, sealedJob, vanJob } from '../testing/jobs.ts'
import { verifyHandover } from '../verify/index.ts'
import { jpegSize } from './jpeg.ts'

const madeAt = '2026-01-12T09:41:00.000Z'
const photo = new Uint8Array(readFileSync(new URL('../testing/key-photo.jpg', import.meta.url)))
const pictures = new Map([[sha256OfBytes(photo), photo]])

let job: SealedJob
let pdf: Uint8Array

beforeAll(async () => {
  job = await sealedJob([
    ...vanJob(),
    fact(30, 'photo-attached', {
      blob: sha256OfBytes(photo),
      mediaType: 'image/jpeg',
      bytes: photo.length,
      shows: 'key',
      key: 'B',
    }),
    fact(37, 'key-labelled', {
      key: 'B',
      origin: 'existing',
      form: 'flip',
      make: 'genuine',
      colour: 'slate',
      onBench: true,
      cell: { cells: 1, restVolts: 2.95, loadedVolts: 2.3, replaced: true },
    }),
    fact(78, 'supply-read', {
      volts: 12.5,
      during: 'after',
      source: 'meter',
      supplyRemoved: true,
      drain: { amperes: 0.031, minutes: 45 },
    }),
  ])
  pdf = await makeHandover({ ...job, language: 'en', fonts, madeAt, pictures })
})

/** A page as PNG, at the resolution of a phone held over a print. */
function pageAsPng(bytes: Uint8Array, page: number): Uint8Array {
  const only = ['-r', '110', '-f', String(page), '-l', String(page), '-png']
  // Without a name for its output pdftoppm writes the picture to standard output; `sh` puts it where `run` looks.
  return run('sh', ['-c', `pdftoppm ${only.join(' ')} FILE > OUT`], bytes).out
}

describe('a photo of a key', () => {
  it('stands in the document byte for byte, described, and the document is proven', async () => {
    const text = latin1(pdf)
    expect(text.match(/\/Filter \/DCTDecode/g)).toHaveLength(1)
    expect(text).toContain(latin1(photo))
    expect(text).toContain('Photo of key B')
    expect((await verifyHandover(pdf, testVerifier())).findings).toEqual([])
  })

  it('is named by its hash, whether it is at hand or not, so that both documents say the same', async () => {
    const without = await makeHandover({ ...job, language: 'en', fonts, madeAt })
    expect(latin1(without)).not.toContain('/DCTDecode')
    expect((await verifyHandover(without, testVerifier())).proven).toBe(true)
    const text = handoverText({ record: job.record, language: 'en', device: job.device.device, madeAt })
    expect(printedTexts(text).join('\n')).toContain(
      `Photo on record, SHA-256 beginning ${sha256OfBytes(photo).slice(0, 16)}.`,
    )
  })

  it('that the record does not name is found out, though its maker sealed it', async () => {
    const other = new Uint8Array(photo)
    other[other.length - 20] = (other[other.length - 20] ?? 0) ^ 1
    const swapped = new Map([[sha256OfBytes(photo), other]])
    const bytes = await makeHandover({ ...job, language: 'en', fonts, madeAt, pictures: swapped })
    const check = await verifyHandover(bytes, testVerifier())
    expect(check.proven).toBe(false)
    expect(check.findings.map(({ code, what }) => `${code}: ${what}`)).toEqual([
      'page-does-not-follow: The page shows a picture that the record does not name.',
    ])
  })

  it('that is no JPEG in grey or three colours, or too large, is left out', () => {
    expect(jpegSize(photo)).toEqual({ width: 260, height: 120 })
    expect(jpegSize(new Uint8Array([0x89, 0x50, 0x4e, 0x47]))).toBeNull()
    const big = new Uint8Array(700_000)
    big.set(photo)
    expect(jpegSize(big)).toBeNull()
    const frame = latin1(photo).search(/\xff[\xc0-\xc2]/)
    const four = new Uint8Array(photo)
    four[frame + 9] = 4
    expect(jpegSize(four)).toBeNull()
    for (let end = 0; end < 400; end += 7) expect(() => jpegSize(photo.subarray(0, end))).not.toThrow()
  })
})

describe('many photos', () => {
  it('are carried as long as there is room, in the order of the keys', async () => {
    // A comment segment may hold anything, so a photo can be made as long as a test wants it.
    const long = (mark: number) => {
      const filler = new Uint8Array(60_000).fill(mark)
      const segment = [0xff, 0xfe, (filler.length + 2) >> 8, (filler.length + 2) & 0xff, ...filler]
      const repeated = Array.from({ length: 9 }, () => segment).flat()
      return new Uint8Array([...photo.subarray(0, 2), ...repeated, ...photo.subarray(2)])
    }
    const photos = ['A', 'B', 'C', 'D', 'E'].map((key, mark) => ({ key, bytes: long(mark) }))
    const many = await sealedJob([
      ...vanJob(),
      ...photos.map(({ key, bytes }) =>
        fact(30, 'photo-attached', {
          blob: sha256OfBytes(bytes),
          mediaType: 'image/jpeg',
          bytes: bytes.length,
          shows: 'key',
          key,
        }),
      ),
    ])
    const atHand = new Map(photos.map(({ bytes }) => [sha256OfBytes(bytes), bytes]))
    const carried = picturesCarried(many.record, atHand)
    expect([...carried.keys()]).toEqual(photos.slice(0, 4).map(({ bytes }) => sha256OfBytes(bytes)))
    const bytes = await makeHandover({ ...many, language: 'en', fonts, madeAt, pictures: atHand })
    expect(latin1(bytes).match(/\/Filter \/DCTDecode/g)).toHaveLength(4)
    expect((await verifyHandover(bytes, testVerifier())).proven).toBe(true)
  })
})

describe('what the readings of the supply and the cells say', () => {
  it('stands beside the key and in the section of the supply', () => {
    const text = handoverText({ record: job.record, language: 'en', device: job.device.device, madeAt })
    const cards = text.blocks.flatMap((block) => (block.kind === 'keys' ? block.cards : []))
    const notes = cards.find((card: KeyCard) => card.letter === 'B')?.notes
    expect(notes).toContain('Coin cell, 2.95 V at rest and 2.3 V while transmitting: Replace.')
    expect(notes).toContain('The cell was replaced.')
    const all = printedTexts(text)
    expect(all).toContain('31 mA, 45 minutes after locking. Asleep.')
    expect(all).toContain('taken off before the last reading after the work')
  })
})

describe('the square code', () => {
  it(`is read back from the rendered page as record hash and key fingerprint${skipNote('pdftoppm')}`, {
    skip: !present('pdftoppm'),
  }, async () => {
    const wasm = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'))
    prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(wasm).buffer } })
    const pages = latin1(baseOf(pdf)).match(/\/Type \/Page\n/g)?.length ?? 0
    const read: string[] = []
    for (let page = 1; page <= pages; page++) {
      for (const { text } of await readBarcodes(pageAsPng(pdf, page), { formats: ['QRCode'] }))
        read.push(text)
    }
    const record = sha256OfBytes(new TextEncoder().encode(recordText(job.record)))
    const key = sha256OfBytes(fromBase64Url(job.device.publicKey) ?? new Uint8Array(0))
    expect(read).toEqual([`SHEARLINE:1:RECORD:${record}:KEY:${key}`.toUpperCase()])
  })
})
