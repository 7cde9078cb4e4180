/** @module A report as it is read and kept: its text with what must not be kept blotted out, under its own hash. */
import type { Body } from '@shearline/jobfile'
import { redactReport } from '@shearline/keywork'
import type { KeptBlob } from '../../sync/database.ts'

/** Where a scan was read from: what is shown, what goes into the fact, and what is kept beside it. */
export interface Source {
  readonly text: string
  readonly named: NonNullable<Body<'scan-attached'>['source']>
  readonly blob: KeptBlob
}

/** The longest name of a file that a fact holds. */
const longestName = 200

/** Makes a source of text; `file` is what it came as. The file itself is hashed and not kept. */
export async function sourceOf(text: string, file?: File): Promise<Source> {
  const read = redactReport(text)
  const bytes = new TextEncoder().encode(read)
  const blob = await sha256Of(bytes)
  const name = file?.name.trim().slice(0, longestName) ?? ''
  return {
    text: read,
    named: {
      blob,
      bytes: bytes.byteLength,
      ...(name === '' ? {} : { name }),
      ...(file === undefined ? {} : { original: await sha256Of(await file.arrayBuffer()) }),
    },
    blob: {
      sha256: blob,
      blob: new Blob([bytes], { type: 'text/plain; charset=utf-8' }),
      name: name === '' ? 'report.txt' : name,
      sent: false,
    },
  }
}

async function sha256Of(bytes: BufferSource): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', bytes)
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
