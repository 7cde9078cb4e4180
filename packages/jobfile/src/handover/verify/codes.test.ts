import { beforeAll, describe, expect, it } from 'vitest'
import { testVerifier } from '../../testing/device.ts'
import type { Block, HandoverText } from '../document/index.ts'
import { sealText } from '../testing/files.ts'
import { bareJob, type SealedJob, sealedJob } from '../testing/jobs.ts'
import { verifyHandover } from './index.ts'

let job: SealedJob
beforeAll(async () => {
  job = await sealedJob(bareJob())
})

/** What verification says of a document whose square codes a maker with the key changed. */
async function afterChange(change: (block: Block) => readonly Block[]) {
  const alter = (text: HandoverText) => ({ ...text, blocks: text.blocks.flatMap(change) })
  const check = await verifyHandover(await sealText(job, alter), testVerifier())
  return check.findings.map(({ code, what }) => `${code}: ${what}`)
}

const wrong = [
  'page-does-not-follow: The square code does not hold the SHA-256 of the record and the fingerprint of the key.',
]

describe('the square code on the page', () => {
  it('is found right where nobody changed it', async () => {
    expect(await afterChange((block) => [block])).toEqual([])
  })

  it('is found when it holds another record, though every word of the pages is right', async () => {
    const other = (data: string) =>
      data.replace(/RECORD:./, (start) => `${start.slice(0, -1)}${start.endsWith('0') ? '1' : '0'}`)
    const found = await afterChange((block) =>
      block.kind === 'code' ? [{ ...block, data: other(block.data) }] : [block],
    )
    expect(found).toEqual(wrong)
  })

  it('is missed when it is gone, and counted when there are two', async () => {
    expect(await afterChange((block) => (block.kind === 'code' ? [] : [block]))).not.toEqual([])
    const twice = await afterChange((block) =>
      block.kind === 'code' ? [block, { ...block, about: '' }] : [block],
    )
    expect(twice).toEqual(wrong)
  })
})
