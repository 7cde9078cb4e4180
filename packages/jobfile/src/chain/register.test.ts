import { beforeEach, describe, expect, it } from 'vitest'
import type { BodyInput, Fact } from '../facts/index.ts'
import { makeRecord, verifyRecord } from '../record/index.ts'
import { TestDevice, testVerifier } from '../testing/device.ts'
import { factHash, foldRegister, registerJob, rotationBody, treeHeadOfHashes, verifyFacts } from './index.ts'

const day = (number: number, hour = 8) => new Date(Date.UTC(2026, 0, number, hour)).toISOString()
const verifier = testVerifier()

let office: TestDevice
let tablet: TestDevice

const enrol = (by: TestDevice, who: TestDevice, at: string) =>
  by.write(
    'device-enrolled',
    {
      device: who.device.device,
      name: who.device.name,
      publicKey: who.device.publicKey,
      approvedBy: 'owner',
    },
    { job: registerJob, at },
  )

const revoke = (
  by: TestDevice,
  who: TestDevice,
  at: string,
  more: Partial<BodyInput<'device-revoked'>> = {},
) =>
  by.write(
    'device-revoked',
    {
      device: who.device.device,
      because: 'stolen',
      from: at,
      last: null,
      reason: 'Taken from the van.',
      ...more,
    },
    { job: registerJob, at },
  )

const note = (by: TestDevice, text: string, at: string) => by.write('note-written', { text }, { at })
const registerOf = (...devices: TestDevice[]) =>
  devices.flatMap((device) => device.facts.filter((fact) => fact.job === registerJob))
const jobOf = (...devices: TestDevice[]) =>
  devices.flatMap((device) => device.facts.filter((fact) => fact.job !== registerJob))

const check = async (
  facts: readonly Fact[],
  register: readonly Fact[],
  received?: ReadonlyMap<string, string>,
) => {
  const found = await verifyFacts(facts, [office.device, tablet.device], verifier, {
    register,
    ...(received === undefined ? {} : { received }),
  })
  return found.findings.map((one) => [one.code, one.severity, one.where.part])
}

beforeEach(async () => {
  office = await TestDevice.create('office')
  tablet = await TestDevice.create('van tablet')
  await enrol(office, office, day(1))
  await enrol(office, tablet, day(2))
})

describe('the register of devices', () => {
  it('takes the first device as the root and what it vouches for, in any order of arrival', async () => {
    const facts = registerOf(office, tablet)
    for (const order of [facts, [...facts].reverse()]) {
      const register = await foldRegister(order, verifier)
      expect([...register.devices.keys()]).toEqual([office.device.device, tablet.device.device])
      expect(register.troubles).toEqual([])
      expect(register.devices.get(tablet.device.device)).toMatchObject({
        approvedBy: 'owner',
        approvedOn: office.device.device,
        enrolledAt: day(2),
      })
    }
  })

  it('lets no stranger enrol itself, revoke others, or speak with a changed fact', async () => {
    const stranger = await TestDevice.create('stranger')
    await enrol(stranger, stranger, day(3))
    await revoke(stranger, tablet, day(4))
    const changed = structuredClone(await revoke(office, tablet, day(5)))
    changed.body = { ...changed.body, reason: 'Other words.' }
    const register = await foldRegister([...office.facts.slice(0, 2), ...stranger.facts, changed], verifier)
    expect(register.troubles.map((one) => one.code)).toEqual([
      'enrolled-by-stranger',
      'revoked-by-stranger',
      'register-signature-wrong',
    ])
    expect(register.devices.get(tablet.device.device)?.revoked).toBeNull()
    expect(register.devices.has(stranger.device.device)).toBe(false)
  })

  it('undoes what a device wrote between the instant its revocation reaches back to and the revocation', async () => {
    const planted = await TestDevice.create('planted')
    await enrol(tablet, planted, day(4))
    await revoke(office, tablet, day(6), { from: day(3) })
    const register = await foldRegister(registerOf(office, tablet), verifier)
    expect(register.devices.has(planted.device.device)).toBe(false)
    expect(register.troubles.map((one) => one.code)).toEqual(['enrolled-by-stranger'])
  })

  it('counts a key rotation only when the old and the new key have both signed it', async () => {
    const next = await TestDevice.create('van tablet, new key')
    const body = await rotationBody(tablet.device.device, next.device, next.sign, 'Key store was renewed.')
    const forged = { ...body, proof: body.proof.replace(/^./, (first) => (first === 'A' ? 'B' : 'A')) }
    await tablet.write('device-key-rotated', forged, { job: registerJob, at: day(3) })
    const without = await foldRegister(registerOf(office, tablet), verifier)
    expect(without.troubles.map((one) => one.code)).toEqual(['rotation-not-proven'])
    await tablet.write('device-key-rotated', body, { job: registerJob, at: day(4) })
    await note(next, 'By the new key.', day(5))
    await note(tablet, 'By the old key after it was replaced.', day(6))
    const register = registerOf(office, tablet)
    expect((await foldRegister(register, verifier)).devices.has(next.device.device)).toBe(true)
    expect(
      (await check(jobOf(tablet, next), register)).filter(([code]) => code !== 'rotation-not-proven'),
    ).toEqual([['device-revoked', 'error', 'fact 1 (note-written)']])
  })
})

