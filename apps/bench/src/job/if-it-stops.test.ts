import {
  describeDevice,
  emptyHead,
  type Fact,
  type FactDraft,
  foldJob,
  type JobState,
  writeFact,
} from '@shearline/jobfile'
import { type SceneFact, vanAfterSession, vanUntilSession } from '@shearline/jobfile/demo'
import { describe, expect, it } from 'vitest'
import { ifItStops } from './if-it-stops.ts'

/** Signs a scene with a fresh key and folds it, as a bench would. */
async function stateOf(scene: readonly SceneFact[]): Promise<JobState> {
  const pair = (await crypto.subtle.generateKey({ name: 'Ed25519' }, false, [
    'sign',
    'verify',
  ])) as CryptoKeyPair
  const { device } = describeDevice(
    new Uint8Array(await crypto.subtle.exportKey('raw', pair.publicKey)),
    'test',
  )
  let head = emptyHead
  const facts: Fact[] = []
  for (const [index, { kind, body }] of scene.entries()) {
    const draft: FactDraft = {
      id: crypto.randomUUID(),
      job: 'test-job',
      at: new Date(Date.UTC(2026, 0, 12, 8, 0, index)).toISOString(),
      by: 'technician',
      kind,
      body: body as FactDraft['body'],
    }
    const sign = async (data: Uint8Array<ArrayBuffer>) =>
      new Uint8Array(await crypto.subtle.sign('Ed25519', pair.privateKey, data))
    const written = await writeFact(draft, device, head, sign)
    facts.push(written.fact)
    head = written.head
  }
  return foldJob('test-job', facts)
}

const changeRule = (change: object): SceneFact[] =>
  vanUntilSession().map((fact) =>
    fact.kind === 'rule-chosen' ? ({ ...fact, body: { ...fact.body, ...change } } as SceneFact) : fact,
  )

describe('what is said under "if it stops here"', () => {
  it('ENR-07 while a list is saved only at close every key that started the car still does', async () => {
    expect(ifItStops(await stateOf(vanUntilSession()))).toEqual({
      keys: 'Keys A, B, C start the car as before; nothing is dropped.',
      wayBack: 'Way back: open a new session.',
      note: '',
    })
  })

  it('ENR-05 a list rewritten key by key has dropped the others already, a clone of the taught key not', async () => {
    const { keys } = ifItStops(await stateOf(changeRule({ commits: 'each-key' })))
    expect(keys).toBe('Certain to start the car: only A, C. B may not, nor 3 keys that are not here.')
  })

  it('ENR-12 without a rule on record the worst is said, and that the car is taken as replace-all', async () => {
    const scene = vanUntilSession().filter(
      (fact) => fact.kind !== 'rule-chosen' && fact.kind !== 'backup-proven',
    )
    const said = ifItStops(await stateOf(scene))
    expect(said.keys).toBe('No key here is certain to start the car.')
    expect(said.wayBack).toBe('No way back is known.')
    expect(said.note).toContain('replace-all')
  })

  it('nothing is at risk before the session is opened and after it is closed', async () => {
    const before = vanUntilSession().filter((fact) => !['session-opened', 'key-taught'].includes(fact.kind))
    expect(ifItStops(await stateOf(before)).wayBack).toBe('No way back is needed.')
    const after = [...vanUntilSession(), ...vanAfterSession()]
    expect(ifItStops(await stateOf(after)).keys).toContain('The session is closed')
  })
})
