/** @module Sends what this device has kept. Nothing leaves the device's store because it was sent. */

import { waitBefore } from './backoff.ts'
import { announce, onChange } from './changes.ts'
import { database, strict } from './database.ts'
import { type Refusal, Refused, remote, Unreachable } from './remote.ts'

/** How far sending has come. `refused` keeps everything here and waits for a person. */
export interface Sending {
  readonly state: 'sent' | 'sending' | 'waiting' | 'refused'
  readonly facts: number
  readonly blobs: number
  readonly refusal: Refusal | null
}

const batch = 200
/** Blobs larger than this are asked for before they are sent, bytes. */
const askFirst = 1 << 20
let sending: Sending = { state: 'sent', facts: 0, blobs: 0, refusal: null }
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
    if (lock === null) return
    try {
      await count()
      if (sending.facts + sending.blobs === 0) {
        show({ state: 'sent', refusal: null })
        return
      }
      show({ state: 'sending' })
      await sendFacts()
      await sendBlobs()
      tries = 0
      mendedGap = false
      await count()
      const more = sending.facts + sending.blobs > 0
      show({ state: more ? 'sending' : 'sent', refusal: null })
      // Kept while this pass ran: the announcement found the lock taken.
      if (more) timer = setTimeout(() => void sendNow(), 0)
      // Other open pages of this browser still show what they counted before.
      announce({ what: 'outbox' })
    } catch (error) {
      await afterFailure(error)
    }
  })
}

async function count(): Promise<void> {
  const db = await database()
  const blobs = await db.getAll('blobs')
  show({ facts: await db.count('outbox'), blobs: blobs.filter((blob) => !blob.sent).length })
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
    const present = facts.filter((fact) => fact !== undefined)
    await remote.sendFacts(present)
    const tx = db.transaction('outbox', 'readwrite', strict)
    await Promise.all([...keys.map((key) => tx.store.delete(key)), tx.done])
    await count()
    for (const job of new Set(present.map((fact) => fact.job))) announce({ what: 'job', job })
  }
}

async function sendBlobs(): Promise<void> {
  const db = await database()
  for (const kept of await db.getAll('blobs')) {
    if (kept.sent) continue
    // Asking first pays only where sending twice would cost more than the question.
    const there = kept.blob.size > askFirst && (await remote.hasBlob(kept.sha256))
    if (!there) await remote.sendBlob(kept.sha256, kept.blob)
    await db.put('blobs', { ...kept, sent: true })
    await count()
  }
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
  timer = setTimeout(() => void sendNow(), waitBefore(tries, Math.random()))
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
