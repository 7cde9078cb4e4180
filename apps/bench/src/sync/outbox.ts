/** @module Sends what this device has kept. Nothing leaves the device's store because it was sent. */

import type { Fact } from '@shearline/jobfile'
import { waitBefore } from './backoff.ts'
import { announce, onChange } from './changes.ts'
import { database, strict } from './database.ts'
import { type Refusal, Refused, remote, Unreachable } from './remote.ts'
import { upload } from './upload.ts'

/** A blob on its way, in bytes. */
export interface Uploading {
  readonly name: string
  readonly sent: number
  readonly whole: number
}

/** How far sending has come. `refused` keeps everything here and waits for a person. */
export interface Sending {
  /** `reading`: not counted yet since the page was opened, so nothing is claimed. */
  readonly state: 'reading' | 'sent' | 'sending' | 'waiting' | 'refused'
  readonly facts: number
  /** Blobs not sent, and documents the server does not know as such yet. */
  readonly blobs: number
  readonly uploading: Uploading | null
  readonly refusal: Refusal | null
}

/** Facts in one request, and the letters after which the request is full (the server takes 32 MB). */
const batch = 200
const batchLetters = 4 << 20
/** How long what another pass may have overlooked lies here before it is looked at again. Milliseconds. */
const restBesideOther = 1000
let sending: Sending = { state: 'reading', facts: 0, blobs: 0, uploading: null, refusal: null }
let tries = 0
let timer: ReturnType<typeof setTimeout> | undefined
let mendedGap = false
/** The server is known to know this device. */
let enrolled = false
const watchers = new Set<() => void>()

/** The present state, the same object until something changes. */
export function sendingState(): Sending {
  return sending
}

/** Calls back whenever the state changes. */
export function watchSending(watcher: () => void): () => void {
  watchers.add(watcher)
  return () => watchers.delete(watcher)
}

function show(next: Partial<Sending>): void {
  sending = { ...sending, ...next }
  for (const watcher of [...watchers]) watcher()
}

/** Starts sending now and whenever something new is kept, the network returns or the page is looked at. */
export function startSending(): void {
  onChange((change) => {
    if (change.what === 'outbox') void sendNow()
  })
  addEventListener('online', () => void sendNow())
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void sendNow()
  })
  void sendNow()
}

/** One pass over everything unsent. Only one page of the browser sends at a time. */
export async function sendNow(): Promise<void> {
  clearTimeout(timer)
  await navigator.locks.request('shearline-outbox', { ifAvailable: true }, async (lock) => {
    if (lock === null) {
      // Another pass is on its way, here or in another page of this browser; this one only says how much is left.
      await count()
      const left = sending.facts + sending.blobs > 0
      show({ state: left ? 'waiting' : 'sent' })
      // The other one may have counted for the last time before this was kept.
      if (left) sendAfter(restBesideOther)
      return
    }
    try {
      await count()
      if (sending.facts + sending.blobs === 0) {
        show({ state: 'sent', refusal: null })
        return
      }
      show({ state: 'sending' })
      await sendFacts()
      await sendEach([sendBlobs, sendDocuments], (step) => step())
      tries = 0
      mendedGap = false
      await count()
      const more = sending.facts + sending.blobs > 0
      show({ state: more ? 'sending' : 'sent', refusal: null })
      // Kept while this pass ran: the announcement found the lock taken.
      if (more) sendAfter(0)
      // Other open pages of this browser still show what they counted before.
      announce({ what: 'outbox' })
    } catch (error) {
      await afterFailure(error)
    } finally {
      if (sending.uploading !== null) show({ uploading: null })
    }
  })
}

function sendAfter(milliseconds: number): void {
  clearTimeout(timer)
  timer = setTimeout(() => void sendNow(), milliseconds)
}

async function count(): Promise<void> {
  const db = await database()
  const [facts, blobs, documents] = await Promise.all([
    db.count('outbox'),
    db.getAll('blobs'),
    db.getAll('documents'),
  ])
  const unsent = new Set(blobs.filter((blob) => !blob.sent).map((blob) => blob.sha256))
  // A document whose bytes are still to be sent is one thing, not two.
  for (const document of documents) if (!document.sent) unsent.add(document.sha256)
  show({ facts, blobs: unsent.size })
}

