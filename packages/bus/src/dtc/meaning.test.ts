/**
 * @module What the text of a code says. Checked against the shared tables: `dtc_structure.tsv` (who controls which
 * codes), `ftb.tsv` (failure types), and `generic_dtcs.tsv` (the list of SAE J2012-DA codes, for checking only: no
 * title of it may stand here).
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sharedPresent, sharedTable } from '../testing/shared.ts'
import { dtcText, FAILURE_TYPES, failureTypeWords } from './index.ts'
import { type DtcControl, dtcMeaning } from './meaning.ts'
import { DTC_WORDS, type DtcTopic } from './words.ts'

const plain = (text: string | undefined): string =>
  (text ?? '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()

describe('the meaning of a code', () => {
  it('is its area, who controls it, words where we have them, and the failure type', () => {
    expect(dtcMeaning('U0167-87')).toEqual({
      area: 'network',
      controlledBy: 'standard',
      topic: 'lost-communication',
      text: 'nothing heard from: immobiliser',
      failureType: { value: 0x87, text: 'message does not arrive' },
    })
    expect(dtcMeaning('P0513')).toEqual({
      area: 'powertrain',
      controlledBy: 'standard',
      topic: 'immobiliser-and-key',
      text: 'a key the immobiliser does not accept',
    })
    expect(dtcMeaning('b1001-52')).toEqual({
      area: 'body',
      controlledBy: 'maker',
      failureType: { value: 0x52, text: 'not switched active' },
    })
    expect(dtcMeaning('X0100')).toBeUndefined()
  })

  it('PROPERTY is there for every two or three bytes, and a maker never has words of ours', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 2, maxLength: 3 }), (raw) => {
        const meaning = dtcMeaning(dtcText(raw))
        expect(meaning).toBeDefined()
        if (meaning?.controlledBy !== 'standard') expect(meaning?.text).toBeUndefined()
        expect(meaning?.failureType?.value).toBe(raw[2])
        if (raw.length === 3) expect(meaning?.failureType?.text).not.toBe('')
      }),
    )
  })

  it('names failure types that have no words by their group, makers by theirs', () => {
    expect(failureTypeWords(0x2a)).toBe('signal, not further named')
    expect(failureTypeWords(0xf0)).toBe('of the maker')
    expect(failureTypeWords(0xa0)).toBe('reserved')
  })
})

/** What the title of a listed code must speak of for our topic to be right. */
const TITLES: Readonly<Record<DtcTopic, RegExp>> = {
  'lost-communication': /^lost communications? with/i,
  'invalid-data': /^invalid data received from/i,
  'software-mismatch': /^software incompatibility with/i,
  bus: /communication bus/i,
  supply: /volt|power|ground|generator/i,
  'ignition-and-start': /ignition|starter|start |park\/neutral/i,
  'immobiliser-and-key': /immobili|authentication|certificate/i,
  restraint: /deployment/i,
  'control-unit': /control module|\bvin\b|vehicle identification/i,
}

describe.skipIf(!sharedPresent)('our words', () => {
  const listed = new Map(
    sharedPresent ? sharedTable('reference/generic_dtcs.tsv').map((row) => [row.code as string, row]) : [],
  )

  it('are there for the codes that matter to key work', () => {
    expect(DTC_WORDS.size).toBeGreaterThan(200)
    for (const row of listed.values()) {
      if (row.topic === 'immobiliser_key_security')
        expect(DTC_WORDS.has(row.code as string), row.code).toBe(true)
    }
  })

  it.each([...DTC_WORDS])(
    '%s is a listed code of its kind, in words that are not the list’s',
    (code, words) => {
      const row = listed.get(code)
      expect(row, code).toBeDefined()
      expect(row?.title).toMatch(TITLES[words.topic])
      expect(plain(words.text)).not.toBe(plain(row?.title))
      expect(plain(words.text)).not.toContain(plain(row?.title))
      expect(dtcMeaning(code)).toMatchObject({ controlledBy: 'standard', text: words.text })
    },
  )

  it('every listed code is one the standard controls, or reserved for it', () => {
    for (const code of listed.keys()) expect(dtcMeaning(code)?.controlledBy, code).not.toBe('maker')
  })

  it('failure types: all of the list, and no title of it that is more than one word', () => {
    const rows = sharedTable('reference/ftb.tsv')
    expect([...FAILURE_TYPES.keys()]).toEqual(rows.map((row) => Number.parseInt(row.ftb_hex as string, 16)))
    for (const row of rows) {
      const ours = FAILURE_TYPES.get(Number.parseInt(row.ftb_hex as string, 16))
      expect(plain(ours), row.ftb_hex).not.toBe(plain(row.title))
    }
  })
})

describe.skipIf(!sharedPresent)('who controls a code', () => {
  it('is as the shared table says', () => {
    const kinds: readonly (readonly [RegExp, DtcControl])[] = [
      [/^reserved/, 'reserved'],
      [/^manufacturer/, 'maker'],
      [/^ISO\/SAE/, 'standard'],
    ]
    const rows = sharedTable('reference/dtc_structure.tsv').filter((row) => row.kind === 'control')
    expect(rows).toHaveLength(9)
    for (const row of rows) {
      const control = kinds.find(([start]) => start.test(row.value_or_output ?? ''))?.[1]
      expect(control).toBeDefined()
      for (const place of (row.where_or_input ?? '').split(' ')) {
        const [from = '', to = from] = place.split('-')
        for (const code of [from.padEnd(5, '0'), to.padEnd(5, 'F')])
          expect(dtcMeaning(code)?.controlledBy, code).toBe(control)
      }
    }
  })
})
