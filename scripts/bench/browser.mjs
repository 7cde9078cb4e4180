/**
 * @module Decodes a recording in a worker of a real browser, read from a File by a BYOB stream, with the package as
 * the bench uses it.
 */

import { createServer } from 'node:http'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { build } from 'rolldown'

const here = dirname(fileURLToPath(import.meta.url))
const page = '<!doctype html><title>Decode</title><input type="file"><script src="/page.js"></script>'
const pageScript = `
const worker = new Worker('/worker.js')
globalThis.decode = () => new Promise((resolve, reject) => {
  worker.onmessage = ({ data }) => resolve(data)
  worker.onerror = ({ message }) => reject(new Error(message))
  worker.postMessage(document.querySelector('input').files[0])
})`

/** The worker with everything it uses, as one script. */
async function workerScript() {
  const { output } = await build({
    input: join(here, 'browser-worker.mjs'),
    platform: 'browser',
    output: { format: 'iife', minify: true },
    write: false,
    logLevel: 'warn',
  })
  return output[0].code
}

/** Opens the browser; gives a function that decodes a file and one that closes. */
export async function openBrowser(executablePath) {
  const files = {
    '/': ['text/html', page],
    '/page.js': ['text/javascript', pageScript],
    '/worker.js': ['text/javascript', await workerScript()],
  }
  const server = createServer((request, response) => {
    const [type, text] = files[request.url] ?? ['text/plain', '']
    response.writeHead(text === '' ? 404 : 200, { 'content-type': type }).end(text)
  })
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve))
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] })
  const tab = await browser.newPage()
  await tab.goto(`http://127.0.0.1:${server.address().port}/`)
  return {
    version: browser.version(),
    /** Seconds in the worker and the summary. */
    async decode(file) {
      await tab.setInputFiles('input', file)
      return await tab.evaluate(() => globalThis.decode())
    },
    async close() {
      await browser.close()
      server.close()
    },
  }
}
