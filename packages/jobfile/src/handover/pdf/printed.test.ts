import { describe, expect, it } from 'vitest'
import type { HandoverText } from '../document/index.ts'
import { drawHandover } from '../page/index.ts'
import { fonts } from '../testing/jobs.ts'
import { latin1 } from './bytes.ts'
import { PdfFile } from './file.ts'
import { printedPages } from './printed.ts'

const textOf = (text: string): HandoverText => ({
  language: 'en',
  direction: 'ltr',
  title: 'x',
  running: { left: 'x', pageOf: () => '' },
  blocks: [{ kind: 'paragraph', text }],
})

describe('what a page prints', () => {
  it('is not turned round where letters and figures run from left to right, whatever the page claims', async () => {
    const pdf = await drawHandover(textOf(`EUR 90.00${' x'.repeat(40)}`), fonts, 0, [])
    const page = latin1(pdf)
    // The stream keeps its length: the mark takes the room of operators that draw nothing here.
    const from = page.indexOf('BT\n')
    const to = page.indexOf('ET\n', from)
    const shown = /<[0-9a-f]+>/.exec(page.slice(from, to))?.[0].slice(1, 37) ?? ''
    const font = /\/F\d+ [\d.]+ Tf/.exec(page.slice(from, to))?.[0] ?? ''
    const claim = `/ReversedChars BMC ${font} [<${shown}>] TJ EMC`
    const forged = page.slice(0, from) + claim.padEnd(to - from, ' ') + page.slice(to)
    expect(forged).toHaveLength(page.length)
    const bytes = Uint8Array.from(forged, (character) => character.charCodeAt(0))
    const [printed] = printedPages(PdfFile.open(bytes) as PdfFile)
    expect(printed?.content).toBe('EUR 90.00')
  })
})
