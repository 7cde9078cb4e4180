import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'

let data: string

beforeEach(async () => {
  data = await mkdtemp(join(tmpdir(), 'shearline-main-'))
})
afterEach(async () => {
  await rm(data, { recursive: true, force: true })
})

function start(...options: string[]) {
  const main = fileURLToPath(new URL('./main.ts', import.meta.url))
  return spawn(process.execPath, ['--conditions=@shearline/source', main, ...options], {
    stdio: ['ignore', 'pipe', 'pipe'],
  })
}

describe('the server in a process of its own', () => {
  test('prints its address, answers, and ends when it is told to, a listener still open', async () => {
    const child = start('--data', data, '--port', '0')
    const [line] = await once(child.stdout, 'data')
    const { url, device } = JSON.parse(String(line))
    const health = await (await fetch(`${url}api/health`)).json()
    expect(health).toMatchObject({ ok: true, device: { device } })
    const events = await fetch(`${url}api/events`)
    child.kill('SIGTERM')
    expect(await once(child, 'close')).toEqual([0, null])
    await events.body?.cancel().catch(() => {})
  })

  test('says what is wrong and ends with 2', async () => {
    for (const [options, words] of [
      [['--port', '0'], '--data'],
      [['--data', data, '--port', 'many'], '--port'],
      [['--data', data, '--host', '0.0.0.0'], '127.0.0.1'],
      [['--data', data, '--colour'], '--colour'],
    ] as const) {
      const child = start(...options)
      const [told, ended] = await Promise.all([text(child.stderr), once(child, 'close')])
      expect(ended).toEqual([2, null])
      expect(told).toContain(words)
      expect(told).not.toContain('    at ')
    }
  })
})
