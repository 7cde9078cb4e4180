import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { describeDevice } from '@shearline/jobfile'
import { BlobFiles } from './blobs/index.ts'
import type { Store } from './contract/index.ts'
import { enrol } from './kept/devices.ts'
import { KyselyStore } from './kept/kysely-store.ts'
import { openOwnKey } from './own-device/index.ts'
import { openSqlite } from './sqlite/index.ts'
import { explainTrouble } from './sqlite/trouble.ts'

export interface OpenOptions {
  /** Name people will read beside what this data directory writes, given on first use. */
  readonly deviceName?: string
  /** How long a write waits for another process before it fails with `locked`, milliseconds. */
  readonly lockWaitMilliseconds?: number
  /** The present instant, milliseconds since 1970 UTC. */
  readonly clock?: () => number
}

/**
 * Opens the data directory of one person or one van, making it on first use; its layout is in README.md.
 * Several processes may have it open at once. Throws StoreError.
 */
export async function openStore(data: string, options: OpenOptions = {}): Promise<Store> {
  const clock = options.clock ?? Date.now
  try {
    await mkdir(data, { recursive: true, mode: 0o700 })
    const blobs = new BlobFiles(join(data, 'blobs'))
    await blobs.prepare(clock())
    const key = await openOwnKey(join(data, 'device.key'))
    const engine = await openSqlite({
      file: join(data, 'shearline.sqlite'),
      backups: join(data, 'backups'),
      lockWaitMilliseconds: options.lockWaitMilliseconds ?? 10_000,
      clock,
    })
    const described = describeDevice(key.publicKey, options.deviceName ?? 'Workshop computer')
    const enrolled = await enrol(engine.db, described, new Date(clock()).toISOString())
    const device = enrolled.ok ? { ...described, name: enrolled.value.name } : described
    return new KyselyStore({ engine, blobs, device, sign: key.sign, clock })
  } catch (error) {
    throw explainTrouble(error, data) ?? error
  }
}
