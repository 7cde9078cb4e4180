import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import { registerJob } from '@shearline/jobfile'
import { openStore } from '@shearline/store'
import { describe, expect, test } from 'vitest'
import { askJson, Tablet, withServer } from '../testing/running.ts'

const place = withServer()

/** Reads server-sent events (HTML standard, 9.2) until stopped. */
async function listen(port: number) {
  const stop = new AbortController()
  const response = await fetch(`http://127.0.0.1:${port}/api/events`, { signal: stop.signal })
  const jobs: string[] = []
  const reading = (async () => {
    let rest = ''
    const decoder = new TextDecoder()
    for await (const chunk of response.body ?? []) {
      const events = (rest + decoder.decode(chunk, { stream: true })).split('\n\n')
      rest = events.pop() ?? ''
      for (const event of events)
        if (event.startsWith('data: ')) jobs.push(JSON.parse(event.slice('data: '.length)).job)
    }
  })().catch(() => {})
  return {
    response,
    jobs,
    stop: async () => {
      stop.abort()
      await reading
    },
    reading,
  }
}

describe('live updates', () => {
  test('tell every listener which job got facts through the API', async () => {
    const { port } = place().running
    const listeners = await Promise.all([listen(port), listen(port)])
    expect(listeners[0].response.headers.get('content-type')).toBe('text/event-stream')
    const tablet = await Tablet.make()
    await askJson(port, '/api/devices', 'POST', tablet.device)
    await askJson(port, '/api/facts', 'POST', {
      facts: [await tablet.open('job-a'), await tablet.note('job-b', 'x')],
    })
    for (const { jobs } of listeners) {
      // Enrolment writes into the device register, which may be told as well.
      const told = () => [...new Set(jobs)].filter((job) => job !== registerJob).sort()
      await expect.poll(told).toEqual(['job-a', 'job-b'])
    }
    await Promise.all(listeners.map(({ stop }) => stop()))
  })

  test('tell of facts another process wrote on the same data directory', async () => {
    const { jobs, stop } = await listen(place().running.port)
    const writer = spawn(
      process.execPath,
      [
        '--conditions=@shearline/source',
        fileURLToPath(new URL('../testing/write-note.ts', import.meta.url)),
        place().data,
        'job-elsewhere',
      ],
      { stdio: 'inherit' },
    )
    expect(await once(writer, 'close')).toEqual([0, null])
    await expect.poll(() => jobs).toContain('job-elsewhere')
    await stop()
  })

  test('end with the server, which does not wait for them', async () => {
    const { reading } = await listen(place().running.port)
    const other = await openStore(place().data)
    await other.close()
    // Were they waited for, this would not come to an end: nothing else ends them.
    await place().running.close()
    await reading
  })
})
