import { describe, expect, it } from 'vitest'
import { slipsAgainstEnglish } from '../../../../packages/jobfile/src/words/testing/translations.ts'
import { en } from './en.ts'

type Topic = Readonly<Record<string, Readonly<Record<string, string>>>>

/** Every topic file of every language, by path: `./de/keys.ts` with what it exports. */
const topics = import.meta.glob<Topic>(['./*/*.ts'], { eager: true })
/** What joins the topics of a language: `./de.ts` exports `de`. */
const joined = import.meta.glob<Topic>(['./??.ts'], { eager: true })
const englishTopics = Object.keys(topics).filter((path) => path.startsWith('./en/'))
const tongues = [...new Set(Object.keys(topics).map((path) => path.slice(2, 4)))].filter(
  (one) => one !== 'en',
)

describe('the translations of the bench', () => {
  it('finds the languages on disk, so that the other tests look at something', () => {
    expect(englishTopics.length).toBeGreaterThan(15)
    expect(tongues.length).toBeGreaterThan(1)
  })

  it.each(tongues)('%s: every topic says what the English one says', (language) => {
    const slips = Object.entries(topics)
      .filter(([path]) => path.startsWith(`./${language}/`))
      .flatMap(([path, topic]) => {
        const english = topics[path.replace(`./${language}/`, './en/')]
        if (english === undefined) return [`${path}: English has no such topic`]
        return Object.entries(topic).flatMap(([name, own]) => {
          const words = english[name]
          if (words === undefined) return [`${path}: English has no ${name}`]
          return slipsAgainstEnglish(language, words, own).map((slip) => `${path}: ${slip}`)
        })
      })
    expect(slips).toEqual([])
  })

  it.each(tongues)('%s: no topic is missing, and all are joined', (language) => {
    const missing = englishTopics.map((path) => path.replace('./en/', `./${language}/`))
    expect(missing.filter((path) => topics[path] === undefined)).toEqual([])
    const whole = joined[`./${language}.ts`]?.[language] ?? {}
    expect(Object.keys(en).filter((key) => !Object.hasOwn(whole, key))).toEqual([])
  })
})
