/** @module Proves one record away from the page: reading and hashing hundreds of facts would keep the next tap waiting. */
import { isDamaged, type ProofAsked } from './proof.ts'

addEventListener('message', ({ data: { facts, devices } }: MessageEvent<ProofAsked>) => {
  void isDamaged(facts, devices).then((damaged) => postMessage(damaged))
})
