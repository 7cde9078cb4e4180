/**
 * @module Which CAN identifiers the standards set aside for diagnostics, and which answers which.
 *
 * Sources: ISO 15765-4 (7DF, 7E0-7EF; 18DB33F1, 18DAxxF1), ISO 15765-2 normal fixed and mixed 29-bit addressing
 * (PF byte DA, DB, CE, CD), as listed in `docs/source/pages/knowledge_base/can.rst` of mdabrowski1990/uds (MIT).
 * That makers put their diagnostics at 700-7FF, the answer eight above the request, is common practice, no source.
 */

import type { Addressing } from '../isotp/lane.ts'

/** How an identifier's place in the standards says it is used; `undefined` when the standards say nothing. */
export function standardAddressing(id: number, extended: boolean): Addressing | undefined {
  if (!extended) return id >= 0x700 ? 'normal' : undefined
  // Identifier: priority (3 bits), two page bits that are 0 here, PF byte, target, source.
  if ((id & 0x03000000) !== 0) return undefined
  const format = (id >> 16) & 0xff
  if (format === 0xda || format === 0xdb) return 'normal'
  return format === 0xce || format === 0xcd ? 'mixed' : undefined
}

/** Identifiers that usually answer or are answered by this one, the likeliest first. */
export function usualPeers(id: number, extended: boolean): readonly number[] {
  if (extended) {
    const format = (id >> 16) & 0xff
    if (format !== 0xda && format !== 0xce) return []
    return [((id & 0xffff0000) | ((id & 0xff) << 8) | ((id >> 8) & 0xff)) >>> 0]
  }
  return id < 0x700 ? [] : id & 8 ? [id - 8, id + 8] : [id + 8, id - 8]
}
