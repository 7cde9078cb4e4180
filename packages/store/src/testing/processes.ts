import { type ChildProcessByStdio, spawn } from 'node:child_process'
import { once } from 'node:events'
import type { Readable } from 'node:stream'
import { fileURLToPath } from 'node:url'

const writer = fileURLToPath(new URL('./writer.ts', import.meta.url))

/** A writer process, the facts it has said were kept, and how it ended. */
export interface WriterProcess {
  readonly child: ChildProcessByStdio<null, Readable, Readable>
  /** Fact identifiers with their numbers, as acknowledged so far. */
  readonly acknowledged: Map<string, number>
  readonly ended: Promise<{ code: number | null; signal: NodeJS.Signals | null; errors: string }>
}

/** Starts a writer on a data directory. */
export function startWriter(data: string, job: string, count: number): WriterProcess {
  const child = spawn(
    process.execPath,
    [
      '--conditions=@shearline/source',
      '--disable-warning=ExperimentalWarning',
      writer,
      data,
      job,
      `${count}`,
    ],
    { stdio: ['ignore', 'pipe', 'pipe'] },
  )
  const acknowledged = new Map<string, number>()
  let rest = ''
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    const lines = (rest + text).split('\n')
    rest = lines.pop() ?? ''
    for (const line of lines) {
      const [id = '', seq = ''] = line.split(' ')
      acknowledged.set(id, Number(seq))
    }
  })
  let errors = ''
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    errors += text
  })
  const ended = once(child, 'close').then(([code, signal]) => ({ code, signal, errors }))
  return { child, acknowledged, ended }
}
