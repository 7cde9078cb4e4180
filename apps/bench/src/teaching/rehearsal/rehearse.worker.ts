/** @module Rehearses beside the page: a plan of which little is known has thousands of cases. */
import { rehearseSession } from '@shearline/keywork'
import type { Rehearsed, Unrehearsed } from './work.ts'

self.addEventListener('message', ({ data: { id, plan, order } }: MessageEvent<Unrehearsed>) => {
  let answer: Rehearsed
  try {
    answer = { id, rehearsal: rehearseSession(plan, { order }) }
  } catch (error) {
    // The engine refuses only a plan of which too much is unknown.
    answer = { id, refused: error instanceof Error ? error.message : String(error) }
  }
  self.postMessage(answer)
})
