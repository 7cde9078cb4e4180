/**
 * @module `shearline decode` by itself, bundled into one file when Shearline is built (`scripts/prepare.mjs`): a long
 * recording is decoded in a few tenths of a second, and loading what other commands need would take as long.
 */

import { CouldNot, exit, say } from '../output/answer.ts'
import { decodeRecording } from './recording.ts'

const switches: Readonly<Record<string, 'json' | 'summary' | 'raw'>> = {
  '--json': 'json',
  '--summary': 'summary',
  '--raw': 'raw',
}

/**
 * Decodes when the words after `shearline decode` are one file, switches without a value and `--fields`. Everything
 * else (help, mistakes, `--ids`) is left to the whole command: the answer is then false.
 */
export async function decodeAlone(words: readonly string[]): Promise<boolean> {
  const flags: { json?: boolean; summary?: boolean; raw?: boolean; fields?: string } = {}
  const files: string[] = []
  for (const [at, word] of words.entries()) {
    const flag = Object.hasOwn(switches, word) ? switches[word] : undefined
    if (flag !== undefined) flags[flag] = true
    else if (words[at - 1] === '--fields') flags.fields = word
    else if (word === '--fields' && words[at + 1]?.startsWith('-') === false) continue
    else if (word.startsWith('-') && word !== '-') return false
    else files.push(word)
  }
  const [file] = files
  if (file === undefined || file === '' || files.length > 1) return false
  try {
    await decodeRecording(file, flags)
  } catch (error) {
    if (!(error instanceof CouldNot)) throw error
    say(`shearline: ${error.message}`)
    process.exitCode = exit.couldNot
  }
  return true
}
