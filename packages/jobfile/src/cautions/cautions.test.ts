import { describe, expect, it } from 'vitest'
import { foldJob } from '../fold/index.ts'
import { neutralPack, packChosen } from '../policy/index.ts'
import { TestDevice } from '../testing/device.ts'
import { isCode } from '../words/index.ts'
import { cautionRules, cautionsDue } from './index.ts'

const opened = {
  title: 'A job',
  place: 'Yard',
  zone: 'UTC',
  vehicle: 'Van',
  work: 'add-a-key',
  customer: 'private',
} as const

async function jobWith(write: (device: TestDevice) => Promise<void>) {
  const device = await TestDevice.create()
  await device.write('job-opened', opened)
  await device.write('policy-answered', packChosen(neutralPack, 'private'))
  await write(device)
  return foldJob('test-job', device.facts)
}

const answer = (device: TestDevice, question: string, words: string) =>
  device.write('policy-answered', { pack: 'neutral default, any, 2026-11-01', question, answer: words })

describe('cautions', () => {
  it('have words and a source in every row', () => {
    for (const { caution, source } of cautionRules) {
      expect(isCode(`caution.${caution}`) && isCode(`caution-means.${caution}`), caution).toBe(true)
      expect(source).not.toBe('')
    }
  })

  it.each([
    ['site.drive', 'electric', 'high-voltage'],
    ['site.drive', 'hybrid', 'high-voltage'],
    ['site.place', 'roadside', 'roadside'],
    ['site.alone', 'alone', 'lone-work'],
  ] as const)(
    'follow the answer: %s %s calls for %s, and reading it settles it',
    async (question, words, caution) => {
      const before = await jobWith(async (device) => void (await answer(device, question, words)))
      expect(before.cautionsWanted).toContain(caution)
      expect(cautionsDue(before, 'arrival').map((one) => one.caution)).toContain(caution)
      const after = await jobWith(async (device) => {
        await answer(device, question, words)
        await device.write('caution-read', { caution })
      })
      expect(cautionsDue(after, 'arrival').map((one) => one.caution)).not.toContain(caution)
    },
  )

  it('follow a changed answer: a car that is not electric after all', async () => {
    const state = await jobWith(async (device) => {
      await answer(device, 'site.drive', 'electric')
      await answer(device, 'site.drive', 'combustion')
    })
    expect(state.cautionsWanted).not.toContain('high-voltage')
  })

  it('say carbon monoxide on arrival indoors, else when the engine is started', async () => {
    const inside = await jobWith(async (device) => void (await answer(device, 'site.place', 'indoors')))
    const outside = await jobWith(async (device) => void (await answer(device, 'site.place', 'open-air')))
    const due = (state: typeof inside) => cautionsDue(state, 'arrival').map((one) => one.caution)
    expect(due(inside)).toContain('carbon-monoxide')
    expect(due(outside)).not.toContain('carbon-monoxide')
    expect(cautionsDue(outside, 'prove').map((one) => one.caution)).toContain('carbon-monoxide')
  })

  it('call for button cells as soon as a key with a cell is labelled', async () => {
    const key = {
      key: 'A',
      colour: 'brass',
      origin: 'existing',
      onBench: true,
      buttons: [],
      make: 'genuine',
    } as const
    const withCell = await jobWith(
      async (device) => void (await device.write('key-labelled', { ...key, form: 'proximity' })),
    )
    const plain = await jobWith(
      async (device) => void (await device.write('key-labelled', { ...key, form: 'blade' })),
    )
    expect(withCell.cautionsWanted).toEqual(expect.arrayContaining(['button-cells', 'keyless-can-move']))
    expect(plain.cautionsWanted).not.toContain('button-cells')
  })
})
