/**
 * @module Reads the letters of a picture: tesseract.js with the English data, all of it part of the bench and loaded
 * only when asked for. The picture stays in this browser.
 */
import data from '@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz?url'
import { createWorker, OEM, PSM, type Worker } from 'tesseract.js'
import workerScript from 'tesseract.js/dist/worker.min.js?url'
import core from 'tesseract.js-core/tesseract-core-simd-lstm.wasm.js?url'
import { type PlateVin, vinsOnPlate } from './found-vin.ts'

/** A VIN has no I, O and Q (ISO 3779), so none is looked for. */
const vinSigns = 'ABCDEFGHJKLMNPRSTUVWXYZ0123456789'
/** Longest side of what is read, pixels: larger is slower and reads no better. */
const longestSide = 1800

/** A reading on its way. */
export interface PlateReading {
  /** What may be the VIN, likeliest first. Rejects when the reader cannot be loaded or the picture is none. */
  readonly vins: Promise<readonly PlateVin[]>
  /** Ends the reader; `vins` then never settles. */
  readonly stop: () => void
}

/** Starts reading; `onProgress` hears a share from 0 to 1. */
export function readPlate(picture: Blob, onProgress: (share: number) => void): PlateReading {
  const worker = load(onProgress)
  const vins = async () => {
    const reader = await worker
    try {
      const { data: page } = await reader.recognize(await scaled(picture), {}, { blocks: true, text: false })
      const lines = (page.blocks ?? []).flatMap((block) =>
        block.paragraphs.flatMap((paragraph) => paragraph.lines),
      )
      return vinsOnPlate(
        lines.map((line) =>
          line.words.flatMap((word) =>
            word.symbols.map(({ text, confidence }) => ({ sign: text, confidence })),
          ),
        ),
      )
    } finally {
      await reader.terminate()
    }
  }
  return {
    vins: vins(),
    stop: () =>
      void worker.then(
        (reader) => reader.terminate(),
        () => undefined,
      ),
  }
}

function load(onProgress: (share: number) => void): Promise<Worker> {
  return new Promise((resolve, reject) => {
    createWorker('eng', OEM.LSTM_ONLY, {
      workerPath: new URL(workerScript, location.href).href,
      corePath: new URL(core, location.href).href,
      // The library puts `/eng.traineddata.gz` behind this: behind `#` it does not change which file is asked for.
      langPath: `${new URL(data, location.href).href}#`,
      // A content policy of 'self' allows no worker from a blob. Our service worker keeps the files.
      workerBlobURL: false,
      cacheMethod: 'none',
      logger: ({ status, progress }) => {
        if (status === 'recognizing text') onProgress(progress)
      },
      // What goes wrong while it is being loaded never settles the library's own promise.
      errorHandler: (error: unknown) => reject(new Error(String(error))),
    }).then(async (reader) => {
      await reader.setParameters({
        tessedit_char_whitelist: vinSigns,
        tessedit_pageseg_mode: PSM.SPARSE_TEXT,
      })
      resolve(reader)
    }, reject)
  })
}

async function scaled(picture: Blob): Promise<Blob> {
  const whole = await createImageBitmap(picture)
  const scale = Math.min(1, longestSide / Math.max(whole.width, whole.height))
  const canvas = new OffscreenCanvas(Math.round(whole.width * scale), Math.round(whole.height * scale))
  const context = canvas.getContext('2d')
  if (context === null) throw new Error('no canvas')
  context.filter = 'grayscale(1)'
  context.drawImage(whole, 0, 0, canvas.width, canvas.height)
  whole.close()
  return canvas.convertToBlob({ type: 'image/png' })
}
