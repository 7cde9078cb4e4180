/** @module Which messages a person may want to see alone. Services of ISO 14229-1, SAE J1979 and ISO 14230-3. */
import type { Message } from '@shearline/bus'
import { isRefusal } from './kept-message.ts'

/** The choices, `all` first. */
export const filters = ['all', 'changed', 'refused', 'faults'] as const
export type Filter = (typeof filters)[number]

/** One bit per filter, so that a message's belonging fits in a byte. */
export const filterBits: Readonly<Record<Filter, number>> = { all: 1, changed: 2, refused: 4, faults: 8 }

/** Services that change a unit's state or memory once they are confirmed. */
const changing: Readonly<Record<Message['protocol'], ReadonlySet<string>>> = {
  uds: new Set([
    '10',
    '11',
    '14',
    '27',
    '28',
    '29',
    '2E',
    '2F',
    '31',
    '34',
    '36',
    '37',
    '38',
    '3D',
    '85',
    '87',
  ]),
  obd: new Set(['04', '08']),
  kwp: new Set([
    '10',
    '11',
    '14',
    '20',
    '27',
    '28',
    '29',
    '2E',
    '2F',
    '30',
    '31',
    '32',
    '34',
    '36',
    '37',
    '3B',
    '3D',
  ]),
  other: new Set(),
}

/** Services about stored faults. */
const aboutFaults: Readonly<Record<Message['protocol'], ReadonlySet<string>>> = {
  uds: new Set(['14', '19']),
  obd: new Set(['02', '03', '04', '07', '0A']),
  kwp: new Set(['12', '13', '14', '17', '18']),
  other: new Set(),
}

type Looked = Pick<Message, 'kind' | 'protocol' | 'service' | 'complete' | 'nrc' | 'subFunction'>

/**
 * Whether a message changed the car: the unit confirmed it, or it was asked for with the answer suppressed, in which
 * case nothing else on the wire will say so. Asking for a security seed (odd level) changes nothing.
 */
function changesTheCar(message: Looked): boolean {
  if (!message.complete || !changing[message.protocol].has(message.service)) return false
  if (message.service === '27' && (message.subFunction?.value ?? 0) % 2 === 1) return false
  if (message.kind === 'response') return true
  return message.kind === 'request' && message.subFunction?.suppressResponse === true
}

/** The filters a message passes, as bits of `filterBits`. */
export function filtersPassed(message: Looked): number {
  let bits = filterBits.all
  if (changesTheCar(message)) bits |= filterBits.changed
  if (isRefusal(message)) bits |= filterBits.refused
  if (aboutFaults[message.protocol].has(message.service)) bits |= filterBits.faults
  return bits
}
