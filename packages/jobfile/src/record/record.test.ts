import { describe, expect, it } from 'vitest'
import { factHash, treeHeadOfHashes } from '../chain/index.ts'
import { TestDevice, testVerifier } from '../testing/device.ts'
import { makeRecord, recordText, verifyRecord } from './index.ts'

async function sealedJob() {
  const tablet = await TestDevice.create()
  await tablet.write('job-opened', {
    title: 'Small van',
    place: 'Harbour',
    zone: 'Europe/Lisbon',
    work: 'add-a-key',
    customer: 'fleet',
    vehicle: 'small van',
  })
  await tablet.write('note-written', { text: 'Another job of the same day.' }, { job: 'other-job' })
  await tablet.write('keys-said', { count: 5 })
  await tablet.write('note-written', { text: 'Two keys on the bench.' })
  const own = tablet.facts.filter((fact) => fact.job === 'test-job')
  await tablet.write('document-sealed', {
    count: own.length,
    root: treeHeadOfHashes(own.map(factHash)),
    language: 'en',
    ready: false,
    open: ['vin-missing'],
  })
  return { tablet, record: makeRecord('test-job', tablet.facts, [tablet.device]) }
}

describe('the record of a job', () => {
  it('is proven when nothing was touched, although the device wrote for another job in between', async () => {
    const { record } = await sealedJob()
    const check = await verifyRecord(JSON.parse(recordText(record)), testVerifier())
    expect(check.findings).toEqual([])
    expect(check).toMatchObject({ proven: true, facts: 4, signatures: 4, links: 4, sealed: true })
  })

  it('says how many facts are missing when one was taken out', async () => {
    const { record } = await sealedJob()
    const without = { ...record, facts: record.facts.filter((fact) => fact.kind !== 'keys-said') }
    const check = await verifyRecord(without, testVerifier())
    expect(check.proven).toBe(false)
    expect(check.findings.map((finding) => finding.code)).toContain('facts-missing')
  })

  it('is not proven without a seal, nor when the seal itself was taken out', async () => {
    const { record } = await sealedJob()
    const without = { ...record, facts: record.facts.slice(0, -1) }
    const check = await verifyRecord(without, testVerifier())
    expect(check.findings.map((finding) => finding.code)).toEqual(['not-sealed'])
  })

  it('warns of facts recorded after the seal', async () => {
    const { tablet } = await sealedJob()
    await tablet.write('note-written', { text: 'Customer called.' })
    const check = await verifyRecord(makeRecord('test-job', tablet.facts, [tablet.device]), testVerifier())
    expect(check.findings.map((finding) => [finding.code, finding.severity])).toEqual([
      ['after-seal', 'warning'],
    ])
  })

  it('never throws on anything that is not a record', async () => {
    for (const value of [null, 7, 'text', [], {}, { format: 'shearline-record', version: 2 }]) {
      const check = await verifyRecord(value, testVerifier())
      expect(check.findings.map((finding) => finding.code)).toEqual(['not-a-record'])
    }
  })
})
