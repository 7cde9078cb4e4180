/** Runs the PDF tools of this machine on bytes, and draws documents that a dishonest maker would. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Device, factHash, type Sign, sha256OfBytes } from '../../chain/index.ts'
import { type JobRecord, recordText } from '../../record/index.ts'
import { type HandoverText, handoverText } from '../document/index.ts'
import { drawHandover } from '../page/index.ts'
import { joined, lastIndexOf } from '../pdf/bytes.ts'
import { PdfFile } from '../pdf/file.ts'
import { listParts, type Manifest, maker, readSeal, type Seal, signManifest } from '../seal/manifest.ts'
import { attached, partsOf } from '../seal/parts.ts'
import { updateBytes } from '../seal/update.ts'
import { textHash } from '../text-hash.ts'
import { fonts } from './jobs.ts'

/** True when a program is on this machine. */
export function present(program: string): boolean {
  return spawnSync('sh', ['-c', `command -v ${program}`]).status === 0
}

/** Added to a test's title when its program is absent, so that the skip says why. */
export function skipNote(...programs: readonly string[]): string {
  const absent = programs.filter((program) => !present(program))
  return absent.length === 0 ? '' : ` [skipped: ${absent.join(', ')} not on this machine]`
}

/** Writes bytes to a file, runs a program with `FILE` and `OUT` in its arguments replaced, and gives what came out. */
export function run(
  program: string,
  args: readonly string[],
  bytes: Uint8Array,
): { status: number | null; output: string; out: Uint8Array } {
  const folder = mkdtempSync(join(tmpdir(), 'handover-'))
  try {
    const file = join(folder, 'file.pdf')
    const out = join(folder, 'out')
    writeFileSync(file, bytes)
    writeFileSync(out, '')
    const words = args.map((word) => word.replace('FILE', file).replace('OUT', out))
    const { status, stdout, stderr } = spawnSync(program, words, { maxBuffer: 1 << 28 })
    return { status, output: `${stdout}${stderr}`, out: new Uint8Array(readFileSync(out)) }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Where the seal's text begins in a document. */
export const sealAt = (bytes: Uint8Array): number => lastIndexOf(bytes, '{"manifest":{"')

/** The seal of a document, read with nothing but JSON. */
export function sealOf(bytes: Uint8Array): Seal {
  const text = new TextDecoder().decode(bytes.subarray(sealAt(bytes)))
  const seal = readSeal(JSON.parse(text.slice(0, text.indexOf('\nendstream'))))
  if (seal === null) throw new Error('The document holds no seal.')
  return seal
}

/** Bytes before the seal's update. */
export function baseOf(bytes: Uint8Array): Uint8Array {
  return bytes.slice(
    0,
    sealOf(bytes).manifest.parts.reduce((sum, [, length]) => sum + length, 0),
  )
}

/** Seals bytes as they are, with a manifest changed at will: what someone with a key could do. */
export async function sealBytes(
  base: Uint8Array,
  manifest: Manifest,
  sign: Sign,
  change: Partial<Manifest> = {},
): Promise<Uint8Array> {
  const file = PdfFile.open(base)
  if (file === null) throw new Error('The bytes are no PDF file.')
  return joined([base, updateBytes(file, await signManifest({ ...manifest, ...change }, sign))])
}

/** Draws and seals a text that need not follow from the record: what the technician could do with other software. */
export async function sealText(
  job: { record: JobRecord; device: Device; sign: Sign },
  alter: (text: HandoverText) => HandoverText,
  change: Partial<Manifest> = {},
): Promise<Uint8Array> {
  const { record, device, sign } = job
  const madeAt = '2026-01-12T09:41:00.000Z'
  const text = alter(handoverText({ record, language: 'en', device: device.device, madeAt }))
  const bytes = new TextEncoder().encode(recordText(record))
  const seat = new TextEncoder().encode('{}')
  const base = await drawHandover(text, fonts, Date.parse(madeAt), [
    { name: attached.record, description: '', bytes, relationship: 'Source', type: 'application/json' },
    { name: attached.seal, description: '', bytes: seat, relationship: 'Data', type: 'application/json' },
  ])
  const file = PdfFile.open(base)
  const seats = file?.attachments()
  const at = file?.object(seats?.get(attached.record)?.file ?? 0)?.stream?.from ?? 0
  const sealed = record.facts.findLast((fact) => fact.kind === 'document-sealed')
  if (file === null) throw new Error('The drawn file cannot be read.')
  const manifest: Manifest = {
    format: 'shearline-seal',
    version: 1,
    job: record.job,
    language: 'en',
    madeAt,
    maker,
    device: device.device,
    publicKey: device.publicKey,
    object: seats?.get(attached.seal)?.file ?? 0,
    parts: listParts(partsOf(file, record)),
    record: { at, bytes: bytes.length, sha256: sha256OfBytes(bytes) },
    sealFact: sealed === undefined ? null : factHash(sealed),
    text: textHash(text),
  }
  return sealBytes(base, manifest, sign, change)
}
