/**
 * @module Where everything in the cut-open cylinder stands.
 *
 * Units are the drawing's own: eight columns of 100, seven wells centred on the column edges 100 to 700.
 * The shear line lies at `shear`. A tumbler is a spring, a steel driver and a brass key pin; the joint
 * between driver and pin is what must come to lie on the line.
 */
import type { Tumbler } from '@shearline/jobfile'

export type Standing = Pick<Tumbler, 'state' | 'done' | 'of'>

export const width = 800
export const height = 372
export const shear = 176
export const wellTop = 34
export const halfWell = 30
export const halfPin = 27
export const driverLength = 64
export const pinLength = 78
export const tipLength = 18
/** How far a joint stands above the line when its evidence contradicts itself. */
export const highRise = 30
/** How far a joint hangs at most, and at least, below the line. */
export const lowest = 58
export const leastLow = 16

/** Centre of the well of the tumbler at `index`, 0 to 6. */
export function wellCentre(index: number): number {
  return (index + 1) * 100
}

/** Distance of the joint from the line: positive hangs below (something missing), negative stands above. */
export function jointOffset(tumbler: Standing): number {
  if (tumbler.state === 'in-line') return 0
  if (tumbler.state === 'high') return -highRise
  const share = tumbler.of === 0 ? 0 : Math.min(1, tumbler.done / tumbler.of)
  return Math.round(leastLow + (lowest - leastLow) * (1 - share))
}

/** The key pin: a flat head at the joint, a blunt point that rests in the key. */
export function pinPath(): string {
  return `M${-halfPin} 0H${halfPin}V${pinLength}L9 ${pinLength + tipLength}H-9L${-halfPin} ${pinLength}Z`
}

/** A coil spring of `turns` turns from 0 down to `length`, drawn as the eye sees it from the side. */
export function springPath(length: number, turns = 5): string {
  const half = 17
  let path = `M0 0`
  for (let turn = 0; turn < turns; turn++) {
    const at = (length * turn) / turns
    const step = length / turns
    path += `C${half * 1.5} ${at + step * 0.1} ${half * 1.5} ${at + step * 0.45} 0 ${at + step * 0.5}`
    path += `S${-half * 1.5} ${at + step * 0.9} 0 ${at + step}`
  }
  return path
}

/** The blade that lifts the pins: its upper edge runs through every pin's point; deep cut where a pin hangs. */
export function bladePath(offsets: readonly number[]): string {
  const rest = shear + pinLength + tipLength
  const shoulder = rest - 30
  let edge = `M-10 ${shoulder}H52`
  offsets.forEach((offset, index) => {
    const x = wellCentre(index)
    edge += `L${x - 14} ${rest + offset}H${x + 14}`
    if (index < offsets.length - 1) {
      const next = offsets[index + 1] ?? 0
      edge += `L${x + 50} ${Math.min(rest + Math.min(offset, next), rest) - 8}`
    }
  })
  return `${edge}L762 ${rest + 26}L740 ${height - 14}H-10Z`
}
