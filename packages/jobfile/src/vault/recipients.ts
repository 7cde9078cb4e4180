/** @module To whom secrets are sealed: public keys of the firm, kept as plain data. */
import { z } from 'zod'
import { VaultError } from './errors.ts'

/** One who can open what is sealed: an age X25519 public key (`age1...`) and a name people will read. */
export interface VaultRecipient {
  readonly recipient: string
  readonly name: string
}

/** Name of the setting of a data folder that holds the list. */
export const recipientsSetting = 'vault.recipients'

const listForm = z.array(z.strictObject({ recipient: z.string(), name: z.string().trim().min(1).max(120) }))

/**
 * Reads an age X25519 recipient, as `age-keygen -y` prints it. Throws VaultError `not-a-recipient`; a private key
 * given by mistake is refused without being repeated.
 */
export function readRecipient(text: string): string {
  const recipient = text.trim()
  if (/^AGE-(SECRET-KEY|PLUGIN)-/i.test(recipient))
    throw new VaultError(
      'not-a-recipient',
      'That is a private key. It must not be kept here.',
      'Give the public key that belongs to it: it begins with age1.',
    )
  // The age of Debian 12 opens X25519 only, so the other forms of the library are not taken.
  if (!/^age1[02-9ac-hj-np-z]{58}$/.test(recipient) || !checksumHolds(recipient))
    throw new VaultError(
      'not-a-recipient',
      'That is no age public key, or a character of it is wrong.',
      'Copy it again: age1 and 58 more characters.',
    )
  return recipient
}

const bech32 = 'qpzry9x8gf2tvdw0s3jn54khce6mua7l'

/** The checksum of Bech32 (BIP 173) over `age` and the data, without loading the cipher. */
function checksumHolds(recipient: string): boolean {
  const prefix = [...'age'].map((letter) => letter.charCodeAt(0))
  const values = [
    ...prefix.map((code) => code >> 5),
    0,
    ...prefix.map((code) => code & 31),
    ...[...recipient.slice('age1'.length)].map((letter) => bech32.indexOf(letter)),
  ]
  const generator = [0x3b6a57b2, 0x26508e6d, 0x1ea119fa, 0x3d4233dd, 0x2a1462b3]
  let check = 1
  for (const value of values) {
    const top = check >>> 25
    check = ((check & 0x1ffffff) << 5) ^ value
    generator.forEach((term, bit) => {
      if ((top >>> bit) & 1) check ^= term
    })
  }
  return check === 1
}

/** The list as it is kept: JSON. */
export function recipientsText(list: readonly VaultRecipient[]): string {
  return JSON.stringify(list.map(({ recipient, name }) => ({ recipient, name })))
}

/** Reads a kept list; an absent one is empty. Throws VaultError when it was damaged. */
export function readRecipients(text: string | null): readonly VaultRecipient[] {
  if (text === null) return []
  try {
    const list = listForm.parse(JSON.parse(text))
    return list.map(({ recipient, name }) => ({ recipient: readRecipient(recipient), name }))
  } catch (error) {
    if (error instanceof VaultError) throw error
    throw new VaultError('not-a-recipient', 'The list of recipients is damaged.', 'Enter them anew.')
  }
}

/** The list with one more; the same key again takes the new name. Throws VaultError. */
export function addRecipient(
  list: readonly VaultRecipient[],
  { recipient, name }: VaultRecipient,
): readonly VaultRecipient[] {
  const read = readRecipient(recipient)
  return [...list.filter((known) => known.recipient !== read), { recipient: read, name: name.trim() }]
}
