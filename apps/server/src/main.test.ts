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

// A process of its own loads everything anew, which takes its time on a busy machine.
describe('the server in a process of its own', { timeout: 180_000 }, () => {
  test('seeds an empty folder, prints its address, and ends when told to, a listener still open', async () => {
    const child = start('--data', data, '--port', '0', '--demo')
    let printed = ''
    child.stdout.setEncoding('utf8').on('data', (words: string) => {
      printed += words
    })
    await expect.poll(() => printed, { timeout: 150_000 }).toContain('open at')
    const url = /http:\S+/.exec(printed)?.[0]
    const { jobs } = (await (await fetch(`${url}api/jobs`)).json()) as { jobs: { demo: boolean }[] }
    expect(jobs.map(({ demo }) => demo)).toEqual([true, true, true])
    const events = await fetch(`${url}api/events`)
    child.kill('SIGTERM')
    expect(await once(child, 'close')).toEqual([0, null])
    await events.body?.cancel().catch(() => {})
  })

  test('says what is wrong and ends with 2', async () => {
    const wrong = [
      [['--data', data, '--port', 'many'], 'many'],
      [['--data', data, '--colour'], '--colour'],
    ] as const
    await Promise.all(
      wrong.map(async ([options, words]) => {
        const child = start(...options)
        const [told, ended] = await Promise.all([text(child.stderr), once(child, 'close')])
        expect(ended).toEqual([2, null])
        expect(told).toContain(words)
        expect(told).not.toContain('    at ')
      }),
    )
  })
})
