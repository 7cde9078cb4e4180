/** @module Which page is shown, read from the address after `#`, so that a reload or a shared link returns to it. */
import { useSyncExternalStore } from 'react'

export type Route =
  | { readonly page: 'board' | 'new' | 'device' | 'rules' | 'keeping' }
  | { readonly page: 'job'; readonly job: string }
  /** `failed`: what was shared could not be taken over. */
  | { readonly page: 'shared'; readonly failed: boolean }
  /** `exercise` null: the choice of exercises. */
  | { readonly page: 'practice'; readonly exercise: string | null }

/** Reads the part of an address after `#`; anything unknown is the board. */
export function readRoute(hash: string): Route {
  const [page, job] = hash.replace(/^#\/?/, '').split('/')
  if (page === 'shared') return { page, failed: job === 'failed' }
  if (page === 'practice')
    return { page, exercise: job === undefined || job === '' ? null : decodeURIComponent(job) }
  if (page === 'job' && job !== undefined && job !== '') return { page, job: decodeURIComponent(job) }
  if (page === 'new' || page === 'device' || page === 'rules' || page === 'keeping') return { page }
  return { page: 'board' }
}

/** The address of a page, to link to. */
export function addressOf(route: Route): string {
  if (route.page === 'board') return '#/'
  if (route.page === 'shared') return route.failed ? '#/shared/failed' : '#/shared'
  if (route.page === 'practice')
    return route.exercise === null ? '#/practice' : `#/practice/${encodeURIComponent(route.exercise)}`
  return route.page === 'job' ? `#/job/${encodeURIComponent(route.job)}` : `#/${route.page}`
}

/** Goes to a page. */
export function go(route: Route): void {
  location.hash = addressOf(route)
}

function watch(listener: () => void): () => void {
  addEventListener('hashchange', listener)
  return () => removeEventListener('hashchange', listener)
}

/** The present page. */
export function useRoute(): Route {
  return readRoute(useSyncExternalStore(watch, () => location.hash))
}
