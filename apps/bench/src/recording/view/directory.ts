/** @module Who speaks with whom in a recording, so that a message can be told as "from whom to whom". */
import type { MessageLine, TimelineEntry } from '@shearline/bus'

/** The units that answer each requesting identifier. */
export type Directory = ReadonlyMap<string, readonly string[]>

/** From whom and to whom: identifiers, `null` where the recording does not say. */
export interface WhoWhom {
  readonly asks: boolean
  readonly tester: string | null
  readonly units: readonly string[]
}

/** Learns from the timeline's addressed units who answers whom. */
export function directoryOf(entries: readonly TimelineEntry[]): Directory {
  const answering = new Map<string, string[]>()
  for (const { what, proof, channel, unit, detail } of entries) {
    if (what !== 'addressed' || proof !== 'answered') continue
    for (const asker of detail.split(' ').filter((id) => id !== '')) {
      const key = `${channel} ${asker}`
      answering.set(key, [...(answering.get(key) ?? []), unit])
    }
  }
  return answering
}

/** From whom a message came and to whom it went. */
export function whoWhom(line: MessageLine, directory: Directory): WhoWhom {
  const asks = line.kind === 'request'
  const [from = '', to] = line.id.split('>')
  // Over DoIP both logical addresses stand in the message (ISO 13400-2).
  if (to !== undefined)
    return asks ? { asks, tester: from, units: [to] } : { asks, tester: to, units: [from] }
  if (!asks) return { asks, tester: null, units: [from] }
  return { asks, tester: from, units: directory.get(`${line.channel} ${from}`) ?? [] }
}
