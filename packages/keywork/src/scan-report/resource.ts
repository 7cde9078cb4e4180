/**
 * @module Reads fault resources of service-oriented vehicle diagnostics (ISO 17978): `{ "items": [ { "code": … } ] }`,
 * alone or by component.
 *
 * Source: names of the fields as the open implementation Eclipse OpenSOVD (Apache-2.0) and public slides of the
 * standard show them; the standard's text was not read.
 */

import type { ReportedFault } from '../faults/index.ts'
import { codesIn } from './code-pattern.ts'
import { reportedFault } from './text.ts'
import type { ReadCode, ReadUnit, ScanReport } from './types.ts'

/** Names of the status object by bit of ISO 14229-1. */
const BITS = [
  'testFailed',
  'testFailedThisOperationCycle',
  'pendingDTC',
  'confirmedDTC',
  'testNotCompletedSinceLastClear',
  'testFailedSinceLastClear',
  'testNotCompletedThisOperationCycle',
  'warningIndicatorRequested',
] as const
const DEEPEST = 12

/** Reads a JSON report; null when the text is no JSON. Never throws. */
export function readResource(text: string): ScanReport | null {
  if (!/^\s*[[{]/.test(text)) return null
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch {
    return null
  }
  const units: ReadUnit[] = []
  const codes: ReadCode[] = []
  gather(value, null, 0, units, codes)
  return { form: 'json', units, codes, findings: [] }
}

function gather(
  value: unknown,
  unit: string | null,
  depth: number,
  units: ReadUnit[],
  codes: ReadCode[],
): void {
  if (depth > DEEPEST || value === null || typeof value !== 'object') return
  if (Array.isArray(value)) {
    for (const each of value) gather(each, unit, depth + 1, units, codes)
    return
  }
  const object = value as Readonly<Record<string, unknown>>
  const fault = faultOf(object)
  if (fault !== null) {
    codes.push({
      unit,
      fault,
      wording: textOf(object.fault_name) ?? '',
      line: 1,
      from: 0,
      to: 0,
      doubts: unit === null ? ['unit-not-named'] : [],
    })
    return
  }
  const name = textOf(object.name) ?? textOf(object.id) ?? unit
  const list = object.items ?? object.faults
  if (Array.isArray(list)) {
    if (name !== null && !units.some((each) => each.name === name))
      units.push({ name, line: 1, saidClear: list.length === 0, doubts: [] })
    gather(list, name, depth + 1, units, codes)
    return
  }
  for (const [key, each] of Object.entries(object)) {
    const wrapper = ['items', 'components', 'faults', 'data'].includes(key)
    gather(each, wrapper ? name : (nameIn(each) ?? key), depth + 1, units, codes)
  }
}

function nameIn(value: unknown): string | null {
  if (value === null || typeof value !== 'object') return null
  const { name, id } = value as { readonly name?: unknown; readonly id?: unknown }
  return textOf(name) ?? textOf(id)
}

function faultOf(object: Readonly<Record<string, unknown>>): ReportedFault | null {
  const text = textOf(object.display_code) ?? textOf(object.code)
  const [found] = text === null ? [] : codesIn(text)
  if (found === undefined) return null
  const status = statusOf(object.status)
  const plain = reportedFault(found.code, '')
  return status === null ? plain : { ...plain, status }
}

function statusOf(status: unknown): number | null {
  if (status === null || typeof status !== 'object') return null
  const object = status as Readonly<Record<string, unknown>>
  const mask = textOf(object.mask)
  if (mask !== null && /^(0x)?[0-9a-f]{1,2}$/i.test(mask))
    return Number.parseInt(mask.replace(/^0x/i, ''), 16)
  let value = 0
  let any = false
  for (const [bit, name] of BITS.entries()) {
    const each = object[name]
    if (each === undefined) continue
    any = true
    if (each === true || each === 1 || each === '1' || each === 'true') value |= 1 << bit
  }
  return any ? value : null
}

function textOf(value: unknown): string | null {
  return typeof value === 'string' && value.trim() !== '' ? value.trim() : null
}
