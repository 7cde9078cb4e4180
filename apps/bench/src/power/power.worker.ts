/** @module Computes budgets and watches beside the page. */
import { crankingReserve, powerBudget, refit } from '@shearline/keywork'
import type { PowerAsk, PowerAsked, PowerReply } from './work.ts'

self.addEventListener('message', ({ data: { id, ask } }: MessageEvent<PowerAsked>) => {
  self.postMessage({ id, told: told(ask) } satisfies PowerReply)
})

function told(ask: PowerAsk): PowerReply['told'] {
  if (ask.what === 'budget') return powerBudget(ask.input)
  if (ask.what === 'watch') return refit(ask, ask.readings, ask.readAt)
  return crankingReserve(ask.battery, ask.starter, { runs: 1000, seed: 1 })
}
