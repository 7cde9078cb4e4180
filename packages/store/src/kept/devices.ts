import { type Device, deviceIdOf, fromBase64Url } from '@shearline/jobfile'
import type { Kysely } from 'kysely'
import type { Engine } from '../contract/engine.ts'
import type { EnrolledDevice, Outcome } from '../contract/index.ts'
import { digestOf } from '../tables/digest.ts'
import type { Tables } from '../tables/tables.ts'

/** Enrols a device; the identifier must be derived from the key, and a key stays with its identifier. */
export async function enrol(engine: Engine, device: Device, now: string): Promise<Outcome<EnrolledDevice>> {
  const key = fromBase64Url(device.publicKey)
  const fits = key?.length === 32 && deviceIdOf(key) === device.device
  if (fits) {
    const kept = (await enrolled(engine.db, device.device)) ?? (await insert(engine, device, now))
    if (kept.publicKey === device.publicKey) return { ok: true, value: kept }
  }
  return {
    ok: false,
    refusal: {
      code: 'device-key-mismatch',
      where: `device ${device.device}`,
      what: 'The public key does not belong to this device identifier.',
      doNext: 'Let the device describe itself again: the identifier is derived from its key.',
    },
  }
}

async function insert(engine: Engine, device: Device, now: string): Promise<EnrolledDevice> {
  const row = { device: device.device, name: device.name, public_key: device.publicKey, enrolled_at: now }
  return await engine.transact(async (transaction) => {
    await transaction
      .insertInto('devices')
      .values({ ...row, digest: digestOf.device(row), head_seq: 0, head_hash: null })
      .onConflict((conflict) => conflict.column('device').doNothing())
      .execute()
    return (await enrolled(transaction, device.device)) ?? { ...device, enrolledAt: now }
  })
}

async function enrolled(db: Kysely<Tables>, device: string): Promise<EnrolledDevice | undefined> {
  return await db
    .selectFrom('devices')
    .where('device', '=', device)
    .select(['device', 'name', 'public_key as publicKey', 'enrolled_at as enrolledAt'])
    .executeTakeFirst()
}
