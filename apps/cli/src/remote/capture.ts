/** @module Records by a command of the person's own, for a limited time, into a file that is gone afterwards. */

import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { SampleFormat } from '@shearline/keywork'
import { CouldNot } from '../output/answer.ts'
import { wordsOf } from './words-of.ts'

/** What to record and how. `command` holds `{file}`, and may hold `{rate}`, `{centre}` (hertz) and `{seconds}`. */
export interface CaptureRequest {
  readonly command: string
  readonly sampleRateHz: number
  readonly centreHz: number
  readonly format: SampleFormat
  /** The command is ended after this time; a receiver that runs until it is stopped is meant to be. */
  readonly seconds: number
}

/** A receiver that does not stop when asked is ended after this. */
const graceMilliseconds = 2000

/**
 * Runs the command, gives the recording to `use`, and deletes it whatever happens. Throws CouldNot when the command
 * cannot be run, fails by itself, or has written nothing.
 */
export async function captured<T>(request: CaptureRequest, use: (file: string) => Promise<T>): Promise<T> {
  // Readable by this person only, as long as it is there.
  const folder = mkdtempSync(join(tmpdir(), 'shearline-capture-'))
  const remove = (): void => rmSync(folder, { recursive: true, force: true })
  process.once('exit', remove)
  try {
    const file = join(folder, `capture.${request.format}`)
    await run(commandOf(request, file), request.seconds)
    if (bytesIn(file) === 0)
      throw new CouldNot(
        'The receiver wrote nothing.',
        'Check that the command writes to {file} and the receiver is plugged in.',
      )
    return await use(file)
  } finally {
    remove()
    process.off('exit', remove)
  }
}

function commandOf(request: CaptureRequest, file: string): readonly string[] {
  if (!request.command.includes('{file}'))
    throw new CouldNot('The command does not say where to write.', 'Put {file} into it.')
  const values: Readonly<Record<string, string>> = {
    file,
    rate: String(Math.round(request.sampleRateHz)),
    centre: String(Math.round(request.centreHz)),
    seconds: String(request.seconds),
  }
  try {
    return wordsOf(request.command).map((word) =>
      word.replaceAll(/\{(file|rate|centre|seconds)\}/g, (_, name: string) => values[name] ?? ''),
    )
  } catch (error) {
    throw new CouldNot(`The command cannot be read: ${(error as Error).message}.`, 'Close the quote.')
  }
}

async function run([program = '', ...args]: readonly string[], seconds: number): Promise<void> {
  // A group of its own, so that what the command starts is ended with it.
  const child = spawn(program, args, { detached: true, stdio: ['ignore', 'ignore', 'pipe'] })
  let said = ''
  let stopped = false
  child.stderr.on('data', (text) => {
    said = `${said}${String(text)}`.slice(-2000)
  })
  const stop = (): void => {
    stopped = true
    signal(child, 'SIGTERM')
    setTimeout(() => signal(child, 'SIGKILL'), graceMilliseconds).unref()
  }
  const interrupted = (): void => {
    signal(child, 'SIGKILL')
    process.exit(130)
  }
  process.once('SIGINT', interrupted)
  process.once('SIGTERM', interrupted)
  const timer = setTimeout(stop, seconds * 1000)
  try {
    const code = await new Promise<number | null>((resolve, reject) => {
      child.once('error', reject)
      child.once('exit', resolve)
    })
    if (!stopped && code !== 0) {
      const last = said.trim().split('\n').at(-1) ?? ''
      throw new CouldNot(
        `The receiver's command ended with ${code ?? 'a signal'}${last === '' ? '' : `: ${last}`}.`,
        'Run it by hand to see why.',
      )
    }
  } catch (error) {
    if (error instanceof CouldNot) throw error
    throw new CouldNot(`${program} could not be started.`, 'Check its name and that it is installed.')
  } finally {
    clearTimeout(timer)
    process.off('SIGINT', interrupted)
    process.off('SIGTERM', interrupted)
    // What the command left running would go on writing into a file that is to be deleted.
    signal(child, 'SIGKILL')
  }
}

function signal(child: ChildProcess, name: NodeJS.Signals): void {
  if (child.pid === undefined) return
  try {
    process.kill(-child.pid, name)
  } catch {
    // The whole group has ended already.
  }
}

function bytesIn(file: string): number {
  return statSync(file, { throwIfNoEntry: false })?.size ?? 0
}
