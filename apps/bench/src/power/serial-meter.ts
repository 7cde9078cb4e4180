/** @module A general meter on a serial port, through Web Serial (draft of the WICG), which not every browser has. */
import { type MeterLine, MeterLines, parseMeterLine, SCPI_ASK_VOLTS } from '@shearline/keywork'

/** What is used of Web Serial; the standard library of types does not have it. */
interface SerialPort {
  readonly readable: ReadableStream<Uint8Array> | null
  readonly writable: WritableStream<Uint8Array> | null
  open(options: { readonly baudRate: number }): Promise<void>
  close(): Promise<void>
}
interface Serial {
  requestPort(): Promise<SerialPort>
}

/** How the meter is spoken to: asked once a second in SCPI, or only listened to. */
export type MeterSpeech = 'asked' | 'listened'
export const baudRates = [1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200] as const

/** Milliseconds between two questions. */
const EVERY_MS = 1000

/** A meter that is being read. */
export interface OpenMeter {
  /** Settles when the meter stopped: `closed` by us, `lost` when it was unplugged. */
  readonly ended: Promise<'closed' | 'lost'>
  close(): Promise<void>
}

/** The browser's serial ports, or null where it has none (or the page is not served securely). */
export function serialHere(): Serial | null {
  return (navigator as { readonly serial?: Serial }).serial ?? null
}

/**
 * Lets the person choose a port and reads it. `hear` gets every line in order. Must be called from a tap. Rejects with
 * the browser's own `NotFoundError` when no port was chosen, and with others when the port cannot be opened.
 */
export async function openMeter(
  serial: Serial,
  baudRate: number,
  speech: MeterSpeech,
  hear: (line: MeterLine) => void,
): Promise<OpenMeter> {
  const port = await serial.requestPort()
  await port.open({ baudRate })
  const reader = port.readable?.getReader()
  const writer = speech === 'asked' ? port.writable?.getWriter() : undefined
  if (reader === undefined) throw new Error('The port cannot be read.')
  const question = new TextEncoder().encode(SCPI_ASK_VOLTS)
  const ask = () => void writer?.write(question).catch(() => undefined)
  ask()
  const asking = setInterval(ask, EVERY_MS)
  let closing = false
  const read = async (): Promise<'closed' | 'lost'> => {
    const lines = new MeterLines()
    // Meters send ASCII; what is more must not stop the reading.
    const decoder = new TextDecoder('latin1')
    try {
      for (;;) {
        const { value, done } = await reader.read()
        if (done) break
        for (const line of lines.push(decoder.decode(value, { stream: true }))) hear(parseMeterLine(line))
      }
    } catch {
      // Unplugged, or a frame error of the wrong speed: both end the stream.
    }
    clearInterval(asking)
    reader.releaseLock()
    writer?.releaseLock()
    await port.close().catch(() => undefined)
    return closing ? 'closed' : 'lost'
  }
  const ended = read()
  return {
    ended,
    close: async () => {
      closing = true
      await reader.cancel().catch(() => undefined)
      await ended
    },
  }
}
