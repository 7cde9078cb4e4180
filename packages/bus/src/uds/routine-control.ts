/** @module 31 RoutineControl (ISO 14229-1). */

import type { Meaning } from '../message/types.ts'
import { hexWord, identifier, type ServiceReader, subFunctionOf, tooShort, word } from './reader.ts'
import { subFunctionNamer } from './sub-functions.ts'

const name = subFunctionNamer(0x31)

/** Routine identifiers ISO 14229-1 Annex F names (from memory). */
const ROUTINES: Readonly<Record<number, string>> = {
  65280: 'eraseMemory',
  65281: 'checkProgrammingDependencies',
  65282: 'eraseMirrorMemoryDTCs',
}

function read(payload: Uint8Array): Meaning {
  const subFunction = subFunctionOf(payload, name)
  if (subFunction === undefined) return tooShort(4)
  if (payload.length < 4) return { subFunction, ...tooShort(4) }
  const routine = word(payload, 2)
  return { subFunction, dids: [identifier(hexWord(routine), ROUTINES[routine] ?? 'routine of the maker')] }
}

export const routineControl: ServiceReader = { request: read, response: read }