async function sendFacts(): Promise<void> {
  const db = await database()
  const self = await db.get('self', 'self')
  if (self === undefined || (await db.count('outbox')) === 0) return
  if (!enrolled) {
    await remote.enrol({ device: self.device, name: self.name, publicKey: self.publicKey })
    enrolled = true
  }
  for (;;) {
    const keys = await db.getAllKeys('outbox', undefined, batch)
    if (keys.length === 0) return
    const facts = await Promise.all(keys.map((key) => db.get('facts', key)))
    const taken = fitting(facts)
    const present = facts.slice(0, taken).filter((fact) => fact !== undefined)
    await remote.sendFacts(present)
    const tx = db.transaction('outbox', 'readwrite', strict)
    await Promise.all([...keys.slice(0, taken).map((key) => tx.store.delete(key)), tx.done])
    await count()
    for (const job of new Set(present.map((fact) => fact.job))) announce({ what: 'job', job })
  }
}

/** How many of these fit into one request; one always does. */
function fitting(facts: readonly (Fact | undefined)[]): number {
  let letters = 0
  const full = facts.findIndex((fact) => {
    letters += JSON.stringify(fact ?? null).length
    return letters > batchLetters
  })
  return full === -1 ? facts.length : Math.max(1, full)
}

/** One that the server refuses must not keep the others here: the refusal is thrown once all were tried. */
async function sendEach<T>(all: readonly T[], send: (one: T) => Promise<void>): Promise<void> {
  let refused: Refused | null = null
  for (const one of all) {
    try {
      await send(one)
    } catch (error) {
      if (!(error instanceof Refused)) throw error
      refused ??= error
    }
  }
  if (refused !== null) throw refused
}

async function sendBlobs(): Promise<void> {
  const db = await database()
  const unsent = (await db.getAll('blobs')).filter((blob) => !blob.sent)
  await sendEach(unsent, async (own) => {
    const { sha256, name } = own
    // Encrypted for this device alone: the server gets the bytes the fact names.
    const blob =
      own.atRest === undefined ? own.blob : await (await import('../photos/at-rest.ts')).openAtRest(own)
    await upload(sha256, blob, (bytes) => show({ uploading: { name, sent: bytes, whole: blob.size } }))
    const kept = await db.get('blobs', sha256)
    if (kept !== undefined) await db.put('blobs', { ...kept, sent: true })
    show({ uploading: null })
    await count()
  })
}

async function sendDocuments(): Promise<void> {
  const db = await database()
  const unsent = (await db.getAll('documents')).filter((document) => !document.sent)
  await sendEach(unsent, async (document) => {
    await remote.sendDocument(document.job, { seal: document.seal, blob: document.sha256 })
    await db.put('documents', { ...document, sent: true })
    await count()
    announce({ what: 'job', job: document.job })
  })
}

async function afterFailure(error: unknown): Promise<void> {
  // Whatever went wrong, the server may not be the one it was.
  enrolled = false
  if (error instanceof Refused) {
    // The server may have been restored from an older copy: offer it the whole chain once; it takes what it lacks.
    if (error.refusal.code === 'gap' && !mendedGap) {
      mendedGap = true
      await queueWholeChain()
      setTimeout(() => void sendNow(), 0)
      return
    }
    show({ state: 'refused', refusal: error.refusal })
    return
  }
  show({ state: 'waiting', refusal: error instanceof Unreachable ? error.refusal : null })
  sendAfter(waitBefore(tries, Math.random()))
  tries++
}

async function queueWholeChain(): Promise<void> {
  const db = await database()
  const tx = db.transaction(['self', 'outbox'], 'readwrite', strict)
  const self = await tx.objectStore('self').get('self')
  if (self !== undefined) {
    for (let seq = 1; seq <= self.head.seq; seq++) {
      await tx.objectStore('outbox').put({ device: self.device, seq })
    }
  }
  await tx.done
}
