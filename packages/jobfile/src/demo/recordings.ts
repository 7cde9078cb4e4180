/** @module The recordings of the invented van: the scan before, the session with the scan after, the scan after a cycle. */
import { dtcBytes } from '@shearline/bus'
import { demoVin } from './scenario.ts'
import { type DemoUnit, DemoWire } from './wire.ts'

const engine: DemoUnit = { request: 0x7e0, response: 0x7e8, role: 'engine' }
const gateway: DemoUnit = { request: 0x720, response: 0x728, role: 'gateway' }
const body: DemoUnit = { request: 0x750, response: 0x758, role: 'body' }
const immobiliser: DemoUnit = { request: 0x730, response: 0x738, role: 'immobiliser' }
const brakes: DemoUnit = { request: 0x7b0, response: 0x7b8, role: 'brakes' }
const instruments: DemoUnit = { request: 0x760, response: 0x768, role: 'instruments' }

/** The control units of the invented van. */
export const demoUnits: readonly DemoUnit[] = [
  engine,
  { request: 0x7e1, response: 0x7e9, role: 'transmission' },
  gateway,
  immobiliser,
  { request: 0x740, response: 0x748, role: 'steering' },
  body,
  instruments,
  { request: 0x770, response: 0x778, role: 'restraints' },
  brakes,
]

/** A fault as a unit holds it: code text and ISO 14229-1 status byte. */
type HeldFault = readonly [code: string, status: number]
type Held = ReadonlyMap<DemoUnit, readonly HeldFault[]>

/** Confirmed long ago, not failing now: a chassis fault that has nothing to do with keys. */
const oldFault: HeldFault = ['C0035-11', 0x28]
/** Failed since the last clear and this cycle, not failing now: the body unit was silent while it restarted. */
const lostBody: HeldFault = ['U0140-87', 0x2a]

const text = (words: string): number[] => Array.from(words, (character) => character.charCodeAt(0))

function scan(wire: DemoWire, held: Held): void {
  wire.ask(engine, [0x09, 0x02], [0x49, 0x02, 0x01, ...text(demoVin)])
  wire.ask(gateway, [0x22, 0xf1, 0x90], [0x62, 0xf1, 0x90, ...text(demoVin)])
  for (const unit of demoUnits) {
    wire.ask(unit, [0x10, 0x03], [0x50, 0x03, 0x00, 0x32, 0x01, 0xf4])
    const faults = (held.get(unit) ?? []).flatMap(([code, status]) => [...(dtcBytes(code) ?? []), status])
    wire.ask(unit, [0x19, 0x02, 0xff], [0x7f, 0x19, 0x78], [0x59, 0x02, 0x7f, ...faults])
  }
}

/** The scan on arrival. `startSeconds` counts from 1970 UTC. */
export function recordingBefore(startSeconds: number): string {
  const wire = new DemoWire(startSeconds)
  scan(wire, new Map([[brakes, [oldFault]]]))
  return wire.text()
}

/**
 * The teaching session as the bus carried it, then the scan after. The seed, key and data bytes are arbitrary:
 * no algorithm stands behind them, and decoding hides them.
 */
export function recordingAfter(startSeconds: number): string {
  const wire = new DemoWire(startSeconds)
  wire.ask(immobiliser, [0x10, 0x03], [0x50, 0x03, 0x00, 0x32, 0x01, 0xf4])
  wire.ask(immobiliser, [0x27, 0x01], [0x67, 0x01, 0x11, 0x22, 0x33, 0x44])
  wire.ask(immobiliser, [0x27, 0x02, 0x55, 0x66, 0x77, 0x88], [0x67, 0x02])
  for (let key = 1; key <= 4; key++) {
    wire.wait(8)
    wire.ask(immobiliser, [0x31, 0x01, 0x02, key], [0x7f, 0x31, 0x78], [0x71, 0x01, 0x02, key, key])
  }
  wire.ask(immobiliser, [0x31, 0x02, 0x02, 0x00], [0x71, 0x02, 0x02, 0x00])
  wire.ask(body, [0x11, 0x01], [0x51, 0x01])
  wire.wait(20)
  scan(
    wire,
    new Map([
      [brakes, [oldFault]],
      [instruments, [lostBody]],
    ]),
  )
  return wire.text()
}

/** Cleared in the unit the work disturbed, ignition cycled, read again: the old fault stays, ours is gone and re-tested. */
export function recordingCycled(startSeconds: number): string {
  const wire = new DemoWire(startSeconds)
  wire.ask(instruments, [0x14, 0xff, 0xff, 0xff], [0x54])
  wire.wait(90)
  scan(wire, new Map([[brakes, [oldFault]]]))
  return wire.text()
}
