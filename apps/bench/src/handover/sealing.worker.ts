/** @module Makes and proves handover documents away from the page; needs no connection. */
import { type Device, type JobRecord, makeHandover, Verifier, verifyHandover } from '@shearline/jobfile'
import regular from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url'
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url'
import mono from 'dejavu-fonts-ttf/ttf/DejaVuSansMono.ttf?url'

/** A document to make. The key signs without being readable, here as in the page. */
export interface MakeAsk {
  readonly what: 'make'
  readonly record: JobRecord
  readonly language: string
  readonly device: Device
  readonly privateKey: CryptoKey
  readonly madeAt: string
}

/** A document to prove. */
export interface ProveAsk {
  readonly what: 'prove'
  readonly file: Blob
}

/** What proving a document came to. */
export interface Proof {
  readonly proven: boolean
  readonly facts: number
  readonly signatures: number
  readonly hashes: number
  /** The first thing that is wrong, in words, or null. */
  readonly wrong: string | null
}

/** What the worker answers. */
export type SealingAnswer =
  | { readonly what: 'made'; readonly pdf: Uint8Array<ArrayBuffer>; readonly proof: Proof }
  | { readonly what: 'proven'; readonly proof: Proof }
  | { readonly what: 'failed'; readonly why: string }

addEventListener('message', (event: MessageEvent<MakeAsk | ProveAsk>) => {
  const ask = event.data
  const work = ask.what === 'make' ? make(ask) : prove(ask)
  work.then(
    (answer) => postMessage(answer),
    (error: unknown) =>
      postMessage({ what: 'failed', why: error instanceof Error ? error.message : String(error) }),
  )
})

async function make({ record, language, device, privateKey, madeAt }: MakeAsk): Promise<SealingAnswer> {
  const pdf = await makeHandover({
    record,
    language,
    fonts: { regular: await font(regular), bold: await font(bold), mono: await font(mono) },
    device,
    sign: async (data) => new Uint8Array(await crypto.subtle.sign('Ed25519', privateKey, data)),
    madeAt,
  })
  return { what: 'made', pdf: new Uint8Array(pdf), proof: await proofOf(pdf) }
}

async function prove({ file }: ProveAsk): Promise<SealingAnswer> {
  return { what: 'proven', proof: await proofOf(new Uint8Array(await file.arrayBuffer())) }
}

async function proofOf(pdf: Uint8Array): Promise<Proof> {
  const { proven, facts, signatures, hashes, findings } = await verifyHandover(
    pdf,
    new Verifier(crypto.subtle),
  )
  return { proven, facts, signatures, hashes, wrong: findings[0]?.what ?? null }
}

/** The fonts came with the bench and are in its cache: no connection is asked for. */
async function font(address: string): Promise<Uint8Array> {
  const response = await fetch(address)
  if (!response.ok) throw new Error(`The font ${address} is not in this browser (${response.status}).`)
  return new Uint8Array(await response.arrayBuffer())
}
