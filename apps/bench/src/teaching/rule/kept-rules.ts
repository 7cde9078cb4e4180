/** @module Rules a firm keeps under names of its own, on this device. None is shipped. */
import { type PlanRefusal, parseRule, type TeachingRule } from '@shearline/keywork'
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'

/** A rule under the firm's own name. */
export interface KeptRule {
  readonly name: string
  readonly rule: TeachingRule
  readonly source: string
  /** The behaviour it was made from, by code; empty when it was made from none. */
  readonly archetype: string
}

interface Settings extends DBSchema {
  rules: { key: string; value: KeptRule }
}

let opened: Promise<IDBPDatabase<Settings>> | undefined

/** Settings lie apart from the record: losing them loses no fact, and they are never sent. */
function settings(): Promise<IDBPDatabase<Settings>> {
  opened ??= openDB<Settings>('shearline-settings', 1, {
    upgrade: (db) => {
      db.createObjectStore('rules', { keyPath: 'name' })
    },
    terminated: () => {
      opened = undefined
    },
  }).catch((error: unknown) => {
    opened = undefined
    throw error
  })
  return opened
}

/** Every rule kept here, by name; one that this version cannot read is left out. */
export async function keptRules(): Promise<readonly KeptRule[]> {
  const all = await (await settings()).getAll('rules')
  return all.flatMap((kept) => {
    const parsed = parseRule(kept.rule)
    return isRefused(parsed) ? [] : [{ ...kept, rule: parsed.rule }]
  })
}

/** Keeps a rule under its name; the one that had it before is replaced. */
export async function keepRule(kept: KeptRule): Promise<void> {
  await (await settings()).put('rules', kept)
}

/** Forgets a rule. Jobs that chose it keep what they recorded. */
export async function forgetRule(name: string): Promise<void> {
  await (await settings()).delete('rules', name)
}

function isRefused(parsed: object): parsed is PlanRefusal {
  return 'path' in parsed
}
