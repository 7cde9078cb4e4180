import { VaultError } from './errors.ts'

/** Shortest passphrase taken. Common practice, no source: four or five words from a long list are longer. */
export const passphraseLeast = 14

/** Takes a passphrase as it was typed, but for the line end. Throws VaultError `passphrase-too-short`. */
export function readPassphrase(text: string): string {
  const passphrase = text.replace(/\r?\n$/, '')
  if (passphrase.length < passphraseLeast)
    throw new VaultError(
      'passphrase-too-short',
      `The passphrase has fewer than ${passphraseLeast} characters.`,
      'Take four or five words that have nothing to do with each other.',
    )
  return passphrase
}
