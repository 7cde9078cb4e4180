/** @module Tells every open page of this browser, this one included, that something was kept or sent. */

/** What changed: facts of a job, the list of jobs, or how far sending has come. */
export type Change = { readonly what: 'job'; readonly job: string } | { readonly what: 'jobs' | 'outbox' }

const channel = new BroadcastChannel('shearline-changes')
const listeners = new Set<(change: Change) => void>()

channel.addEventListener('message', (event: MessageEvent<Change>) => hear(event.data))

function hear(change: Change): void {
  for (const listener of [...listeners]) listener(change)
}

/** Announces a change to this page and to every other page of the same browser. */
export function announce(change: Change): void {
  hear(change)
  channel.postMessage(change)
}

/** Calls back on every change until the returned function is called. */
export function onChange(listener: (change: Change) => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}
