import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { referencePresent, referenceRows, whenAbsent } from '../testing/reference.ts'
import { VIN_ALPHABET } from './alphabet.ts'
import { characterValue, POSITION_WEIGHTS } from './check-digit.ts'
import {
  expectedCheckDigit,
  isWellFormedVin,
  proposeRepairs,
  readVin,
  sameVin,
  tidyVin,
  weightedSum,
} from './index.ts'
import { SECOND_CHARACTER_ORDER, WMI_RANGES } from './iso3780.ts'
import { YEAR_CODES } from './model-year.ts'
import { regionOf } from './region.ts'

/** The worked example of the rule (Wikibooks "Vehicle Identification Numbers (VIN codes)/Check digit"), sum 351. */
const WORKED = '1M8GDM9AXKP042788'

const anyVin = fc
  .array(fc.constantFrom(...VIN_ALPHABET), { minLength: 17, maxLength: 17 })
  .map((characters) => characters.join(''))
/** A random well-formed VIN with its position 9 made right. */
const rightVin = anyVin.map((vin) => `${vin.slice(0, 8)}${expectedCheckDigit(vin) ?? ''}${vin.slice(9)}`)

const codes = (text: string, market: 'na' | 'other' = 'other'): readonly string[] =>
  readVin(text, { market }).findings.map((finding) => finding.code)

describe('the tables agree with the published ones', () => {
  const tables = describe.skipIf(!referencePresent)
  tables(`vin_*.tsv${whenAbsent}`, () => {
    test('VIN-05 letter values equal 49 CFR 565.15(c) Table III (vin_translit.tsv)', () => {
      const rows = referenceRows('vin_translit.tsv')
      expect(rows).toHaveLength(33)
      for (const row of rows)
        expect([row.char, characterValue(row.char ?? '')]).toEqual([row.char, Number(row.value)])
    })

    test('VIN-05 weights equal 49 CFR 565.15(c) Table IV (vin_weights.tsv)', () => {
      expect(POSITION_WEIGHTS).toEqual(referenceRows('vin_weights.tsv').map((row) => Number(row.weight)))
    })

    test('VIN-07 both cycles equal 49 CFR 565.15(d) Table VII (vin_year_codes.tsv)', () => {
      const rows = referenceRows('vin_year_codes.tsv')
      expect(rows).toHaveLength(30)
      for (const row of rows) {
        const vin = `${WORKED.slice(0, 9)}${row.code}${WORKED.slice(10)}`
        expect(readVin(vin).modelYears).toEqual([
          Number(row.model_year_cycle_1),
          Number(row.model_year_cycle_2),
        ])
      }
    })

    test('VIN-11 every ISO 3780 range has its country and region (vin_wmi_regions.tsv)', () => {
      const rows = referenceRows('vin_wmi_regions.tsv')
      expect(WMI_RANGES).toEqual(rows.map((row) => [row.from, row.to, row.country, row.region]))
      for (const row of rows) {
        for (const prefix of [row.from, row.to]) {
          expect([prefix, regionOf(`${prefix}`)]).toEqual([
            prefix,
            { region: row.region, country: row.country },
          ])
        }
      }
    })

    test('VIN-02 VIN-05 every published example has the recomputed verdict (vin_examples.tsv)', () => {
      const rows = referenceRows('vin_examples.tsv')
      expect(rows).toHaveLength(44)
      for (const row of rows) {
        const reading = readVin(row.vin ?? '')
        const verdict = !reading.wellFormed
          ? 'invalid_form'
          : reading.checkDigit?.ok
            ? 'valid'
            : 'invalid_check_digit'
        // "valid_but_wrong" is a changed character of equal value: the rule itself must pass it (VIN-14).
        expect([row.vin, verdict]).toEqual([
          row.vin,
          row.verdict === 'valid_but_wrong' ? 'valid' : row.verdict,
        ])
        if (row.weighted_sum !== '') expect(weightedSum(reading.vin)).toBe(Number(row.weighted_sum))
        if (row.expected_position_9 !== '') expect(reading.checkDigit?.expected).toBe(row.expected_position_9)
        else expect(reading.checkDigit).toBeNull()
      }
    })

    test('VIN-02 VIN-10 length, alphabet and year alphabet equal the rule table (vin_rules.tsv)', () => {
      const rules = Object.fromEntries(referenceRows('vin_rules.tsv').map((row) => [row.rule, row.value]))
      expect(rules.length).toBe('17')
      expect(rules.alphabet).toBe('0-9 A-Z without I O Q')
      expect(VIN_ALPHABET).toBe('0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'.replace(/[IOQ]/g, ''))
      expect(rules.model_year_alphabet).toBe('vehicle alphabet without U Z 0')
      expect([...YEAR_CODES].sort().join('')).toBe([...VIN_ALPHABET.replace(/[UZ0]/g, '')].sort().join(''))
    })

    test('VIN-14 characters of equal value pass unseen everywhere but position 9 (vin_rules.tsv)', () => {
      const groups = referenceRows('vin_rules.tsv')
        .find((row) => row.rule === 'blind_substitutions')
        ?.value?.match(/\b[1-9][A-Z]+/g)
      expect(groups).toHaveLength(9)
      fc.assert(
        fc.property(rightVin, fc.integer({ min: 0, max: 16 }), (vin, index) => {
          const group = groups?.find((letters) => letters.includes(vin.charAt(index)))
          if (index === 8 || group === undefined) return
          for (const letter of group) {
            expect(readVin(vin.slice(0, index) + letter + vin.slice(index + 1)).checkDigit?.ok).toBe(true)
          }
        }),
      )
    })
  })
})

