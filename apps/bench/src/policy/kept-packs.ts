/** @module The firm's own policy packs and the one it works by, on this device. The record names the pack, not this store. */
import { neutralPack, type PolicyPack, packLabel, readPolicyPack, shippedPacks } from '@shearline/jobfile'
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'

interface Packs extends DBSchema {
  /** The firm's packs by name; read again on the way out, because another version may have written them. */
  packs: { key: string; value: PolicyPack }
  chosen: { key: 'usual'; value: string }
}

let opened: Promise<IDBPDatabase<Packs>> | undefined

/** Settings lie apart from the record: losing them loses no fact, and they are never sent. */
function store(): Promise<IDBPDatabase<Packs>> {
  opened ??= openDB<Packs>('shearline-policy', 1, {
    upgrade: (db) => {
      db.createObjectStore('packs', { keyPath: 'name' })
      db.createObjectStore('chosen')
    },
    terminated: () => {
      opened = undefined
    },
  }).catch((error: unknown) => {
    opened = undefined
    throw error
  })
  return opened
}

/** Every pack there is to choose from, and the label of the one new jobs begin with. */
export interface PackChoice {
  readonly packs: readonly PolicyPack[]
  readonly own: readonly PolicyPack[]
  readonly usual: string
}

/** The packs shipped and those of the firm; one that this version cannot read is left out. */
export async function everyPack(): Promise<PackChoice> {
  const db = await store()
  const own = (await db.getAll('packs')).flatMap((kept) => {
    const read = readPolicyPack(kept)
    return read.ok ? [read.pack] : []
  })
  const packs = [...own, ...shippedPacks]
  const usual = await db.get('chosen', 'usual')
  const there = packs.find((pack) => packLabel(pack) === usual) ?? neutralPack
  return { packs, own, usual: packLabel(there) }
}

/** Keeps a pack of the firm under its name; the one that had it before is replaced. */
export async function keepPack(pack: PolicyPack): Promise<void> {
  await (await store()).put('packs', pack)
}

/** Forgets a pack. Jobs that chose it keep what it asked. */
export async function forgetPack(name: string): Promise<void> {
  await (await store()).delete('packs', name)
}

/** New jobs begin with this pack from now on. */
export async function workBy(pack: PolicyPack): Promise<void> {
  await (await store()).put('chosen', packLabel(pack), 'usual')
}
