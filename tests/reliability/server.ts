import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { root } from '../support/shearline.ts'

const main = join(root, 'apps', 'server', 'dist', 'main.js')

/** The real server as a process of its own, as built. */
export class ServerProcess {
  readonly url: string
  readonly child: ChildProcess

  private constructor(url: string, child: ChildProcess) {
    this.url = url
    this.child = child
  }

  /** Starts it and waits until it answers; `before` is put before the command, to start it inside something. */
  static async start(data: string, database = '', before: readonly string[] = []): Promise<ServerProcess> {
    const [first = '', ...rest] = [...before, process.execPath, main, '--data', data, '--port', '0']
    const child = spawn(first, rest, {
      env: {
        ...process.env,
        SHEARLINE_DATABASE: database,
        NODE_COMPILE_CACHE: join(root, '.cache', 'compiled'),
      },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let said = ''
    child.stderr.on('data', (chunk) => {
      said += String(chunk)
    })
    const url = await new Promise<string>((resolve, reject) => {
      child.stdout.on('data', (chunk) => {
        said += String(chunk)
        const address = /open at (http:\S+)\s/.exec(said)?.[1]
        if (address !== undefined) resolve(address)
      })
      child.on('exit', (code) => reject(new Error(`the server ended with ${code}: ${said}`)))
    })
    return new ServerProcess(url, child)
  }

  /** Sends JSON; answers with the status and what came back. Throws when the line breaks. */
  async post(path: string, body: unknown): Promise<{ status: number; body: Posted }> {
    const answer = await fetch(`${this.url}${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    })
    return { status: answer.status, body: (await answer.json()) as Posted }
  }

  /** Ends it without a word (SIGKILL) or asks it to end, and waits until it is gone. */
  async end(signal: 'SIGKILL' | 'SIGTERM'): Promise<void> {
    if (this.child.exitCode !== null || this.child.signalCode !== null) return
    const gone = once(this.child, 'exit')
    this.child.kill(signal)
    await gone
  }
}

/** What the server answers to facts. */
export interface Posted {
  readonly accepted?: number
  readonly already?: number
  readonly error?: { readonly code: string; readonly what: string; readonly doNext: string }
}
