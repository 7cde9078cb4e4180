/** @module A message in words: what is asked, of whom, and how it was answered. */

import type { MessageLine } from '@shearline/bus'
import { listMark } from '../../words/engine.ts'
import { t, type WordKey } from '../../words/index.ts'
import { isRefusal } from '../kept-message.ts'
import type { WhoWhom } from './directory.ts'

/** Words of a key that may be missing. */
function wordsOr(key: string, fallback: string): string {
  const words = t(key as WordKey)
  return words === key ? fallback : words
}

/** Keys are written out up to their last part, so that the test of the catalogue sees which are in use. */
const serviceKeys: Readonly<Record<MessageLine['protocol'], (service: string) => string | null>> = {
  uds: (service) => `service.uds.${service}`,
  obd: (service) => `service.obd.${service}`,
  kwp: (service) => `service.kwp.${service}`,
  other: () => null,
}

/** What a service does, in plain words; the standard's name for one that has none. */
export function serviceWords({
  protocol,
  service,
  name,
}: Pick<MessageLine, 'protocol' | 'service' | 'name'>): string {
  const key = serviceKeys[protocol](service)
  return key === null ? name : wordsOr(key, name)
}

/** Why a unit refused, in plain words (ISO 14229-1, annex A: negative response codes). */
export function refusalWords(nrc: { readonly code: string; readonly name: string }): string {
  return wordsOr(`refusal.${nrc.code}`, nrc.name)
}

/** Kinds as the list tells them apart. */
export type RowKind = 'asks' | 'answers' | 'refuses' | 'waits' | 'cut'

/** Which kind of row a message is. */
export function rowKind(line: MessageLine): RowKind {
  if (!line.complete) return 'cut'
  if (line.kind === 'request') return 'asks'
  if (line.kind === 'response') return 'answers'
  return isRefusal(line) ? 'refuses' : 'waits'
}

/** From whom to whom: `Tester 7E0 to unit 7E8`. */
export function whoWords({ asks, tester, units }: WhoWhom): string {
  const [first = ''] = units
  if (!asks)
    return tester === null ? t('who.answer', { unit: first }) : t('who.answer-to', { unit: first, tester })
  if (units.length === 0) return t('who.nobody', { tester: tester ?? '' })
  if (units.length === 1) return t('who.one', { tester: tester ?? '', unit: first })
  return t('who.many', { tester: tester ?? '', count: units.length })
}

/** What the message is about beyond its service: identifiers, faults, the sub-function. */
export function subject(line: MessageLine): string {
  const parts: string[] = []
  if (line.subFunction !== undefined) parts.push(line.subFunction.name)
  if (line.dids !== undefined && line.dids.length > 0)
    parts.push(
      line.dids
        .slice(0, 3)
        .map(({ did, name }) => (name === '' ? did : `${did} ${name}`))
        .join(listMark()),
    )
  if (line.dtcs !== undefined) parts.push(t('row.faults', { count: line.dtcs.length }))
  if (line.vin !== undefined) parts.push(line.vin)
  return parts.join(' \u00b7 ')
}

/** Bytes as pairs of hex digits; `xx` where they are blacked out. */
export function pairs(hex: string, most = Number.POSITIVE_INFINITY): string {
  const shown = hex.match(/../g) ?? []
  const cut = shown.length > most
  return `${shown.slice(0, most).join(' ')}${cut ? ' \u2026' : ''}`
}
