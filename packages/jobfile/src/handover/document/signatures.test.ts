import { describe, expect, it } from 'vitest'
import type { SceneFact } from '../../demo/index.ts'
import { bareJob, fact, sealedJob, vanJob } from '../testing/jobs.ts'
import { handoverText, printedTexts } from './index.ts'

const blob = 'c4'.repeat(32)
const consent = { about: 'no-check-before', signer: 'K. Marin' } as const

async function printedOf(scene: readonly SceneFact[], edition?: number): Promise<string> {
  const { record, device } = await sealedJob(scene)
  const basis = { record, language: 'en', device: device.device, madeAt: '2026-01-12T09:41:00.000Z' }
  return printedTexts(handoverText(edition === undefined ? basis : { ...basis, edition })).join('\n')
}

describe('signatures on the document', () => {
  it('are listed with who, what for, how, when and the hash the record keeps', async () => {
    const text = await printedOf([
      ...bareJob(),
      fact(5, 'signature-drawn', { signer: 'K. Marin', for: 'handover', blob }),
      fact(6, 'signature-drawn', { signer: 'L. Ode', for: 'acknowledgement', blob, how: 'typed' }),
    ])
    const drawn = ['K. Marin', 'Car and keys received', 'drawn by hand']
    expect(text).toContain(
      [...drawn, '12 January 2026, 08:05 (Europe/Lisbon)', 'c4c4c4c4c4c4c4c4'].join('\n'),
    )
    expect(text).toContain('L. Ode\nFaults acknowledged\nname typed on a keyboard')
    expect(text).toContain('not whose hand it was')
    expect(await printedOf(bareJob())).toContain('No signature is on record.')
  })

  it('stand behind the word "signed": a consent in somebody’s name alone is said to be that', async () => {
    const unsigned = await printedOf([...bareJob(), fact(5, 'consent-given', consent)])
    expect(unsigned).toContain('Given in the name of K. Marin; no signature for it is on record.')
    expect(unsigned).not.toContain('Signed by')
    const signed = await printedOf([
      ...bareJob(),
      fact(5, 'consent-given', { ...consent, signature: blob }),
      fact(5.1, 'signature-drawn', { signer: 'K. Marin', for: 'consent', blob }),
    ])
    expect(signed).toContain('because no key works. Signed by K. Marin.')
    // What an earlier edition said of the same record stays as it was.
    expect(await printedOf([...bareJob(), fact(5, 'consent-given', consent)], 1)).toContain(
      'Signed by K. Marin.',
    )
  })
})

describe('what left the technician’s hands', () => {
  it('is said with day, name and keys, or said not to be on record yet', async () => {
    const handed = fact(82, 'vehicle-handed-over', { to: 'fleet driver', keys: ['A', 'D'] })
    expect(await printedOf([...vanJob(), handed])).toContain(
      'Handed over\n12 January 2026, 09:22 (Europe/Lisbon), to fleet driver. Keys: A, D',
    )
    expect(await printedOf(vanJob())).toContain('Handed over\nnot on record when this document was made')
    expect(await printedOf(vanJob(), 1)).not.toContain('Handed over')
  })

  it('is not counted where no key was labelled', async () => {
    const counts = 'Keys that were here\nnot known\nNew keys\nnot known'
    expect(await printedOf(bareJob())).toContain(counts)
    expect(await printedOf(bareJob(), 1)).toContain('Keys that were here\n0\nNew keys\n0')
  })
})

describe('the words round the keys and the price', () => {
  it('point to a grid only where there is one for the key that stopped, and leave no tax unsaid', async () => {
    const van = await printedOf(vanJob())
    expect(van).toContain('This cannot be tried with a key that is not here.')
    expect(van).not.toContain('unless the grid above')
    expect(await printedOf(vanJob(), 1)).toContain('unless the grid above')
    expect(van).toContain('The record does not say whether this price includes tax.')
    expect(van).toContain('Readings\n12 January 2026, 08:42 to 09:14 (Europe/Lisbon)')
  })
})
