/** @module Makes the handover document: pages, attached record, seal. */
import { type Device, factHash, type Sign, sha256OfBytes } from '../chain/index.ts'
import { type JobRecord, recordText } from '../record/index.ts'
import { instantMilliseconds } from '../words/index.ts'
import { handoverText } from './document/index.ts'
import { invoiceText } from './invoice-text.ts'
import { type Attachment, drawHandover, type Fonts, type Pictures } from './page/index.ts'
import { joined } from './pdf/bytes.ts'
import { PdfFile } from './pdf/file.ts'
import { picturesCarried } from './pictures-wanted.ts'
import { HandoverRefused } from './refused.ts'
import { listParts, type Manifest, maker, signManifest } from './seal/manifest.ts'
import { attached, partsOf } from './seal/parts.ts'
import { updateBytes, withWhole } from './seal/update.ts'
import { textHash } from './text-hash.ts'

/** Everything a handover document is made from. */
export interface HandoverInput {
  readonly record: JobRecord
  /** BCP 47; a language without a catalogue is written in English. */
  readonly language: string
  readonly fonts: Fonts
  /** Photos of the record that are at hand, by SHA-256. A JPEG is drawn; without one an outline is. */
  readonly pictures?: Pictures
  /** The device that seals; it must have written facts of this record. */
  readonly device: Device
  readonly sign: Sign
  /** UTC instant, `2026-11-25T09:12:00.000Z`. */
  readonly madeAt: string
}

/** The invoice of the record as data, beside the pages that state it. */
const invoiceAttachment = (text: string): Attachment => ({
  name: attached.invoice,
  description: 'Invoice as data (EN 16931)',
  bytes: new TextEncoder().encode(text),
  relationship: 'Alternative',
  type: 'text/xml',
})

const placeForSeal = '{"seal":"The seal of this file stands in its update, at the end."}'

/**
 * Makes the handover document as PDF/A-3a bytes: pages in the customer's language, the signed record attached
 * byte for byte, and a seal by the device over every byte of the file. The same input gives the same bytes, but
 * for what the signature adds. Throws HandoverRefused when the instant is no instant, the device is not one of
 * the record's, or the fonts cannot be read.
 */
export async function makeHandover(input: HandoverInput): Promise<Uint8Array> {
  const { record, device, madeAt, sign } = input
  const milliseconds = instantMilliseconds(madeAt)
  if (milliseconds === null)
    throw new HandoverRefused(`"${madeAt}" is not a UTC instant.`, 'Give one like 2026-11-25T09:12:00.000Z.')
  const listed = record.devices.find((known) => known.device === device.device)
  if (listed?.publicKey !== device.publicKey)
    throw new HandoverRefused(
      `Device ${device.device} wrote no fact of this record.`,
      'Seal on a device that did, or record the seal on this one first.',
    )
  const text = handoverText({ record, language: input.language, device: device.device, madeAt })
  const encoder = new TextEncoder()
  const recordBytes = encoder.encode(recordText(record))
  const invoice = invoiceText(record)
  const attachments: readonly Attachment[] = [
    {
      name: attached.record,
      description: 'Signed record of the job',
      bytes: recordBytes,
      relationship: 'Source',
      type: 'application/json',
    },
    {
      name: attached.seal,
      description: 'Seal of this file',
      bytes: encoder.encode(placeForSeal),
      relationship: 'Data',
      type: 'application/json',
    },
    ...(invoice === null ? [] : [invoiceAttachment(invoice)]),
  ]
  const base = await drawHandover(
    text,
    input.fonts,
    milliseconds,
    attachments,
    picturesCarried(record, input.pictures ?? new Map()),
  )
  const file = PdfFile.open(base)
  const seats = file?.attachments()
  const recordFile = seats?.get(attached.record)?.file
  const object = seats?.get(attached.seal)?.file
  const recordAt = recordFile === undefined ? null : file?.object(recordFile)?.stream
  if (file === null || object === undefined || recordAt === null || recordAt === undefined)
    throw new HandoverRefused('The drawn file cannot be read back.', 'Report this with the record.')
  const sealed = record.facts.findLast((fact) => fact.kind === 'document-sealed')
  const manifest: Manifest = {
    format: 'shearline-seal',
    version: 1,
    job: record.job,
    language: text.language,
    madeAt,
    maker,
    device: device.device,
    publicKey: device.publicKey,
    object,
    parts: listParts(partsOf(file, record)),
    record: { at: recordAt.from, bytes: recordBytes.length, sha256: sha256OfBytes(recordBytes) },
    sealFact: sealed === undefined ? null : factHash(sealed),
    text: textHash(text),
  }
  return joined([base, updateBytes(file, await signManifest(withWhole(file, manifest), sign))])
}
