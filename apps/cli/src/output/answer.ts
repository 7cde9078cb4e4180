import { writeSync } from 'node:fs'
import { describeWhere, type Finding } from '@shearline/bus'

/** Exit codes of every command (cli.md): answered, answered "no", could not. */
export const exit = { answered: 0, no: 1, couldNot: 2 } as const

/** How long to wait for a reader that is slower than we are. */
const waitMilliseconds = 2

/** Something the command cannot do, said in words a person can act on. Ends with exit code 2. */
export class CouldNot extends Error {
  /** What it is, and what to do; the latter is empty where `what` says both. */
  constructor(what: string, doNext: string) {
    super(doNext === '' ? what : `${what} ${doNext}`)
    this.name = 'CouldNot'
  }
}

/** So many of something, in words: `1 fact`, `2 facts`; what forms its plural otherwise says it. */
export function countOf(count: number, one: string, several = `${one}s`): string {
  return `${count} ${count === 1 ? one : several}`
}

const colours = { bold: 1, dim: 2, red: 31, green: 32, yellow: 33 } as const

/** Colours a text when standard output is a terminal that wants colour (NO_COLOR is honoured). */
export function paint(text: string, colour: keyof typeof colours): string {
  if (!process.stdout.isTTY || process.env.NO_COLOR !== undefined) return text
  return `\u001b[${colours[colour]}m${text}\u001b[0m`
}

/** A long answer is written in parts of about this many bytes, all of them put together in one place. */
const partBytes = 1 << 16
/** Bytes of UTF-8 that one character of a string may need. */
const mostCharacterBytes = 3
let part: Buffer | undefined
let filled = 0

/**
 * Adds to a part of the answer, which is written when it is full and by `printAtOnce`. Only for commands that write all
 * of their answer by these two.
 */
export function printSoon(text: string): void {
  const most = text.length * mostCharacterBytes
  if (filled + most > partBytes) writePart()
  if (most > partBytes) {
    writeAll(Buffer.from(text))
    return
  }
  part ??= Buffer.allocUnsafeSlow(partBytes)
  filled += part.write(text, filled)
}

/**
 * Writes what there is of the answer and waits until it is taken: a long answer never piles up in memory, and nothing
 * has to be loaded for it.
 */
export function printAtOnce(text = ''): void {
  printSoon(text)
  writePart()
}

function writePart(): void {
  if (part !== undefined) writeAll(part.subarray(0, filled))
  filled = 0
}

function writeAll(bytes: Uint8Array): void {
  for (let at = 0; at < bytes.length; ) {
    try {
      at += writeSync(1, bytes, at)
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException
      // A reader that closes early (head, less) is not an error of ours.
      if (code === 'EPIPE') process.exit(process.exitCode ?? exit.answered)
      if (code !== 'EAGAIN') throw error
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, waitMilliseconds)
    }
  }
}

/** Prints one line of the answer. */
export function print(line = ''): void {
  process.stdout.write(`${line}\n`)
}

/** Prints the answer as one JSON object on one line. */
export function printJson(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value)}\n`)
}

/** Words with the full stop that they may lack, so that others can follow. */
export function sentence(words: string): string {
  return /[.!?]$/.test(words) ? words : `${words}.`
}

/** The same over several lines, for what a person goes on to edit. */
export function printExample(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`)
}

/** Says something on standard error: progress and findings, never the answer. */
export function say(line: string): void {
  process.stderr.write(`${line}\n`)
}

/** Says a finding on standard error: severity, file, place, what, what to do. */
export function sayFinding(file: string, finding: Finding): void {
  const where = describeWhere(finding.where)
  const what = sentence(finding.what)
  const doNext = finding.severity === 'note' ? '' : ` ${finding.doNext}`
  say(`${finding.severity}: ${file}${where === '' ? '' : `, ${where}`}: ${what}${doNext}`)
}
