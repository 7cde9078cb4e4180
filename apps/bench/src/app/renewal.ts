/** @module The bench kept in the browser by its service worker, and renewed only when the person says so. */
import { Workbox } from 'workbox-window'

/** Whether a newer version lies ready, and whether a job open in another page keeps it waiting. */
export type Renewal = 'none' | 'ready' | 'job-open'

/** How often a page that stays open looks for a newer version. Milliseconds. */
const lookEvery = 60 * 60_000
/** Held by every page in which a job is open: a renewal would take half-typed words with it. */
const midJob = 'shearline-mid-job'

let renewal: Renewal = 'none'
let bench: Workbox | null = null
let asked = false
const watchers = new Set<() => void>()

/** The present state. */
export function renewalState(): Renewal {
  return renewal
}

/** Calls back whenever the state changes. */
export function watchRenewal(watcher: () => void): () => void {
  watchers.add(watcher)
  return () => watchers.delete(watcher)
}

function show(next: Renewal): void {
  renewal = next
  for (const watcher of [...watchers]) watcher()
}

/** Keeps the whole bench in this browser, so that it opens without a connection. Does nothing where it cannot. */
export function keepBench(): void {
  if (bench !== null || !('serviceWorker' in navigator)) return
  bench = new Workbox('./sw.js')
  bench.addEventListener('waiting', () => show('ready'))
  bench.addEventListener('controlling', (event) => {
    // The first time there was no older version to leave.
    if (asked || event.isUpdate === true || event.isExternal === true) void reloadUnlessMidJob()
  })
  // Without a service worker (private window, plain HTTP) the bench works as long as the page is open.
  bench.register().catch(() => undefined)
  const look = () => void bench?.update().catch(() => undefined)
  setInterval(look, lookEvery)
  addEventListener('online', look)
}

/** Lets the newer version take over and loads it, unless a job is open in some page of this browser. */
export function renew(): Promise<void> {
  return navigator.locks.request(midJob, { mode: 'exclusive', ifAvailable: true }, async (lock) => {
    if (lock === null) {
      show('job-open')
      return
    }
    asked = true
    bench?.messageSkipWaiting()
  })
}

/** Says that a job is open in this page until the returned function is called. */
export function holdJob(): () => void {
  let letGo: () => void = () => undefined
  const until = new Promise<void>((resolve) => {
    letGo = resolve
  })
  void navigator.locks.request(midJob, { mode: 'shared' }, () => until)
  return () => letGo()
}

/** Another page asked for the newer version: follow, but not while words may be half typed here. */
function reloadUnlessMidJob(): Promise<void> {
  return navigator.locks.request(midJob, { mode: 'exclusive', ifAvailable: true }, async (lock) => {
    if (lock !== null) location.reload()
  })
}
