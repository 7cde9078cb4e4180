/**
 * @module Measures one radio recording away from the page. The samples stay in this worker's memory, are written
 * nowhere, and are gone when it ends; only measured values and pictures that cannot give them back leave it.
 */
import { IqReader, measureRemote, resolveSetting } from '@shearline/keywork'
import { readFile } from '../recording/read-file.ts'
import type { Answer, Ask } from './messages.ts'

/** Bytes between two signs of progress. */
const stride = 4 << 20
/** A SigMF metadata file is short; what is longer is something else. */
const longestSigmf = 1 << 20

function answer(message: Answer): void {
  postMessage(message)
}

addEventListener('message', (event: MessageEvent<Ask>) => {
  measure(event.data).then(answer, (error: unknown) =>
    answer({ what: 'failed', why: error instanceof Error ? error.message : String(error) }),
  )
})

async function measure({ file, sigmf, given }: Ask): Promise<Answer> {
  const text = sigmf === null ? undefined : await sigmf.slice(0, longestSigmf).text()
  const { setting, format, headerBytes, findings, ...known } = resolveSetting({
    name: file.name,
    given,
    ...(text === undefined ? {} : { sigmf: text }),
  })
  const said = { sampleRateHz: known.sampleRateHz, centreHz: known.centreHz, format }
  if (setting === null || format === null) return { what: 'incomplete', setting: said, findings }
  const reader = new IqReader(format, { headerBytes })
  let bytes = 0
  let told = 0
  await readFile(file, (chunk) => {
    reader.push(chunk)
    bytes += chunk.length
    if (bytes - told < stride) return
    told = bytes
    answer({ what: 'progress', bytes })
  })
  answer({ what: 'progress', bytes })
  const { measurement, draw } = measureRemote(reader.finish(), setting)
  return {
    what: 'measured',
    measured: {
      setting: said,
      measurement: { ...measurement, findings: [...findings, ...measurement.findings] },
      pictures: draw(),
    },
  }
}
