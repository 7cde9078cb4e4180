/** @module The firm's recipients on this device: public keys, kept as plain data beside the record. */
import { addRecipient, readRecipients, recipientsText, type VaultRecipient } from '@shearline/jobfile'
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'

interface VaultSchema extends DBSchema {
  settings: { key: 'recipients'; value: string }
}

let opened: Promise<IDBPDatabase<VaultSchema>> | undefined

function database(): Promise<IDBPDatabase<VaultSchema>> {
  opened ??= openDB<VaultSchema>('shearline-vault', 1, {
    upgrade(db) {
      db.createObjectStore('settings')
    },
  })
  return opened
}

/** Who can open what this device seals. */
export async function ownRecipients(): Promise<readonly VaultRecipient[]> {
  return readRecipients((await (await database()).get('settings', 'recipients')) ?? null)
}

async function keep(list: readonly VaultRecipient[]): Promise<readonly VaultRecipient[]> {
  await (await database()).put('settings', recipientsText(list), 'recipients')
  return list
}

/** Adds one. Rejects with VaultError when it is no public key. */
export async function nameRecipient(recipient: VaultRecipient): Promise<readonly VaultRecipient[]> {
  return keep(addRecipient(await ownRecipients(), recipient))
}

/** Removes one; what was sealed to it before stays open to it. */
export async function dropRecipient(recipient: string): Promise<readonly VaultRecipient[]> {
  return keep((await ownRecipients()).filter((known) => known.recipient !== recipient))
}
