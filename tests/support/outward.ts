/** The bench under a name of the network, as a reverse proxy in front of the office's server would offer it. */
import { createServer, request, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'

/** A name that is never assigned (RFC 2606 section 3); Chromium is told where it is by `flags`. */
const name = 'bench.example'

/** Passes everything on to a server on loopback, which answers only to requests that name itself. */
export class Outward {
  url = ''
  #server: Server | null = null

  async start(inner: string): Promise<void> {
    const { host, port, hostname } = new URL(inner)
    const server = createServer((asked, answer) => {
      const headers = { ...asked.headers, host }
      if (headers.origin !== undefined) headers.origin = `http://${host}`
      const passed = request({ hostname, port, path: asked.url, method: asked.method, headers }, (given) => {
        answer.writeHead(given.statusCode ?? 502, given.headers)
        given.pipe(answer)
      })
      passed.on('error', () => answer.destroy())
      answer.on('close', () => passed.destroy())
      asked.pipe(passed)
    })
    this.#server = server
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
    this.url = `http://${name}:${(server.address() as AddressInfo).port}/`
  }

  /** What Chromium must be told: where the name is, and that it may be trusted as one with a certificate would. */
  get flags(): readonly string[] {
    return [
      `--host-resolver-rules=MAP ${name} 127.0.0.1`,
      `--unsafely-treat-insecure-origin-as-secure=${new URL(this.url).origin}`,
    ]
  }

  async close(): Promise<void> {
    this.#server?.closeAllConnections()
    await new Promise((resolve) => this.#server?.close(resolve) ?? resolve(undefined))
  }
}
