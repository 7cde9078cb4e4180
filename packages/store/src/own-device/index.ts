/** @module The key of this data directory: made once, kept in one file, used without ever being exported again. */
import { createPrivateKey, createPublicKey, generateKeyPairSync, randomUUID, webcrypto } from 'node:crypto'
import { chmod, link, open, readFile, rm, stat } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { fromBase64Url, type Sign } from '@shearline/jobfile'
import { syncFolder } from '../blobs/durable.ts'
import { StoreError } from '../contract/index.ts'

/** The public half and a signing function; the private half stays inside a non-extractable key. */
export interface OwnKey {
  readonly publicKey: Uint8Array
  readonly sign: Sign
}

/**
 * Opens the Ed25519 key in `file` (PKCS8 in PEM, readable by its owner only), making it on first use. Two
 * processes that come at once get the same key. Throws StoreError `key-damaged` when the file holds none.
 */
export async function openOwnKey(file: string): Promise<OwnKey> {
  let pem = await readKeyFile(file)
  if (pem === null) {
    await makeKeyFile(file)
    pem = await readKeyFile(file)
  }
  try {
    const key = createPrivateKey(pem ?? '')
    if (key.asymmetricKeyType !== 'ed25519') throw new TypeError(`a key of type ${key.asymmetricKeyType}`)
    const publicKey = fromBase64Url(createPublicKey(key).export({ format: 'jwk' }).x ?? '')
    if (publicKey?.length !== 32) throw new TypeError('no public half')
    const der = key.export({ type: 'pkcs8', format: 'der' })
    const signing = await webcrypto.subtle.importKey('pkcs8', der, { name: 'Ed25519' }, false, ['sign'])
    der.fill(0)
    return {
      publicKey,
      sign: async (data) => new Uint8Array(await webcrypto.subtle.sign('Ed25519', signing, data)),
    }
  } catch (error) {
    throw new StoreError(
      'key-damaged',
      `The file ${file} does not hold this device's key.`,
      'Put the file back from a backup, or move it away: a new key is then made and this counts as a new device.',
      error,
    )
  }
}

async function readKeyFile(file: string): Promise<string | null> {
  try {
    const pem = await readFile(file, 'utf8')
    // Copying a folder often loosens the rights of its files; nobody else may read this one.
    if (process.platform !== 'win32' && ((await stat(file)).mode & 0o077) !== 0) await chmod(file, 0o600)
    return pem
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw error
  }
}

/** Writes a whole key beside its place, then links it there: whoever links first has made the key. */
async function makeKeyFile(file: string): Promise<void> {
  const pem = generateKeyPairSync('ed25519').privateKey.export({ type: 'pkcs8', format: 'pem' })
  const beside = join(dirname(file), `.${randomUUID()}.key`)
  const handle = await open(beside, 'wx', 0o600)
  try {
    await handle.writeFile(pem)
    await handle.sync()
  } finally {
    await handle.close()
  }
  try {
    await link(beside, file)
    await syncFolder(dirname(file))
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error
  } finally {
    await rm(beside, { force: true })
  }
}
