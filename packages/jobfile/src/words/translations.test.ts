import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { en } from './en/index.ts'
import { slipsAgainstEnglish } from './testing/translations.ts'

type Topic = Readonly<Record<string, Readonly<Record<string, string>>>>

const here = new URL('.', import.meta.url)
const filesOf = (language: string) =>
  readdirSync(new URL(`${language}/`, here)).filter((file) => file.endsWith('.ts'))
const topicOf = async (language: string, file: string) =>
  (await import(new URL(`${language}/${file}`, here).href)) as Topic
const tongues = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name.length === 2 && entry.name !== 'en')
  .map((entry) => entry.name)

describe('the translations of the engine’s words', () => {
  it('finds the languages on disk, so that the other tests look at something', () => {
    expect(filesOf('en').length).toBeGreaterThan(10)
    expect(tongues.length).toBeGreaterThan(1)
  })

  it.each(tongues)('%s: every topic says what the English one says', async (language) => {
    const slips: string[] = []
    for (const file of filesOf(language).filter((name) => name !== 'index.ts')) {
      if (!filesOf('en').includes(file)) {
        slips.push(`${file}: English has no such topic`)
        continue
      }
      const english = await topicOf('en', file)
      for (const [name, own] of Object.entries(await topicOf(language, file))) {
        const found = slipsAgainstEnglish(language, english[name] ?? {}, own)
        slips.push(...found.map((slip) => `${file}: ${slip}`))
      }
    }
    expect(slips).toEqual([])
  })

  it.each(tongues)('%s: no topic is missing, and all are joined', async (language) => {
    expect(filesOf('en').filter((file) => !filesOf(language).includes(file))).toEqual([])
    const whole = (await topicOf(language, 'index.ts'))[language] ?? {}
    expect(Object.keys(en).filter((code) => !Object.hasOwn(whole, code))).toEqual([])
  })
})