describe('form', () => {
  test('VIN-01 case, spaces and hyphens do not matter, other characters stay', () => {
    expect(tidyVin(' 1m8gd-m9ax kp04\u00A02788\u2011')).toBe(WORKED)
    expect(readVin('1m8gd m9ax-kp042788').wellFormed).toBe(true)
    expect(tidyVin('ß\u0131*')).toBe('ß\u0131*')
  })

  test('VIN-02 well formed is exactly seventeen characters of the alphabet', () => {
    fc.assert(fc.property(anyVin, (vin) => isWellFormedVin(vin)))
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 24 }), (text) => {
        const tidy = [...tidyVin(text)]
        const right = tidy.length === 17 && tidy.every((character) => /^[A-HJ-NPR-Z0-9]$/.test(character))
        expect(readVin(text).wellFormed).toBe(right)
      }),
    )
  })

  test('VIN-03 a wrong length says how many there are and how many are missing or over', () => {
    const short = readVin(WORKED.slice(1)).findings.find((finding) => finding.code === 'vin-length')
    expect(short?.what).toBe('16 characters, 1 too few: a VIN has 17.')
    const long = readVin(`${WORKED}12`).findings.find((finding) => finding.code === 'vin-length')
    expect(long?.params).toEqual({ found: 19, needed: 17, difference: 2 })
    expect(readVin('').findings[0]?.what).toBe('0 characters, 17 too few: a VIN has 17.')
    expect(readVin(WORKED.slice(1)).modelYears).toEqual([])
  })

  test('VIN-04 a forbidden letter is named with its position and look-alike', () => {
    const reading = readVin('IM8GDM9AXKPO4278Q')
    expect(
      reading.findings.filter((finding) => finding.code === 'vin-forbidden-letter').map((f) => f.params),
    ).toEqual([
      { position: 1, found: 'I', proposal: '1' },
      { position: 12, found: 'O', proposal: '0' },
      { position: 17, found: 'Q', proposal: '0' },
    ])
    expect(reading.checkDigit).toBeNull()
    const other = readVin('1M8GDM9AXKP04#788').findings[0]
    expect(other).toMatchObject({ code: 'vin-forbidden-character', params: { position: 14, found: '#' } })
  })
})

