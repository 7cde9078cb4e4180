import type { MeterLine } from '@shearline/keywork'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { openMeter } from './serial-meter.ts'

/** A port that behaves as Web Serial describes one, with a meter behind it that answers in SCPI; no real one is here. */
function meterPort(answer: (asked: string) => string | null) {
  let send: ReadableStreamDefaultController<Uint8Array> | undefined
  const seen: string[] = []
  const bytes = (text: string) => new TextEncoder().encode(text)
  const port = {
    readable: new ReadableStream<Uint8Array>({
      start(controller) {
        send = controller
      },
    }),
    writable: new WritableStream<Uint8Array>({
      write(chunk) {
        const asked = new TextDecoder().decode(chunk)
        seen.push(asked)
        const told = answer(asked)
        // In two pieces, as serial drivers cut them.
        if (told !== null) for (const piece of [told.slice(0, 4), told.slice(4)]) send?.enqueue(bytes(piece))
      },
    }),
    open: async ({ baudRate }: { readonly baudRate: number }) => void seen.push(`open ${baudRate}`),
    close: async () => void seen.push('close'),
  }
  return {
    seen,
    serial: { requestPort: async () => port },
    push: (text: string) => send?.enqueue(bytes(text)),
    unplug: () => send?.error(new Error('gone')),
  }
}

const until = (done: () => boolean) => expect.poll(done, { interval: 5 }).toBe(true)

describe('a serial meter', () => {
  // However slowly this goes, the meter is asked once: the second after which it is asked again does not pass.
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] })
  })
  afterEach(() => {
    vi.useRealTimers()
  })

  it('is asked in SCPI at the speed set, and closed when we are done', async () => {
    const { serial, seen } = meterPort((asked) => (asked === 'MEAS:VOLT:DC?\n' ? '+1.2543E+01\r\n' : null))
    const heard: MeterLine[] = []
    const meter = await openMeter(serial, 19200, 'asked', (line) => heard.push(line))
    await until(() => heard.length > 0)
    expect(heard[0]).toEqual({ quantity: 'volts', value: 12.543 })
    await meter.close()
    expect(await meter.ended).toBe('closed')
    expect(seen).toEqual(['open 19200', 'MEAS:VOLT:DC?\n', 'close'])
  })

  it('that only speaks is never written to, and says when it is lost', async () => {
    const { serial, seen, push, unplug } = meterPort(() => null)
    const heard: MeterLine[] = []
    const meter = await openMeter(serial, 9600, 'listened', (line) => heard.push(line))
    push('12.5')
    push('1 V\r\nOL\r\n')
    await until(() => heard.length === 2)
    expect(heard).toEqual([{ quantity: 'volts', value: 12.51 }, { refused: 'overload' }])
    unplug()
    expect(await meter.ended).toBe('lost')
    expect(seen).toEqual(['open 9600', 'close'])
  })
})