describe('facts of a revoked device', () => {
  it('stay good before the revocation and are not trusted after it, by instant and by number', async () => {
    await note(tablet, 'Before.', day(3))
    const held = tablet.facts.at(-1) as Fact
    const gone = await note(tablet, 'After, back-dated.', day(3, 9))
    await note(tablet, 'After.', day(9))
    await revoke(office, tablet, day(8), {
      because: 'retired',
      last: { seq: held.seq, hash: factHash(held) },
    })
    expect(await check(jobOf(tablet), registerOf(office, tablet))).toEqual([
      ['device-revoked', 'error', 'fact 2 (note-written)'],
      ['device-revoked', 'error', 'fact 3 (note-written)'],
    ])
    expect(gone.at < day(8)).toBe(true)
  })

  it('are good under a stolen key only as far as something else dates them: the last held fact and its chain', async () => {
    await note(tablet, 'First.', day(3))
    await note(tablet, 'Second.', day(4))
    const held = tablet.facts.at(-1) as Fact
    await revoke(office, tablet, day(8), { last: { seq: held.seq, hash: factHash(held) } })
    expect(await check(jobOf(tablet), registerOf(office, tablet))).toEqual([])
    // The thief writes the same numbers anew: the chain to the held fact does not lead to them.
    const forged = await TestDevice.create()
    Object.assign(forged, { device: tablet.device, sign: tablet.sign })
    await note(forged, 'First, as it never was.', day(3))
    await note(forged, 'Second, as it never was.', day(4))
    expect(await check(jobOf(forged), registerOf(office, tablet))).toEqual([
      ['not-witnessed', 'warning', 'fact 1 (note-written)'],
      ['device-revoked', 'error', 'fact 2 (note-written)'],
    ])
  })

  it('are good under a stolen key when another device sealed them, or when they were received before', async () => {
    const early = await note(tablet, 'Before.', day(3))
    await revoke(office, tablet, day(8))
    const register = registerOf(office, tablet)
    expect(await check([early], register)).toEqual([['not-witnessed', 'warning', 'fact 1 (note-written)']])
    expect(await check([early], register, new Map([[early.id, day(4)]]))).toEqual([])
    expect(await check([early], register, new Map([[early.id, day(9)]]))).toHaveLength(1)
    const seal = await office.write(
      'document-sealed',
      { count: 1, root: treeHeadOfHashes([factHash(early)]), language: 'en', ready: true },
      { at: day(5) },
    )
    expect(await check([early, seal], register)).toEqual([])
  })

  it('make a record unproven, and the record carries the register that says so', async () => {
    await note(tablet, 'After.', day(9))
    const own = jobOf(tablet)
    await office.write(
      'document-sealed',
      { count: 1, root: treeHeadOfHashes(own.map(factHash)), language: 'en', ready: true },
      { at: day(10) },
    )
    const facts = [...own, ...jobOf(office)]
    const devices = [office.device, tablet.device]
    const before = makeRecord('test-job', facts, devices, registerOf(office, tablet))
    expect(await verifyRecord(JSON.parse(JSON.stringify(before)), verifier)).toMatchObject({ proven: true })
    await revoke(office, tablet, day(8))
    const after = makeRecord('test-job', facts, devices, registerOf(office, tablet))
    const found = await verifyRecord(JSON.parse(JSON.stringify(after)), verifier)
    expect(found.proven).toBe(false)
    expect(found.findings.map((one) => one.code)).toEqual(['device-revoked'])
    expect(found.record?.register).toHaveLength(3)
  })

  it('of a device that stands in no register are named', async () => {
    const stranger = await TestDevice.create('stranger')
    await note(stranger, 'Who am I?', day(3))
    const found = await verifyFacts(stranger.facts, [stranger.device], verifier, {
      register: registerOf(office),
    })
    expect(found.findings.map((one) => [one.code, one.severity])).toEqual([
      ['device-not-enrolled', 'warning'],
    ])
  })
})
