/** Jobs for the tests of the handover document: facts signed by a real key; every one invented. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type Device, factHash, type Sign, treeHeadOfHashes } from '../../chain/index.ts'
import { type SceneFact, settled, vanAfterSession, vanUntilSession } from '../../demo/index.ts'
import type { BodyInput, Kind } from '../../facts/index.ts'
import { foldJob } from '../../fold/index.ts'
import { type JobRecord, makeRecord } from '../../record/index.ts'
import type { TestDevice } from '../../testing/device.ts'
import { playScene } from '../../testing/scene.ts'
import type { Fonts } from '../page/index.ts'

const fontFile = (name: string) =>
  new Uint8Array(readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`)))

/** The open fonts the document is set in. */
export const fonts: Fonts = {
  regular: fontFile('DejaVuSansCondensed'),
  bold: fontFile('DejaVuSansCondensed-Bold'),
  mono: fontFile('DejaVuSansMono'),
}

export interface SealedJob {
  readonly record: JobRecord
  readonly device: Device
  readonly sign: Sign
  readonly tablet: TestDevice
}

/** Plays a scene and seals it as it stands. */
export async function sealedJob(scene: readonly SceneFact[], job = 'test-job'): Promise<SealedJob> {
  const { tablet } = await playScene(scene, job)
  const before = makeRecord(job, tablet.facts, [tablet.device]).facts
  const { tumblers } = foldJob(job, before)
  const open = tumblers.flatMap((tumbler) => tumbler.needs.map((need) => need.code as string))
  const unsettled = open.filter((code) => code !== 'not-sealed')
  await tablet.write(
    'document-sealed',
    {
      count: before.length,
      root: treeHeadOfHashes(before.map(factHash)),
      language: 'en',
      ready: unsettled.length === 0,
      open: unsettled,
    },
    { job, at: '2026-01-12T09:40:00.000Z' },
  )
  return {
    record: makeRecord(job, tablet.facts, [tablet.device]),
    device: tablet.device,
    sign: tablet.sign,
    tablet,
  }
}

/** One fact of a scene. */
export function fact<K extends Kind>(minute: number, kind: K, body: BodyInput<K>): SceneFact {
  return { minute, kind, body } as unknown as SceneFact
}

type Unit = BodyInput<'scan-attached'>['units'][number]

const unit = (name: string, faults: readonly [code: string, status: number][]): Unit => ({
  unit: name,
  time: null,
  availability: 255,
  faults: faults.map(([code, status]) => ({ code, raw: '', status })),
})

/** The van of the demo from the first call to the seal, every tumbler in line. */
export function vanJob(): readonly SceneFact[] {
  const chassis: [string, number] = ['C0035-1F', 0x2c]
  return [
    ...vanUntilSession(),
    fact(41, 'scan-attached', {
      phase: 'before',
      units: [
        unit('brake control', [chassis]),
        unit('body control', []),
        unit('engine control', []),
        unit('instruments', []),
      ],
    }),
    ...vanAfterSession(),
    fact(73, 'scan-attached', {
      phase: 'after',
      units: [
        unit('brake control', [chassis]),
        unit('body control', []),
        unit('engine control', []),
        unit('instruments', []),
      ],
    }),
    ...settled(76),
  ]
}

/** A job of which nothing is known but that it was opened. */
export function bareJob(): readonly SceneFact[] {
  return [
    fact(0, 'job-opened', {
      title: 'Estate car, nothing done yet',
      place: 'Quay street',
      zone: 'Europe/Lisbon',
      work: 'all-keys-lost',
      customer: 'private',
      vehicle: 'Estate car, grey',
      demo: true,
    }),
  ]
}

const labels = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'J', 'K', 'L', 'M'] as const
const colours = ['brass', 'slate', 'moss', 'rust', 'sky', 'plum', 'sand', 'ink'] as const
const forms = ['blade', 'transponder', 'remote-head', 'flip', 'proximity', 'card'] as const
const functions = [
  'start',
  'emergency-start',
  'passive-start',
  'passive-entry',
  'lock',
  'unlock',
  'boot',
  'panic',
  'blade-door',
  'blade-ignition',
  'blade-boot',
] as const

/** Twelve keys of every form, two hundred faults of every class, and everything else a record can hold. */
export function fullJob(): readonly SceneFact[] {
  const facts: SceneFact[] = [...vanUntilSession().filter(({ kind }) => kind !== 'key-labelled')]
  labels.forEach((key, index) => {
    facts.push(
      fact(36, 'key-labelled', {
        key,
        origin: index < 8 ? 'existing' : 'new',
        form: forms[index % forms.length] ?? 'flip',
        make: index % 3 === 0 ? 'renewed' : 'genuine',
        colour: colours[index % colours.length] ?? 'brass',
        onBench: index !== 7,
        ...(index === 3 ? { note: 'Case cracked at the ring; the customer wants it back as it is.' } : {}),
      }),
    )
    functions.forEach((name, place) => {
      const phases = index < 8 ? (['before', 'after'] as const) : (['after'] as const)
      for (const phase of phases)
        if (index !== 7)
          facts.push(
            fact(phase === 'before' ? 40 : 70, 'function-tested', {
              key,
              function: name,
              phase,
              outcome: place === index ? 'not-tested' : place === 7 && phase === 'after' ? 'fails' : 'works',
              ...(place === index ? { because: 'The lock is frozen this morning.' } : {}),
              customerPresent: phase === 'after',
            }),
          )
    })
  })
  const faultCode = (index: number) =>
    `${'PCBU'.charAt(index % 4)}0${(0x100 + index).toString(16).toUpperCase().padStart(3, '0')}-${(index % 90).toString(16).toUpperCase().padStart(2, '0')}`
  const names = ['engine control', 'body control', 'brake control', 'steering lock', 'airbag control']
  const scan = (phase: 'before' | 'after' | 'cleared' | 'cycled', keep: (index: number) => boolean) =>
    fact({ before: 41, after: 73, cleared: 74, cycled: 75 }[phase], 'scan-attached', {
      phase,
      units: names.map((name, place) =>
        unit(
          name,
          Array.from({ length: 200 }, (_, index) => index)
            .filter((index) => index % names.length === place && keep(index))
            .map((index) => [faultCode(index), 0x2f] as [string, number]),
        ),
      ),
    })
  facts.push(
    scan('before', (index) => index % 3 === 0),
    scan('after', () => true),
    scan('cleared', () => false),
    scan('cycled', (index) => index % 2 === 0),
    fact(75.5, 'fault-acknowledged', {
      unit: 'engine control',
      code: faultCode(10),
      words: 'I know of it; my workshop will look at it next week.',
      signer: 'fleet manager',
    }),
    fact(76, 'corrected', {
      fact: '00000000-0000-4000-8000-000000000000',
      action: 'withdrawn',
      reason: 'Recorded on the wrong job.',
    }),
    ...vanAfterSession(),
    ...settled(77),
    fact(80, 'authority-decided', { decision: 'released', reason: 'The fleet office confirmed by phone.' }),
    ...(['airbag', 'keyless-can-move', 'high-voltage', 'roadside', 'lone-work'] as const).map((caution) =>
      fact(80.5, 'caution-read', { caution }),
    ),
  )
  return facts
}
