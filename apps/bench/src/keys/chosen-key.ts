/** @module The key a tag named last, while this page is open. */
import { useSyncExternalStore } from 'react'
import type { TaggedKey } from './tag-code.ts'

let chosen: TaggedKey | null = null
const listeners = new Set<() => void>()

/** Marks a key as the one in hand. */
export function chooseKey(key: TaggedKey | null): void {
  chosen = key
  for (const listener of [...listeners]) listener()
}

/** The key in hand, if it belongs to this job. */
export function chosenKeyOf(job: string): string | null {
  return chosen?.job === job ? chosen.key : null
}

function watch(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** The same, followed. */
export function useChosenKey(job: string): string | null {
  return useSyncExternalStore(watch, () => chosenKeyOf(job))
}
