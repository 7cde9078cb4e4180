/** @module The key of this data directory: made once, kept in one file, used without ever being exported again. */
import {
  createPrivateKey,
  createPublicKey,
  generateKeyPairSync,
  type KeyObject,
  randomUUID,
  webcrypto,
} from 'node:crypto'
import { chmod, link, open, readFile, rename, rm, stat } from 'node:fs/promises'
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
    await makeFileOnce(
      file,
      generateKeyPairSync('ed25519').privateKey.export({ type: 'pkcs8', format: 'pem' }),
    )
    pem = await readKeyFile(file)
  }
  try {
    const key = createPrivateKey(pem ?? '')
    if (key.asymmetricKeyType !== 'ed25519') throw new TypeError(`a key of type ${key.asymmetricKeyType}`)
    const publicKey = fromBase64Url(createPublicKey(key).export({ format: 'jwk' }).x ?? '')
    if (publicKey?.length !== 32) throw new TypeError('no public half')
    await standsBeside(file, key)
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
      'Put the file back from a backup, or move device.key and device.pub away: a new key is then made and this counts as a new device.',
      error,
    )
  }
}

/** Where the key that will take the place of `file` stands until it does. */
function nextOf(file: string): string {
  return `${file}.next`
}

/** The key made to take the place of the one in `file` (see `takeNextKey`), or null when none was made. */
export async function openNextKey(file: string): Promise<OwnKey | null> {
  const there = await stat(nextOf(file)).catch(() => null)
  return there === null ? null : await openOwnKey(nextOf(file))
}

/** Makes the key that will take the place of the one in `file`; the same again until it has. */
export function makeNextKey(file: string): Promise<OwnKey> {
  return openOwnKey(nextOf(file))
}

/** Puts the next key in its place; the old one is gone then. Broken off anywhere, `file` holds one key or the other. */
export async function takeNextKey(file: string): Promise<OwnKey> {
  // Without a public half beside it a key is taken as it is, and its half is written anew.
  await rm(publicHalfOf(file), { force: true })
  await rename(nextOf(file), file)
  await rm(publicHalfOf(nextOf(file)), { force: true })
  await syncFolder(dirname(file))
  return await openOwnKey(file)
}

function publicHalfOf(file: string): string {
  return `${file.replace(/\.key$/, '')}.pub`
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

/**
 * The public half stands beside the key (`device.pub`, SPKI in PEM): a key in which a bit has flipped is another
 * key, and would make this another device unseen. Throws when the two do not belong together.
 */
async function standsBeside(file: string, key: KeyObject): Promise<void> {
  const beside = publicHalfOf(file)
  const pem = String(createPublicKey(key).export({ type: 'spki', format: 'pem' }))
  const found = await readFile(beside, 'utf8').catch(() => null)
  if (found === null) await makeFileOnce(beside, pem)
  else if (found !== pem) throw new TypeError(`a key that ${beside} does not belong to`)
}

/** Writes a whole file beside its place, then links it there: whoever links first has made it. */
async function makeFileOnce(file: string, text: string | Buffer): Promise<void> {
  const beside = join(dirname(file), `.${randomUUID()}.making`)
  const handle = await open(beside, 'wx', 0o600)
  try {
    await handle.writeFile(text)
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
