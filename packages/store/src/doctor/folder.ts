import { createPrivateKey, createPublicKey } from 'node:crypto'
import { readdir, readFile, stat, statfs } from 'node:fs/promises'
import { join } from 'node:path'
import { deviceIdOf, fromBase64Url } from '@shearline/jobfile'
import type { Kysely } from 'kysely'
import type { Tables } from '../tables/tables.ts'
import type { KnownDevices } from './devices.ts'
import type { Notes } from './finding.ts'

/** Room under which writing is about to fail, and under which a long recording may not fit, bytes. */
const [nearlyNone, little] = [64 * 2 ** 20, 2 ** 30]

/** Checks this directory's own key: there, whole, the one that was made here, closed to others. */
export async function checkKey(data: string, devices: KnownDevices, notes: Notes): Promise<void> {
  const file = join(data, 'device.key')
  const where = 'device.key'
  const pem = await readFile(file, 'utf8').catch(() => null)
  if (pem === null) {
    notes.say(
      'key-missing',
      where,
      'There is no key of this computer here.',
      'When the store is opened a new key is made, and this counts as a new device.',
      'note',
    )
    return
  }
  if (process.platform !== 'win32' && ((await stat(file)).mode & 0o077) !== 0)
    notes.say(
      'key-open-to-others',
      where,
      'Others on this computer may read it.',
      'Run "chmod 600" on it.',
      'warning',
    )
  const damaged = (what: string) =>
    notes.say(
      'key-damaged',
      where,
      what,
      'Put the file back from a backup, or move device.key and device.pub away: a new key is then made and this counts as a new device.',
    )
  let device: string
  let publicPem: string
  try {
    const key = createPrivateKey(pem)
    const publicKey = createPublicKey(key)
    device = deviceIdOf(fromBase64Url(publicKey.export({ format: 'jwk' }).x ?? '') ?? new Uint8Array(0))
    publicPem = String(publicKey.export({ type: 'spki', format: 'pem' }))
    if (String(key.export({ type: 'pkcs8', format: 'pem' })) !== pem) {
      damaged('Its text is not written as it was made: it was changed.')
      return
    }
  } catch {
    damaged('It holds no key any more.')
    return
  }
  const beside = await readFile(join(data, 'device.pub'), 'utf8').catch(() => null)
  if (beside !== null && beside !== publicPem)
    damaged('It is not the key that device.pub belongs to: one of the two was changed.')
  else if (!devices.has(device))
    damaged(
      `It is the key of ${device}, which never opened this record: it was changed or comes from elsewhere.`,
    )
}

/** Files under `blobs` that no row lists: harmless, but nobody will look for them. */
export async function checkStrangeFiles(data: string, db: Kysely<Tables>, notes: Notes): Promise<void> {
  const folder = join(data, 'blobs')
  for (const place of await readdir(folder).catch(() => [])) {
    if (place === 'arriving') continue
    for (const name of await readdir(join(folder, place)).catch(() => [])) {
      const row = await db.selectFrom('blobs').where('sha256', '=', name).select('sha256').executeTakeFirst()
      if (row === undefined)
        notes.say(
          'blob-not-listed',
          `blobs/${place}/${name}`,
          'No row lists this file; an upload may have ended between the file and its row.',
          'The device that has it sends it again by itself. Otherwise it can be moved away.',
          'note',
        )
    }
  }
}

/** Says when the disk is nearly full. */
export async function checkRoom(data: string, notes: Notes): Promise<void> {
  const { bavail, bsize } = await statfs(data)
  const free = bavail * bsize
  if (free >= little) return
  notes.say(
    'little-room',
    data,
    `Only ${Math.floor(free / 2 ** 20)} MB are free.`,
    'Make room, or move the data folder to a larger disk. What cannot be written stays on the devices.',
    free < nearlyNone ? 'error' : 'warning',
  )
}
