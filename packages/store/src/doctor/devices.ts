import { type ChainHead, type Device, deviceIdOf, fromBase64Url } from '@shearline/jobfile'
import type { Kysely } from 'kysely'
import { digestOf } from '../tables/digest.ts'
import type { Tables } from '../tables/tables.ts'
import { type Notes, restore } from './finding.ts'

/** Devices by identifier, with where their rows say that their chains end. */
export type KnownDevices = ReadonlyMap<string, { readonly device: Device; readonly head: ChainHead }>

/** Checks every device: its identifier is derived from its key, and its row is as it was written. */
export async function checkDevices(db: Kysely<Tables>, notes: Notes): Promise<KnownDevices> {
  const known = new Map<string, { device: Device; head: ChainHead }>()
  for (const row of await db.selectFrom('devices').selectAll().execute()) {
    notes.looked.devices++
    const key = fromBase64Url(row.public_key)
    const where = `device ${row.device}`
    if (key?.length !== 32 || deviceIdOf(key) !== row.device)
      notes.say('device-changed', where, 'Its public key does not belong to its identifier.', restore)
    else if (digestOf.device(row) !== row.digest)
      notes.say(
        'device-changed',
        where,
        'Its name, its key or the time of its enrolment was changed.',
        restore,
      )
    known.set(row.device, {
      device: { device: row.device, name: row.name, publicKey: row.public_key },
      head: { seq: row.head_seq, hash: row.head_hash },
    })
  }
  return known
}

/** Checks that every setting is as it was written. */
export async function checkSettings(db: Kysely<Tables>, notes: Notes): Promise<void> {
  for (const row of await db.selectFrom('settings').selectAll().execute())
    if (digestOf.setting(row) !== row.digest)
      notes.say('setting-changed', `setting ${row.name}`, 'Its name or its value was changed.', restore)
}
