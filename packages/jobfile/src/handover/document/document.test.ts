import { beforeAll, describe, expect, it } from 'vitest'
import type { SceneFact } from '../../demo/index.ts'
import type { JobRecord } from '../../record/index.ts'
import { bareJob, fact, fullJob, sealedJob, vanJob } from '../testing/jobs.ts'
import { type Block, handoverText, printedTexts, tidy } from './index.ts'

const madeAt = '2026-01-12T09:41:00.000Z'

async function textOf(scene: readonly SceneFact[]) {
  const { record, device } = await sealedJob(scene)
  return { record, text: handoverText({ record, language: 'en', device: device.device, madeAt }) }
}

const printed = (blocks: { readonly blocks: readonly Block[] }) =>
  printedTexts(blocks as Parameters<typeof printedTexts>[0]).join('\n')

describe('what the handover document says', () => {
  let record: JobRecord
  let van: string

  beforeAll(async () => {
    const made = await textOf(vanJob())
    record = made.record
    van = printed(made.text)
  })

  it('is the same for the same record, in whatever order its facts are given', () => {
    const device = record.devices[0]?.device ?? ''
    const basis = { record, language: 'en', device, madeAt }
    const turned = { ...record, facts: [...record.facts].reverse() }
    expect(printed(handoverText(basis))).toBe(van)
    // The hash of the record's bytes is printed too, and those bytes are ordered.
    const other = printed(handoverText({ ...basis, record: turned })).split('\n')
    const differing = van.split('\n').filter((line, index) => line !== other[index])
    expect(differing.every((line) => /^[0-9a-f ]+$/.test(line))).toBe(true)
  })

  it('says of a VIN that a picture was read for it', async () => {
    const vin = 'T6SHVN3A0R0042788'
    const pictured = [
      fact(2, 'vin-read', { source: 'plate', vin, picture: 'letters' }),
      fact(2, 'vin-read', { source: 'document', vin, picture: 'code' }),
    ]
    const { text } = await textOf([...vanJob(), ...pictured])
    expect(printed(text)).toContain('plate (letters of a picture)')
    expect(printed(text)).toContain('document (a code in a picture)')
    // A source read twice, with and without a picture, is still one source.
    expect(printed(text)).toContain('(3 sources, one VIN)')
  })

  it('names car, VIN and its sources, place, and times in the zone of the job', () => {
    expect(van).toContain('T6SHVN3A0R0042788')
    expect(van).toContain('glass, document (2 sources, one VIN)')
    expect(van).toContain('Harbour car park, bay 14')
    expect(van).toContain('12 January 2026, 08:00 (Europe/Lisbon)')
    expect(van).toContain('Invented data')
  })

  it('says that absent keys stopped, by the name the customer gave, and that the blade may still open', () => {
    expect(van).toContain('Keys that were not here stopped starting this car.')
    expect(van).toContain('spare at the depot')
    expect(van).toContain('the blade of such a key may still open the doors')
  })

  it('says the tally with the reasons given', () => {
    expect(van).toContain('Before the work this car stored 5 entries.')
    expect(van).toContain(
      'The car stored 3 entries that no key here explains. Reason on record: One is the spare at the depot.',
    )
  })

  it('calls a fault that was there before by that name and does not call it ours', () => {
    expect(van).toContain('There before the work and still there')
    expect(van).toContain('C0035-1F')
    expect(van).not.toContain('Raised by the work')
  })

  it('gives the price with its sum, the warranty, and the day each thing is deleted', () => {
    expect(van).toContain('EUR 350.00')
    expect(van).toContain('12 months, beside the rights given by law.')
    expect(van).toContain('11 February 2026')
  })

  it('shows only the last characters of a document number', () => {
    expect(van).toContain('Only the last characters are kept, never a whole document number.')
    expect(van).toContain('418')
  })

  it('says what is not known of a job of which nothing is known, and claims nothing', async () => {
    const { text } = await textOf(bareJob())
    const bare = printed(text)
    for (const said of [
      'not on record',
      'No key is on record.',
      'No scan is on record. Nothing can be said about faults.',
      'No supply reading is on record.',
      'No teaching session is on record.',
      'No document was recorded as seen.',
      'No price is on record.',
      'No caution is recorded as read.',
      'Nothing on record says what is deleted when.',
      'None of the seven tumblers is in line.',
      'The record names no key that stopped starting this car.',
    ])
      expect(bare).toContain(said)
    expect(bare).not.toMatch(/\bworks\b|stopped starting this car\. The blade|at or above/)
  })

  it('holds every fault of two hundred and every key of twelve', async () => {
    const { text } = await textOf(fullJob())
    const rows = text.blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []))
    const codes = rows.map((row) => row[0]).filter((cell) => /^[PCBU]0[0-9A-F]{3}-/.test(cell ?? ''))
    expect(new Set(codes).size).toBe(200)
    const cards = text.blocks.flatMap((block) => (block.kind === 'keys' ? block.cards : []))
    expect(cards.map((card) => card.letter).join('')).toBe('ABCDEFGHJKLM')
    expect(printed(text)).toContain('Acknowledged by fleet manager: I know of it')
  })

  it('states a withdrawn fact as a correction and an unreadable one as not stated', async () => {
    const made = await sealedJob([...bareJob(), fact(2, 'note-written', { text: 'A note.' })])
    const unreadable = { ...made.record.facts[1], kind: 'keys-said', body: { count: 'many' } }
    const facts = [made.record.facts[0], unreadable, made.record.facts[2]] as JobRecord['facts']
    const text = handoverText({
      record: { ...made.record, facts },
      language: 'en',
      device: made.device.device,
      madeAt,
    })
    expect(printed(text)).toContain('One fact of the record could not be read by this version')
  })

  it('says below the floor when the supply fell below it', async () => {
    const low = [...vanJob(), fact(57.5, 'supply-read', { volts: 11.8, during: 'session', source: 'meter' })]
    const { text } = await textOf(low)
    expect(printed(text)).toContain('The supply fell below the lowest allowed voltage during the session.')
    expect(printed(text)).toContain('11.8 V')
  })

  it('says that an open break-off is not mended', async () => {
    const broken = [
      ...vanJob().filter(({ kind }) => kind !== 'session-closed'),
      fact(64.5, 'broke-off', { why: 'supply', after: 'key D' }),
    ]
    const { text } = await textOf(broken)
    expect(printed(text)).toContain('broke off after key D, because the supply was lost')
  })
})

describe('text on a page', () => {
  it('has no characters that turn the reading direction or hide', () => {
    expect(tidy('A\u202Eback\u200B wards\u0000\n\n x')).toBe('Aback wards x')
    expect(tidy('e\u0301')).toBe('\u00E9')
  })
})
