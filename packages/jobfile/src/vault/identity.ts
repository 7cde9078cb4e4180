/** @module Private keys: made here, shown once or wrapped by a passphrase, never kept in the clear by us. */
import { age } from './age.ts'
import { VaultError } from './errors.ts'
import { readPassphrase } from './passphrase.ts'

/** A private key (`AGE-SECRET-KEY-1...`) and the public key that belongs to it. */
export interface VaultIdentity {
  readonly identity: string
  readonly recipient: string
}

/** Makes a private key with the randomness of the age library (the runtime's WebCrypto). */
export async function newIdentity(): Promise<VaultIdentity> {
  const { generateX25519Identity, identityToRecipient } = await age()
  const identity = await generateX25519Identity()
  return { identity, recipient: await identityToRecipient(identity) }
}

/** The file of a private key as age-keygen writes it. */
export function identityText({ identity, recipient }: VaultIdentity, madeAt: string): string {
  return `# created: ${madeAt}\n# public key: ${recipient}\n${identity}\n`
}

/** Seals the file of a private key under a passphrase, in age's text form: `age -d -i` of Debian takes it as it is. */
export async function wrapIdentity(text: string, passphrase: string): Promise<string> {
  const { armor, Encrypter } = await age()
  const encrypter = new Encrypter()
  encrypter.setPassphrase(readPassphrase(passphrase))
  return armor.encode(await encrypter.encrypt(text))
}

const armorStart = '-----BEGIN AGE ENCRYPTED FILE-----'
const binaryStart = 'age-encryption.org/v1\n'

/**
 * The private keys of an identity file: plain as age-keygen writes it, or wrapped by a passphrase. Throws VaultError
 * `passphrase-needed`, `no-key-fits` for a wrong passphrase, `not-an-identity`.
 */
export async function readIdentities(file: Uint8Array, passphrase?: string): Promise<readonly string[]> {
  const text = await plainText(file, passphrase)
  const found = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('#'))
  if (found.length === 0 || found.some((line) => !/^AGE-SECRET-KEY-1[0-9A-Z]{58}$/.test(line)))
    throw new VaultError(
      'not-an-identity',
      'The file holds no age private key.',
      'Give the file that age-keygen or "shearline vault identity" wrote.',
    )
  return found
}

async function plainText(file: Uint8Array, passphrase: string | undefined): Promise<string> {
  const text = new TextDecoder().decode(file)
  const armored = text.trimStart().startsWith(armorStart)
  if (!armored && !text.startsWith(binaryStart)) return text
  if (passphrase === undefined)
    throw new VaultError(
      'passphrase-needed',
      'The private key is wrapped by a passphrase.',
      'Give its passphrase.',
    )
  const { armor, Decrypter } = await age()
  const decrypter = new Decrypter()
  decrypter.addPassphrase(passphrase)
  try {
    return await decrypter.decrypt(armored ? armor.decode(text) : file, 'text')
  } catch {
    throw new VaultError(
      'no-key-fits',
      'The passphrase does not open the private key, or its file is damaged.',
      'Try the passphrase again, or take the printed key.',
    )
  }
}
