/** @module What the engine says of two remotes, in the bench's words: numbers with their units. */

import type { Body } from '@shearline/jobfile'
import type { Modulation, RemoteFinding, RemoteReason } from '@shearline/keywork'
import { kilohertz, megahertz, number } from '../words/amounts.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'

/** A carrier: absolute where the centre is known, otherwise from the centre, with its sign. */
export function carrierWords(sender: {
  readonly carrierHz: number | null
  readonly carrierOffsetHz: number
}): string {
  if (sender.carrierHz !== null) return megahertz(sender.carrierHz)
  return `${sender.carrierOffsetHz < 0 ? '\u2212' : '+'}${kilohertz(Math.abs(sender.carrierOffsetHz))}`
}

export function modulationWords(modulation: Modulation): string {
  return t(`remote.modulation.${modulation}`)
}

/** How far two carriers lie apart; remotes of different bands by hundreds of megahertz. */
function apartWords(hertz: number): string {
  return hertz < 1e6 ? kilohertz(hertz) : megahertz(hertz, 1)
}

/** One reason as a sentence. */
export function reasonWords({ code, side, params }: RemoteReason): string {
  const value = (name: string): number => Number(params[name] ?? 0)
  switch (code) {
    case 'modulation':
    case 'modulation-unknown':
      return say(`remote-reason.${code}`, {
        same: params.original === params.new ? 'yes' : 'no',
        original: modulationWords(params.original as Modulation),
        new: modulationWords(params.new as Modulation),
      })
    case 'carrier':
    case 'carrier-drifted':
      return say(`remote-reason.${code}`, {
        difference: apartWords(Math.abs(value('differenceHz'))),
        original: megahertz(value('originalHz')),
        new: megahertz(value('newHz')),
      })
    case 'timing':
    case 'timing-part':
      return say(`remote-reason.${code}`, {
        percent: number(value('percent'), 1),
        unmatched: params.unmatched ?? 'none',
        original: params.originalUs ?? '',
        new: params.newUs ?? '',
      })
    case 'deviation':
      return say('remote-reason.deviation', {
        percent: number(value('percent'), 1),
        original: kilohertz(value('originalHz')),
        new: kilohertz(value('newHz')),
      })
    case 'symbol-rate':
      return say('remote-reason.symbol-rate', {
        percent: number(value('percent'), 1),
        original: number(value('original')),
        new: number(value('new')),
      })
    default:
      return say(`remote-reason.${code}`, {
        side,
        snr: number(value('snrDb'), 1),
        offset: kilohertz(Math.abs(value('offsetHz'))),
        percent: value('percent'),
      })
  }
}

/** A finding about one recording, with what to do. */
export function findingWords({ code, params = {} }: RemoteFinding): string {
  return say(`remote-finding.${code}`, {
    ...params,
    snrDb: number(Number(params.snrDb ?? 0), 1),
    offset: kilohertz(Math.abs(Number(params.offsetHz ?? 0))),
    drift: kilohertz(Math.abs(Number(params.driftHz ?? 0))),
  })
}

/** A comparison on record as one sentence. */
export function comparedSentence(body: Body<'remote-compared'>): string {
  return t('fact.remote-compared', {
    fresh: body.fresh.key ?? 'none',
    original: body.original.key ?? 'none',
    verdict: say(`remote-verdict.${body.verdict}`),
  })
}
