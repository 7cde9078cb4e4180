import { decodeCapture } from '@shearline/bus'
import { describe, expect, it } from 'vitest'
import {
  demoVin,
  recordingAfter,
  recordingBefore,
  recordingCycled,
  type SceneFact,
  settled,
  vanAfterSession,
  vanUntilSession,
} from '../demo/index.ts'
import { foldJob } from '../fold/index.ts'
import { playScene } from '../testing/scene.ts'
import { type IntakeResult, RecordingIntake } from './index.ts'

const noon = 1_767_960_000

function take(text: string, name = 'recording.log'): IntakeResult {
  const bytes = new TextEncoder().encode(text)
  const intake = new RecordingIntake()
  const decoding = decodeCapture(intake)
  decoding.push(bytes)
  return intake.finish(decoding.end(), {
    name,
    bytes: bytes.length,
    sha256: 'a'.repeat(64),
    keptSha256: 'b'.repeat(64),
  })
}

const scenes = (minute: number, intake: IntakeResult, phase: 'before' | 'after' | 'cycled'): SceneFact[] =>
  intake.facts(phase).map((fact) => ({ minute, ...fact }) as SceneFact)

describe('the intake of a recording', () => {
  it('finds the VIN by who said it, every unit that answered, and the faults', () => {
    const intake = take(recordingBefore(noon))
    expect(intake.vins).toEqual([
      { vin: demoVin, unit: '7E8' },
      { vin: demoVin, unit: '728' },
    ])
    expect(intake.notVins).toEqual([])
    expect(intake.scannedUnits).toBe(9)
    expect(intake.faults).toBe(1)
    expect(intake.recording).toMatchObject({ format: 'candump', incomplete: 0, findings: 0 })
    const scan = intake.facts('before').find((fact) => fact.kind === 'scan-attached')
    expect(scan?.body).toMatchObject({ phase: 'before' })
    expect(JSON.stringify(scan)).toContain('"unit":"7B8"')
    expect(JSON.stringify(scan)).toContain('"code":"C0035-11"')
  })

  it('notes resets and clears with their time, and keeps secrets out of every fact', () => {
    const intake = take(recordingAfter(noon))
    expect(intake.recording.events?.filter((event) => event.what === 'reset')).toMatchObject([
      { unit: '758', detail: 'hardReset' },
    ])
    const facts = JSON.stringify(intake.facts('after')).toLowerCase()
    for (const secret of ['11223344', '55667788']) expect(facts).not.toContain(secret)
    expect(take(recordingCycled(noon)).recording.events?.map((event) => event.what)).toContain(
      'faults-cleared',
    )
  })

  it('shows an answer that is no VIN and records none', () => {
    const broken = take(
      '(1.000000) can0 7E0#0209020000000000\n(1.010000) can0 7E8#10144902014E4F54\n(1.011000) can0 7E0#3000000000000000\n(1.012000) can0 7E8#21204120564E4F54\n(1.013000) can0 7E8#2220412056494E21\n',
    )
    expect(broken.vins).toEqual([])
    expect(broken.notVins).toHaveLength(1)
    expect(broken.facts(null).map((fact) => fact.kind)).toEqual(['recording-attached'])
  })

  it('carries the van job: the old fault was there before, ours has its explanation and is gone after the cycle', async () => {
    const after = take(recordingAfter(noon + 1800), 'session.log')
    const story: SceneFact[] = [
      ...vanUntilSession(),
      { minute: 40, kind: 'unit-named', body: { unit: '758', role: 'body' } },
      ...scenes(41, take(recordingBefore(noon), 'before.log'), 'before'),
      ...vanAfterSession(),
      ...scenes(73, after, 'after'),
      ...scenes(78, take(recordingCycled(noon + 3600), 'cycled.log'), 'cycled'),
      ...settled(80),
    ].map(
      (fact) =>
        (fact.kind === 'recording-attached' || fact.kind === 'scan-attached'
          ? { ...fact, body: { ...fact.body, blob: String(fact.minute).padStart(64, '0') } }
          : fact) as SceneFact,
    )
    const state = foldJob('test-job', (await playScene(story)).facts)
    const lines = state.faults.faults.map((line) => [line.unit, line.code, line.class, line.needsAttention])
    expect(lines).toEqual([
      ['768', 'U0140-87', 'raised-by-work', false],
      ['7B8', 'C0035-11', 'there-before-still', false],
    ])
    expect(state.faults.faults[0]?.explanation?.rule).toBe('reset-silence')
    const open = state.tumblers.flatMap((tumbler) => tumbler.needs.map((need) => need.code))
    expect(open).toEqual(['not-sealed'])
  })
})
