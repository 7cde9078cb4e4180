import { createReadStream, writeFileSync } from 'node:fs'
import { Readable } from 'node:stream'
import { type ByteSource, VaultError } from '@shearline/jobfile'
import { CouldNot } from '../output/answer.ts'
import { bytesOf } from '../output/input.ts'

/** The bytes of a file, anew each time they are asked for. */
export function fileSource(file: string): ByteSource {
  return () => Readable.toWeb(createReadStream(file)) as ReadableStream<Uint8Array>
}

/**
 * Keeps this process's memory out of a core file, should it crash while it holds a secret (Linux, core(5),
 * coredump_filter). Elsewhere the system decides.
 */
export function leaveNoCore(): void {
  try {
    writeFileSync('/proc/self/coredump_filter', '0')
  } catch {
    // No such file: not Linux.
  }
}

/** A passphrase from a file or standard input: an argument would stand in the list of processes. */
export async function passphraseFrom(file: string): Promise<string> {
  return new TextDecoder().decode(await bytesOf(file)).replace(/\r?\n$/, '')
}

/** Runs work of the vault; its errors end the command in words. */
export async function vaultWork<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work()
  } catch (error) {
    if (error instanceof VaultError) throw new CouldNot(error.what, error.doNext)
    throw error
  }
}