describe('check digit', () => {
  test('VIN-05 the worked example sums to 351 and gives X (Wikibooks)', () => {
    expect(weightedSum(WORKED)).toBe(351)
    expect(readVin(WORKED).checkDigit).toEqual({ expected: 'X', found: 'X', ok: true })
  })

  test('VIN-05 changing one character to one of another value is always noticed', () => {
    fc.assert(
      fc.property(
        rightVin,
        fc.integer({ min: 0, max: 16 }),
        fc.constantFrom(...VIN_ALPHABET),
        (vin, index, to) => {
          const changed = vin.slice(0, index) + to + vin.slice(index + 1)
          const sameValue = characterValue(to) === characterValue(vin.charAt(index))
          const expected = index === 8 ? to === vin.charAt(8) : sameValue
          expect(readVin(changed).checkDigit?.ok).toBe(expected)
        },
      ),
    )
  })

  test('VIN-06 a mismatch is an error in North America and a note elsewhere', () => {
    const wrong = '1HGCM82643A004352'
    const severity = (market: 'na' | 'other'): string | undefined =>
      readVin(wrong, { market }).findings.find((finding) => finding.code === 'vin-check-digit')?.severity
    expect(severity('na')).toBe('error')
    expect(severity('other')).toBe('note')
    expect(readVin(wrong, { market: 'na' }).wellFormed).toBe(true)
    expect(codes(WORKED)).not.toContain('vin-check-digit')
  })
})

describe('model year', () => {
  test('VIN-07 outside North America both cycles stay open', () => {
    expect(readVin('1M8GDM9AXKP042788').modelYears).toEqual([1989, 2019])
  })

  test('VIN-08 in North America position 7 chooses the cycle and says for which vehicles', () => {
    // 1HGCM82633A004352 is given as a 2003 car and 5YJ3E1EA7HF000337 as a 2017 one in public unit tests.
    expect(readVin('1HGCM82633A004352', { market: 'na' }).modelYears).toEqual([2003])
    expect(readVin('5YJ3E1EA7HF000337', { market: 'na' }).modelYears).toEqual([2017])
    expect(codes('5YJ3E1EA7HF000337', 'na')).toContain('vin-year-by-position-7')
    expect(codes('5YJ3E1EA7HF000337')).not.toContain('vin-year-by-position-7')
  })

  test('VIN-09 years beyond the next one are left out', () => {
    expect(readVin(WORKED, { asOfYear: 2017 }).modelYears).toEqual([1989])
    expect(readVin(WORKED, { asOfYear: 2018 }).modelYears).toEqual([1989, 2019])
    const future = readVin('5YJ3E1EA7HF000337', { market: 'na', asOfYear: 2014 })
    expect(future.modelYears).toEqual([])
    expect(future.findings.map((finding) => finding.code)).toContain('vin-year-too-far-ahead')
  })

  test('VIN-10 U, Z and 0 are no year codes', () => {
    for (const code of 'UZ0') {
      const vin = `${WORKED.slice(0, 9)}${code}${WORKED.slice(10)}`
      expect(readVin(vin).modelYears).toEqual([])
      const finding = (market: 'na' | 'other'): string | undefined =>
        readVin(vin, { market }).findings.find((f) => f.code === 'vin-year-code')?.severity
      expect([finding('na'), finding('other')]).toEqual(['error', 'note'])
    }
  })
})

describe('region', () => {
  test('VIN-11 ranges run A to Z, then 1 to 9, then 0, and do not overlap', () => {
    expect(regionOf('S0')).toBeNull()
    expect(regionOf('SU')).toEqual({ region: 'Europe', country: 'Poland' })
    expect(regionOf('10')).toEqual({ region: 'North America', country: 'United States' })
    expect(regionOf('1')).toBeNull()
    for (const first of VIN_ALPHABET) {
      for (const second of SECOND_CHARACTER_ORDER) {
        const at = SECOND_CHARACTER_ORDER.indexOf(second)
        const holders = WMI_RANGES.filter(
          ([from, to]) =>
            from.startsWith(first) &&
            SECOND_CHARACTER_ORDER.indexOf(from.charAt(1)) <= at &&
            at <= SECOND_CHARACTER_ORDER.indexOf(to.charAt(1)),
        )
        expect([first + second, holders.length <= 1]).toEqual([first + second, true])
      }
    }
  })

  test('VIN-11 a prefix in no range has neither region nor country, and a note says so', () => {
    const reading = readVin(`G${WORKED.slice(1)}`)
    expect([reading.region, reading.country]).toEqual([null, null])
    expect(reading.findings.map((finding) => finding.code)).toContain('vin-prefix-not-assigned')
  })
})

