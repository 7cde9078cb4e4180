/** @module Corrections, what this version could not read, and how a stranger verifies the document. */
import type { Block } from './blocks.ts'
import { heading, list, type Pen, paragraph, quiet } from './pen.ts'

/** What the last section prints beside the job itself. */
export interface ProofOf {
  /** SHA-256 of the attached record, lower-case hex. */
  readonly recordHash: string
  readonly device: { readonly device: string; readonly name: string }
  /** SHA-256 of the device's public key, lower-case hex. */
  readonly keyFingerprint: string
  readonly madeAt: string
}

/** Corrections stay visible: what was changed and why. */
export function corrections({ say, state, instant }: Pen): readonly Block[] {
  const { corrections: made, unknown, unreadable } = state
  const missing = unknown.length + unreadable.length
  if (made.length + missing === 0) return []
  return [
    heading(say('doc.corrections')),
    ...(made.length === 0
      ? []
      : [
          list(
            made.map(({ at, by, action, reason }) =>
              say('doc.correction', { at: instant(at), by, action, reason }),
            ),
          ),
        ]),
    ...(missing === 0 ? [] : [paragraph(say('doc.not-stated', { count: missing }))]),
  ]
}

/** Hashes, fingerprint and the way to verify. */
export function verifying({ say, state, instant, edition }: Pen, proof: ProofOf): readonly Block[] {
  const { seal } = state
  return [
    heading(say('doc.verify')),
    list([say('doc.verify-inside'), say('doc.verify-how'), say('doc.verify-compare')]),
    ...(edition < 2 ? [] : [code({ alt: say('doc.code-alt'), about: say('doc.code-about') }, proof)]),
    {
      kind: 'facts',
      rows: [
        { label: say('doc.verify-device'), value: `${proof.device.name} (${proof.device.device})` },
        { label: say('doc.verify-key'), value: inGroups(proof.keyFingerprint), mono: true },
        { label: say('doc.verify-record'), value: inGroups(proof.recordHash), mono: true },
        {
          label: say('doc.verify-tree'),
          value: seal === null ? say('doc.not-sealed') : inGroups(seal.root),
          mono: seal !== null,
        },
        ...(seal === null ? [] : [{ label: say('doc.verify-tree-count'), value: String(seal.count) }]),
        { label: say('doc.verify-made'), value: instant(proof.madeAt) },
      ],
    },
    quiet(`${say('doc.verify-print')} ${say('doc.verify-character')}`),
  ]
}

/** Record hash and key fingerprint for a machine: upper case, so that the code stays small (ISO/IEC 18004, alphanumeric). */
function code(words: { readonly alt: string; readonly about: string }, proof: ProofOf): Block {
  const data = `SHEARLINE:1:RECORD:${proof.recordHash}:KEY:${proof.keyFingerprint}`.toUpperCase()
  return { kind: 'code', data, ...words }
}

/** Hex in groups of four, so that two people can read it to each other. */
function inGroups(hex: string): string {
  return hex.match(/.{1,4}/g)?.join(' ') ?? ''
}
