import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { gunzipSync, gzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { testVerifier } from '../testing/device.ts'
import { addEveryLanguage, codes, languageAsOf, say } from '../words/index.ts'
import { catalogueAsOf, type PastWord, pastWords } from '../words/past.ts'
import { handoverText, latestEdition, printedTexts } from './document/index.ts'
import { makeHandover } from './make.ts'
import { editionOf, maker } from './seal/manifest.ts'
import { fonts, sealedJob, vanJob } from './testing/jobs.ts'
import { verifyHandover } from './verify/index.ts'

const fileOf = (edition: number) => new URL(`./testing/editions/${edition}.pdf.gz`, import.meta.url)

/** A document as each closed edition made it; never made again. */
const frozen = (edition: number) => new Uint8Array(gunzipSync(readFileSync(fileOf(edition))))

// A release closes the latest edition: SHEARLINE_FREEZE=editions keeps one document of it, unless there is one.
if (process.env.SHEARLINE_FREEZE === 'editions' && !existsSync(fileOf(latestEdition))) {
  const job = await sealedJob(vanJob())
  const pdf = await makeHandover({ ...job, language: 'en', fonts, madeAt: '2026-01-12T09:41:00.000Z' })
  writeFileSync(fileOf(latestEdition), gzipSync(pdf, { level: 9 }))
}

/** Every edition before the latest must have its document; the latest has one once it is closed. */
const closed = Array.from({ length: latestEdition }, (_, index) => index + 1).filter(
  (edition) => edition < latestEdition || existsSync(fileOf(edition)),
)

describe('a document of an earlier edition', () => {
  // If this fails, a sentence or a rule that printed documents rest on was changed: put the old sentence into
  // words/past.ts, or keep the old rule under its edition (docs/decisions/0018).
  it.each(closed)('is proven by this version: edition %i', async (edition) => {
    const check = await verifyHandover(frozen(edition), testVerifier())
    expect(check.findings).toEqual([])
    expect(check.proven).toBe(true)
  })

  it('is held to the words of its own edition', async () => {
    const { record, device } = await sealedJob(vanJob())
    const basis = { record, language: 'en', device: device.device, madeAt: '2026-01-12T09:41:00.000Z' }
    const first = printedTexts(handoverText({ ...basis, edition: 1 }))
    const now = printedTexts(handoverText(basis))
    expect(first.join('\n')).not.toContain('square code')
    expect(now.join('\n')).toContain('square code')
  })

  it('is told by its maker, and one that is not known is not guessed', () => {
    expect(editionOf('shearline 0.1.0')).toBe(1)
    expect(editionOf(maker)).toBe(latestEdition)
    expect(editionOf(`shearline 9.9.9, document ${latestEdition + 1}`)).toBeNull()
    expect(editionOf('shearline 9.9.9')).toBeNull()
    expect(editionOf('shearline 0.1.0, document 0')).toBeNull()
  })
})

describe('words of earlier editions', () => {
  it('name codes that exist, a closed edition, and differ from what is said now', () => {
    addEveryLanguage()
    for (const { language, code, until, text } of pastWords) {
      expect(codes).toContain(code)
      expect(until).toBeLessThan(latestEdition)
      expect(say(language, code)).not.toBe(text)
    }
  })

  it('are those that held at the edition, whatever changed again later', () => {
    const past: readonly PastWord[] = [
      { language: 'en', code: 'doc.keys', until: 1, text: 'first' },
      { language: 'en', code: 'doc.keys', until: 3, text: 'third' },
    ]
    const now = { 'doc.keys': 'now' } as unknown as Parameters<typeof catalogueAsOf>[0]
    const at = (edition: number | null) => catalogueAsOf(now, 'en', edition, past)['doc.keys']
    expect([at(1), at(2), at(3), at(4), at(null)]).toEqual(['first', 'third', 'third', 'now', 'now'])
    expect(languageAsOf('en', 3, past)).toBe('en@3')
    expect(languageAsOf('en', 4, past)).toBe('en')
  })
})
