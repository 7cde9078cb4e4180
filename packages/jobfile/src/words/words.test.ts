import { readFileSync } from 'node:fs'
import { compileMessageOrThrow } from '@lingui/message-utils/compileMessage'
import { EXPLANATION_RULES } from '@shearline/keywork'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bodySchemas } from '../facts/index.ts'
import { chapterNames, type NeedCode, type NextCode, tumblerNames } from '../fold/state.ts'
import {
  addEveryLanguage,
  type Catalogue,
  catalogueOf,
  codes,
  dateAfterText,
  instantMilliseconds,
  instantText,
  isCode,
  type Language,
  languageFor,
  languages,
  minorDigitsOf,
  moneyText,
  numberText,
  say,
  sayDifference,
  sayNeed,
  sayNext,
  sayStatement,
  voltsText,
} from './index.ts'

/** The members of a union of string literals, read from the source that declares it. */
function union(file: string, name: string): readonly string[] {
  const source = readFileSync(new URL(file, import.meta.url), 'utf8')
  const body = new RegExp(`export type ${name} =([^;]*?)\\n\\n`).exec(`${source}\n\n`)?.[1] ?? ''
  return [...body.matchAll(/'([^']+)'/g)].map((match) => match[1] ?? '')
}

const under = (prefix: string) =>
  codes.filter((code) => code.startsWith(`${prefix}.`)).map((code) => code.slice(prefix.length + 1))

const keywork = '../../../keywork/src'
const shape = {
  key: bodySchemas['key-labelled'].shape,
  test: bodySchemas['function-tested'].shape,
  opened: bodySchemas['job-opened'].shape,
}

/** Every family of codes that the engine can say, from the engine's own lists. */
const families: readonly [prefix: string, members: readonly string[]][] = [
  ['tumbler', tumblerNames],
  ['chapter', chapterNames],
  ['need', union('../fold/state.ts', 'NeedCode')],
  [
    'next',
    [
      ...union('../fold/state.ts', 'NeedCode'),
      'seal-the-document',
      'hand-over',
      'note-the-blank',
      'nothing-left',
    ],
  ],
  ['function', shape.test.function.options],
  ['outcome', [...shape.test.outcome.options, 'open']],
  ['form', shape.key.form.options],
  ['origin', shape.key.origin.options],
  ['make', shape.key.make.unwrap().options],
  ['colour', shape.key.colour.options],
  ['difference', union(`${keywork}/tally/types.ts`, 'DifferenceCode')],
  ['statement', union(`${keywork}/tally/types.ts`, 'StatementCode')],
  ['vin-source', bodySchemas['vin-read'].shape.source.options],
  ['battery', bodySchemas['supply-set'].shape.battery.options],
  ['during', bodySchemas['supply-read'].shape.during.options],
  ['rule', bodySchemas['rule-chosen'].shape.kind.options],
  ['break', bodySchemas['broke-off'].shape.why.options],
  ['phase', bodySchemas['scan-attached'].shape.phase.options],
  ['fault-class', union(`${keywork}/faults/types.ts`, 'FaultClass')],
  ['fault-means', union(`${keywork}/faults/types.ts`, 'FaultClass')],
  ['claim', [...union(`${keywork}/faults/types.ts`, 'FaultClaim'), 'none']],
  ['explanation', EXPLANATION_RULES.map((rule) => rule.id)],
  ['work', shape.opened.work.options],
  ['customer', shape.opened.customer.options],
  ['role', bodySchemas['authority-seen'].shape.role.options],
  ['decision', bodySchemas['authority-decided'].shape.decision.options],
  ['consent', bodySchemas['consent-given'].shape.about.options],
  ['caution', [...bodySchemas['caution-read'].shape.caution.options, 'defers']],
  ['caution-means', bodySchemas['caution-read'].shape.caution.options],
  ['retention', bodySchemas['retention-set'].shape.classes.element.shape.class.options],
  ['trigger', bodySchemas['retention-set'].shape.classes.element.shape.trigger.unwrap().options],
]

addEveryLanguage()

