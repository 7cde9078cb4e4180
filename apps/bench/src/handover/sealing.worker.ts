/** @module Makes and proves handover documents away from the page; needs no connection. */
import {
  bringMessage,
  type Device,
  type Fonts,
  type JobRecord,
  makeHandover,
  makeRegister,
  makeSheet,
  offeredSheets,
  plainRegister,
  registerCsv,
  registerJson,
  type SheetName,
  type SheetOffer,
  Verifier,
  verifyHandover,
} from '@shearline/jobfile'
import regular from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url'
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url'
import mono from 'dejavu-fonts-ttf/ttf/DejaVuSansMono.ttf?url'

/** A document to make. The key signs without being readable, here as in the page. */
export interface MakeAsk {
  readonly what: 'make'
  readonly record: JobRecord
  /** Photos of the record that are on this device, by SHA-256. */
  readonly pictures: ReadonlyMap<string, Uint8Array>
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

/** Which sheets there are for a job, with a line on each. */
export interface OffersAsk {
  readonly what: 'offers'
  readonly record: JobRecord
  readonly language: string
}

/** A sheet to make. */
export interface SheetAsk {
  readonly what: 'sheet'
  readonly sheet: SheetName
  readonly record: JobRecord
  readonly language: string
  readonly madeAt: string
}

/** The row of a register to make. */
export interface RegisterAsk {
  readonly what: 'register'
  readonly record: JobRecord
  readonly form: 'csv' | 'json'
}

export type SealingAsk = MakeAsk | ProveAsk | OffersAsk | SheetAsk | RegisterAsk

/** What proving a document came to. */
export interface Proof {
  readonly proven: boolean
  readonly facts: number
  readonly signatures: number
  readonly hashes: number
  /** The first thing that is wrong, in words, or null. */
  readonly wrong: string | null
}

/** What the worker answers, by what it was asked. */
export type SealingAnswer =
  | { readonly to: 'make'; readonly pdf: Uint8Array<ArrayBuffer>; readonly proof: Proof }
  | { readonly to: 'prove'; readonly proof: Proof }
  | { readonly to: 'offers'; readonly offers: readonly SheetOffer[] }
  | { readonly to: 'sheet'; readonly pdf: Uint8Array<ArrayBuffer>; readonly message: string | null }
  | { readonly to: 'register'; readonly text: string }
  | { readonly to: 'failed'; readonly why: string }

addEventListener('message', (event: MessageEvent<SealingAsk>) => {
  answer(event.data).then(
    (answer) => postMessage(answer),
    (error: unknown) =>
      postMessage({ to: 'failed', why: error instanceof Error ? error.message : String(error) }),
  )
})

async function answer(ask: SealingAsk): Promise<SealingAnswer> {
  switch (ask.what) {
    case 'make':
      return make(ask)
    case 'prove':
      return { to: 'prove', proof: await proofOf(new Uint8Array(await ask.file.arrayBuffer())) }
    case 'offers':
      return { to: 'offers', offers: offeredSheets(ask) }
    case 'sheet': {
      const pdf = new Uint8Array(await makeSheet(ask.sheet, ask, await fonts()))
      return { to: 'sheet', pdf, message: ask.sheet === 'bring-this' ? bringMessage(ask) : null }
    }
    case 'register': {
      const register = makeRegister(plainRegister, [ask.record])
      return { to: 'register', text: ask.form === 'csv' ? registerCsv(register) : registerJson(register) }
    }
  }
}

async function make({
  record,
  pictures,
  language,
  device,
  privateKey,
  madeAt,
}: MakeAsk): Promise<SealingAnswer> {
  const pdf = await makeHandover({
    record,
    language,
    fonts: await fonts(),
    pictures,
    device,
    sign: async (data) => new Uint8Array(await crypto.subtle.sign('Ed25519', privateKey, data)),
    madeAt,
  })
  return { to: 'make', pdf: new Uint8Array(pdf), proof: await proofOf(pdf) }
}

async function proofOf(pdf: Uint8Array): Promise<Proof> {
  const { proven, facts, signatures, hashes, findings } = await verifyHandover(
    pdf,
    new Verifier(crypto.subtle),
  )
  return { proven, facts, signatures, hashes, wrong: findings[0]?.what ?? null }
}

const fonts = async (): Promise<Fonts> => ({
  regular: await font(regular),
  bold: await font(bold),
  mono: await font(mono),
})

/** The fonts came with the bench and are in its cache: no connection is asked for. */
async function font(address: string): Promise<Uint8Array> {
  const response = await fetch(address)
  if (!response.ok) throw new Error(`The font ${address} is not in this browser (${response.status}).`)
  return new Uint8Array(await response.arrayBuffer())
}
