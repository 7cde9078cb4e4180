import { describe, expect, it } from 'vitest'
import { addressOf, type Route, readRoute } from './route.ts'

const routes: readonly Route[] = [
  { page: 'board' },
  { page: 'new' },
  { page: 'device' },
  { page: 'rules' },
  { page: 'keeping' },
  { page: 'job', job: 'job-1a2b' },
  { page: 'shared', failed: false },
  { page: 'shared', failed: true },
  { page: 'practice', exercise: null },
  { page: 'practice', exercise: 'one-more-key' },
]

describe('the address of a page', () => {
  it.each(routes)('returns to the page it was made for: $page', (route) => {
    expect(readRoute(addressOf(route))).toEqual(route)
  })

  it('leads to the board when nothing is known about it', () => {
    for (const hash of ['', '#', '#/', '#/elsewhere', '#/job/', '#bench-main']) {
      expect(readRoute(hash)).toEqual({ page: 'board' })
    }
  })
})
