import type { Fact } from '@shearline/jobfile'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { FactSource } from '../contract/index.ts'
import { type Arriving, type Held, judgeChain } from './judge.ts'

/** A chain that forks: version b leaves a after its third fact and has numbers 4 and up of its own. */
const forksAt = 4
const hash = (seq: number, version: 'a' | 'b') => (seq < forksAt ? `a${seq}` : `${version}${seq}`)

function link(seq: number, version: 'a' | 'b'): Arriving {
  const prev = seq === 1 ? null : hash(seq - 1, version)
  return { index: 0, hash: hash(seq, version), fact: { seq, prev, kind: 'note-written' } as Fact }
}

/** A store of one chain made from nothing but a map: everything else is worked out anew each time. */
class PlainChain {
  readonly held = new Map<number, Held>()

  head() {
    let seq = 0
    while (this.held.has(seq + 1)) seq++
    return { seq, hash: this.held.get(seq)?.hash ?? null }
  }

  take(batch: readonly Arriving[], from: FactSource) {
    const verdict = judgeChain(this.head(), this.held, batch, from)
    if (verdict.ok)
      for (const { fact, hash } of verdict.value.fresh)
        this.held.set(fact.seq, { seq: fact.seq, hash, prev: fact.prev })
    return verdict
  }
}

const deliveries = fc.array(
  fc.record({
    from: fc.constantFrom<FactSource>('device', 'bundle'),
    version: fc.constantFrom<('a' | 'b')[]>('a', 'a', 'a', 'b'),
    seqs: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 }),
  }),
  { maxLength: 12 },
)

describe('judging a chain', () => {
  test('STO-03 STO-05 whatever is delivered in whatever order, what is held is one linked chain', () => {
    fc.assert(
      fc.property(deliveries, (all) => {
        const chain = new PlainChain()
        for (const { from, version, seqs } of all) {
          const before = new Map(chain.held)
          const verdict = chain.take(
            seqs.map((seq) => link(seq, version)),
            from,
          )
          for (const [seq, held] of before) expect(chain.held.get(seq)).toEqual(held)
          if (verdict.ok) {
            for (const seq of seqs) expect(chain.held.get(seq)?.hash).toBe(hash(seq, version))
            expect(verdict.value.head).toEqual(chain.head())
            expect(verdict.value.fresh.length + verdict.value.already).toBe(seqs.length)
          } else {
            expect(chain.held).toEqual(before)
          }
          for (const { seq, prev } of chain.held.values()) {
            const predecessor = chain.held.get(seq - 1)
            if (predecessor !== undefined) expect(prev).toBe(predecessor.hash)
          }
        }
      }),
      { numRuns: 2000 },
    )
  })

  test('STO-02 STO-04 one version delivered in any order converges once the device sends it whole', () => {
    fc.assert(
      fc.property(deliveries, (all) => {
        const chain = new PlainChain()
        for (const { from, seqs } of all) {
          const known = new Set(chain.held.keys())
          const verdict = chain.take(
            seqs.map((seq) => link(seq, 'a')),
            from,
          )
          // A device may only go on from the end of the unbroken part; a bundle is always taken.
          let end = 0
          let gap = false
          for (const seq of [...new Set(seqs)].sort((a, b) => a - b)) {
            while (known.has(end + 1)) end++
            if (known.has(seq)) continue
            if (seq !== end + 1) gap = true
            known.add(seq)
          }
          expect(verdict.ok).toBe(from === 'bundle' || !gap)
        }
        const whole = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((seq) => link(seq, 'a'))
        const last = chain.take(whole, 'device')
        expect(last).toMatchObject({ ok: true, value: { head: { seq: 9, hash: 'a9' } } })
        expect(chain.take(whole, 'device')).toMatchObject({ ok: true, value: { fresh: [], already: 9 } })
      }),
      { numRuns: 2000 },
    )
  })
})