function wordsOf(language: Language): Catalogue {
  const catalogue = catalogueOf(language)
  if (catalogue === undefined) throw new Error(`no words of ${language}`)
  return catalogue
}

const english = wordsOf('en')

describe('the catalogue', () => {
  it.each(families)('has a text for every code of "%s" and no text without a code', (prefix, members) => {
    expect(members.length).toBeGreaterThan(1)
    expect([...under(prefix)].sort()).toEqual([...members].sort())
  })

  it('is whole in every language, in ICU message format, with the same places as English', () => {
    for (const language of languages) {
      const catalogue = wordsOf(language)
      expect(Object.keys(catalogue).sort()).toEqual([...codes].sort())
      for (const code of codes) {
        const text = catalogue[code]
        expect(text.trim(), code).not.toBe('')
        expect(placesOf(text), `${language} ${code}`).toEqual(placesOf(english[code]))
      }
    }
  })

  it('leaves no message syntax in what it says', () => {
    for (const code of codes) {
      const places = Object.fromEntries([...placesOf(english[code])].map((place) => [place, 2]))
      expect(say('en', code, places), code).not.toMatch(/[{}#]|undefined|plural|select,/)
    }
  })

  it('uses none of the words the trade vocabulary tells us to avoid', () => {
    const all = codes.map((code) => say('en', code)).join('\n')
    expect(all).not.toMatch(/\b(incode|outcode|dump|dealer key|virgin|marry\w*)\b/i)
    expect(all).not.toMatch(/\b(PIN|SKC|OEM|AKL)\b/)
  })
})

/** Names of the places of a message. */
function placesOf(message: string): ReadonlySet<string> {
  const found = new Set<string>()
  const walk = (tokens: unknown): void => {
    if (!Array.isArray(tokens)) return
    for (const token of tokens) {
      if (!Array.isArray(token)) continue
      found.add(String(token[0]))
      for (const choice of Object.values((token[2] ?? {}) as Record<string, unknown>)) walk(choice)
    }
  }
  walk(compileMessageOrThrow(message))
  return found
}

describe('saying what the engine found', () => {
  it('says a need as a state and the next step as a verb sentence', () => {
    const missing = { code: 'vin-second-source', params: {} } as const
    expect(sayNeed('en', missing)).toBe('Second VIN source is missing')
    expect(sayNext('en', missing)).toMatch(/^Read the VIN from a second source/)
  })

  it('says codes inside a need in words, and volts with their decimal', () => {
    expect(sayNeed('en', { code: 'vin-not-well-formed', params: { source: 'bus' } })).toBe(
      'The VIN from the car itself is not well formed',
    )
    expect(sayNeed('en', { code: 'function-lost', params: { key: 'B', function: 'lock' } })).toBe(
      'Key B: "Lock button" worked before and fails now',
    )
    expect(sayNeed('en', { code: 'supply-below-floor', params: { minimum: 12, floor: 12.5 } })).toBe(
      'The supply fell to 12.0 V, below the floor of 12.5 V',
    )
    const unexplained = {
      code: 'difference-unexplained',
      params: { difference: 'stored-more-than-bench', count: 3 },
    } as const
    expect(sayNeed('en', unexplained)).toBe(
      'Not explained: the car stored 3 entries that no key here explains',
    )
    expect(sayNeed('en', { code: 'caution-not-read', params: { caution: 'airbag' } })).toBe(
      'Caution not read: Airbag',
    )
  })

  it('shows a coded value it does not know as it is', () => {
    expect(sayNeed('en', { code: 'caution-not-read', params: { caution: 'falling-rocks' } })).toBe(
      'Caution not read: falling-rocks',
    )
  })

  it('counts in the singular and the plural', () => {
    expect(sayDifference('en', { code: 'said-more-than-bench', count: 1 })).toBe(
      '1 key said to exist is not here',
    )
    expect(sayDifference('en', { code: 'said-more-than-bench', count: 2 })).toBe(
      '2 keys said to exist are not here',
    )
    expect(sayStatement('en', { code: 'keys-somewhere-start', count: 3, keys: [] })).toBe(
      'Up to 3 keys somewhere still start this car.',
    )
    expect(sayStatement('en', { code: 'keys-start-now', count: 2, keys: ['A', 'D'] })).toBe(
      '2 keys here were seen to start this car after the work (A, D).',
    )
  })

  it('has no next step that reads like a state: each begins with a verb in the imperative', () => {
    const states = union('../fold/state.ts', 'NeedCode') as readonly NeedCode[]
    for (const code of [
      ...states,
      'seal-the-document',
      'hand-over',
      'note-the-blank',
      'nothing-left',
    ] as readonly NextCode[])
      expect(sayNext('en', { code, params: {} }), code).not.toMatch(/^(The|No|Nobody|Nothing|Second) /)
  })

  it("keeps backslashes and braces of a customer's words", () => {
    const reason = 'see C:\\x41\\u0042 {count}'
    expect(sayNeed('en', { code: 'work-held', params: { reason } })).toBe(`The work is on hold: ${reason}`)
  })

  it('writes in English for a language it has no catalogue for', () => {
    expect(languageFor('en-GB')).toBe('en')
    expect(languageFor('xx-Latn')).toBe('en')
    expect(isCode('toString')).toBe(false)
  })
})

describe('numbers and money', () => {
  it('keeps between the least and the most decimals', () => {
    expect(voltsText('en', 12)).toBe('12.0')
    expect(voltsText('en', 11.857)).toBe('11.86')
    expect(numberText('en', 1500)).toBe('1500')
  })

  it('writes minor units exactly, negative ones and large ones too', () => {
    expect(moneyText('en', 'EUR', 14500)).toBe('EUR 145.00')
    expect(moneyText('en', 'EUR', -5)).toBe('EUR -0.05')
    expect(moneyText('en', 'JPY', 14500)).toBe('JPY 14500')
    expect(moneyText('en', 'KWD', 1)).toBe('KWD 0.001')
    expect(moneyText('en', 'EUR', 9007199254740991)).toBe('EUR 90071992547409.91')
  })

  // The runtime's table is CLDR's. For these currencies it gives the digits in daily use (none) where ISO 4217
  // lists a minor unit (from memory): a price agreed in minor units must not lose them.
  const dailyUse = 'AFN ALL COP HUF IDR IQD IRR KPW LAK LBP MGA MMK PKR SLL SOS SYP YER'.split(' ')

  it("agrees with the runtime's currency table on the digits of every currency but those named", () => {
    const differing = Intl.supportedValuesOf('currency').filter((currency) => {
      const format = new Intl.NumberFormat('en', { style: 'currency', currency })
      return format.resolvedOptions().maximumFractionDigits !== minorDigitsOf(currency)
    })
    expect(differing.filter((currency) => !dailyUse.includes(currency))).toEqual([])
  })
})

describe('instants', () => {
  it("reads instants as the runtime's own clock does", () => {
    const range = { min: new Date('0001-01-01T00:00:00Z'), max: new Date('9999-12-31T23:59:59.999Z') }
    fc.assert(
      fc.property(fc.date({ ...range, noInvalidDate: true }), (date) => {
        expect(instantMilliseconds(date.toISOString())).toBe(date.getTime())
      }),
    )
    expect(instantMilliseconds('2026-11-25 09:12')).toBeNull()
  })

  it('shows an instant in the zone of the job, summer and winter', () => {
    expect(instantText('en', '2026-01-12T08:05:00.000Z', 'Europe/Lisbon')).toBe(
      '12 January 2026, 08:05 (Europe/Lisbon)',
    )
    expect(instantText('en', '2026-07-12T23:30:00.000Z', 'Europe/Lisbon')).toBe(
      '13 July 2026, 00:30 (Europe/Lisbon)',
    )
  })

  it('says so when the zone is not known', () => {
    expect(instantText('en', '2026-01-12T08:05:00.000Z', 'Sea/Nowhere')).toBe(
      '12 January 2026, 08:05 (UTC; the time zone of the job could not be read)',
    )
  })

  it('counts days over a leap day', () => {
    expect(dateAfterText('en', '2028-02-28T12:00:00.000Z', 2, 'UTC')).toBe('1 March 2028')
  })
})
