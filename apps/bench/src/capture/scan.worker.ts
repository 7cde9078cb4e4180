/** @module Looks for Code 39, Data Matrix and QR codes in pictures, away from the page. Nothing leaves the device. */
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import wasm from 'zxing-wasm/reader/zxing_reader.wasm?url'

/** A picture to look through; `careful` takes longer and is for a photo, not for a camera's next picture. */
export interface ScanAsk {
  readonly picture: ImageBitmap
  readonly careful: boolean
}

/** One code found: what it says and how it was printed. */
export interface FoundCode {
  readonly text: string
  readonly format: 'code39' | 'matrix' | 'qr'
}

export type ScanAnswer =
  | { readonly what: 'looked'; readonly found: readonly FoundCode[] }
  | { readonly what: 'failed'; readonly why: string }

prepareZXingModule({ overrides: { locateFile: () => wasm } })

const formats = { Code39: 'code39', DataMatrix: 'matrix', QRCode: 'qr' } as const

addEventListener('message', (event: MessageEvent<ScanAsk>) => {
  look(event.data).then(
    (found) => postMessage({ what: 'looked', found } satisfies ScanAnswer),
    (error: unknown) => postMessage({ what: 'failed', why: String(error) } satisfies ScanAnswer),
  )
})

async function look({ picture, careful }: ScanAsk): Promise<readonly FoundCode[]> {
  const canvas = new OffscreenCanvas(picture.width, picture.height)
  const context = canvas.getContext('2d', { willReadFrequently: true })
  if (context === null) throw new Error('no canvas')
  context.drawImage(picture, 0, 0)
  picture.close()
  const codes = await readBarcodes(context.getImageData(0, 0, canvas.width, canvas.height), {
    formats: ['Code39', 'DataMatrix', 'QRCode'],
    tryHarder: careful,
    tryRotate: true,
    tryInvert: careful,
    tryDownscale: true,
    maxNumberOfSymbols: 8,
  })
  return codes.flatMap(({ isValid, text, format }) => {
    const known = formats[format as keyof typeof formats]
    return isValid && known !== undefined ? [{ text, format: known }] : []
  })
}
