import { compareScans, type Scan } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { clearingOffer } from './offer.ts'

const unit = (name: string, ...codes: readonly string[]) => ({
  unit: name,
  time: null,
  availability: null,
  faults: codes.map((code) => ({ code, raw: '', status: null })),
})
const offer = (...scans: readonly Scan[]) => {
  const { units, barred } = clearingOffer(compareScans(scans))
  return { units, barred: barred.map(({ line, why }) => [line.code, why]) }
}

describe('what is offered for clearing', () => {
  it('is a unit whose faults were read again after the work', () => {
    expect(
      offer(
        { phase: 'before', units: [unit('Engine'), unit('Body', 'B1234')] },
        { phase: 'after', units: [unit('Engine', 'P0513')] },
      ),
    ).toEqual({ units: ['Engine'], barred: [['B1234', 'not-read']] })
  })

  it('is never an airbag fault that was there before, nor anything else in its unit', () => {
    expect(
      offer(
        { phase: 'before', units: [unit('Airbag', 'B0012')] },
        { phase: 'after', units: [unit('Airbag', 'B0012', 'U0140')] },
      ),
    ).toEqual({
      units: [],
      barred: [
        ['B0012', 'airbag-there-before'],
        ['U0140', 'other-code'],
      ],
    })
  })
})