describe('repairs', () => {
  test('VIN-12 a right VIN gets no proposal and a wrong length none either', () => {
    fc.assert(fc.property(rightVin, (vin) => proposeRepairs(vin).length === 0))
    expect(proposeRepairs(WORKED.slice(1))).toEqual([])
    expect(proposeRepairs('1M8GDM9AXKP04#788')).toEqual([])
  })

  test('VIN-12 every proposal is right in form and check digit and comes from its changes', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...VIN_ALPHABET, 'I', 'O', 'Q'), { minLength: 17, maxLength: 17 }),
        (given) => {
          const repairs = proposeRepairs(given.join(''))
          for (const repair of repairs) {
            expect(readVin(repair.vin).checkDigit?.ok).toBe(true)
            const rebuilt = [...given]
            for (const change of repair.changes) rebuilt[change.position - 1] = change.to
            expect(rebuilt.join('')).toBe(repair.vin)
          }
          expect(repairs.map((repair) => repair.rank)).toEqual(
            repairs.map((repair) => repair.rank).sort((a, b) => a - b),
          )
          expect(new Set(repairs.map((repair) => repair.vin)).size).toBe(repairs.length)
        },
      ),
    )
  })

  test('VIN-12 a forbidden letter whose look-alike fits leads the list', () => {
    fc.assert(
      fc.property(
        rightVin.filter((vin) => /[01]/.test(vin.slice(0, 8))),
        (vin) => {
          const index = vin.search(/[01]/)
          const letter = vin.charAt(index) === '1' ? 'I' : 'O'
          const given = vin.slice(0, index) + letter + vin.slice(index + 1)
          expect(proposeRepairs(given)[0]?.vin).toBe(vin)
        },
      ),
    )
  })

  test('VIN-12 one look-alike or one transposed pair is found again among the proposals', () => {
    fc.assert(
      fc.property(rightVin, fc.integer({ min: 0, max: 15 }), (vin, index) => {
        const swapped = vin.slice(0, index) + vin.charAt(index + 1) + vin.charAt(index) + vin.slice(index + 2)
        if (readVin(swapped).checkDigit?.ok) return
        expect(proposeRepairs(swapped).map((repair) => repair.vin)).toContain(vin)
      }),
    )
    // The worked example, its zero stamped with a dot or a stroke, as letter readers take it.
    for (const seen of ['D', 'G', '8', '6', 'Q', 'O'])
      expect(proposeRepairs(WORKED.replace('0', seen)).map((repair) => repair.vin)).toContain(WORKED)
    // And the other way: a G read as a zero.
    expect(proposeRepairs(WORKED.replace('G', '0')).map((repair) => repair.vin)).toContain(WORKED)
    // 5GZCZ43D13S812715 is the right one of the pair that an encyclopaedia prints as both passing.
    expect(proposeRepairs('SGZCZ43D13S812715').map((repair) => repair.vin)).toContain('5GZCZ43D13S812715')
  })
})

describe('sources', () => {
  test('VIN-13 equal after tidying is agreement, anything else names the positions', () => {
    const agree = sameVin([
      { source: 'glass', text: '1m8gdm9axkp042788' },
      { source: 'document', text: WORKED },
    ])
    expect([agree.verdict, agree.vin, agree.positions]).toEqual(['agree', WORKED, []])
    const conflict = sameVin([
      { source: 'glass', text: WORKED },
      { source: 'plate', text: '1M8GDM9AXKP042798' },
      { source: 'bus', text: WORKED.slice(0, 16) },
      { source: 'document', text: WORKED },
    ])
    expect([conflict.verdict, conflict.vin, conflict.positions]).toEqual(['conflict', null, [16, 17]])
    expect(conflict.readings[0]).toEqual({ vin: WORKED, sources: ['glass', 'document'] })
  })

  test('VIN-13 one source compares nothing', () => {
    expect(
      sameVin([
        { source: 'glass', text: WORKED },
        { source: 'bus', text: ' ' },
      ]).verdict,
    ).toBe('too-few')
    expect(sameVin([])).toMatchObject({ verdict: 'too-few', vin: null })
  })

  test('VIN-13 positions are exactly those where the readings differ', () => {
    fc.assert(
      fc.property(anyVin, anyVin, (one, other) => {
        const found = sameVin([
          { source: 'a', text: one },
          { source: 'b', text: other },
        ]).positions
        const expected = [...one].flatMap((character, index) =>
          character === other[index] ? [] : [index + 1],
        )
        expect(found).toEqual(expected)
      }),
    )
  })
})
