import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bodyHash, factHash, verifyFacts } from '../chain/index.ts'
import { testVerifier } from '../testing/device.ts'
import { fitsOf } from './fits.ts'
import {
  type Body,
  bodyOf,
  bodySchemas,
  canBeCorrected,
  type Kind,
  kinds,
  readBody,
  understands,
  versionOf,
} from './index.ts'
import { drafts } from './testing/drafts.ts'
import { type Examples, examplesOf, freezeNew, freezeSigned, signedExamples } from './testing/examples.ts'

const howTo = 'run SHEARLINE_FREEZE=examples npx vitest run packages/jobfile/src/facts'
// Adds what has no example yet and never touches what has one.
if (process.env.SHEARLINE_FREEZE === 'examples') {
  freezeNew()
  await freezeSigned()
}

const frozen: readonly Examples[] = kinds.flatMap((kind) =>
  Array.from({ length: versionOf(kind) }, (_, index) => {
    const examples = examplesOf(kind, index + 1)
    if (examples === null) throw new Error(`${kind} version ${index + 1} has no frozen example: ${howTo}`)
    return examples
  }),
)

describe('frozen examples of every kind and version', () => {
  it.each(frozen.map((one) => [`${one.kind} version ${one.v}`, one] as const))(
    '%s is still read',
    (_, one) => {
      for (const { body, hash } of one.examples) {
        expect(bodyHash(body), 'a frozen example was edited; write a new version instead').toBe(hash)
        const read = readBody(one.kind, body, one.v)
        expect(read).toMatchObject({ ok: true })
        // Nothing that was recorded may get lost: the present version gives back every member as it was.
        if (read.ok && one.v === versionOf(one.kind)) expect(read.body).toEqual(body)
      }
    },
  )

  it('still verify as they were signed, hash for hash', async () => {
    const signed = signedExamples()
    if (signed === null) throw new Error(`no signed examples: ${howTo}`)
    const check = await verifyFacts(signed.facts, [signed.device], testVerifier())
    expect(check.findings).toEqual([])
    expect([check.signaturesRight, check.linksRight]).toEqual([signed.facts.length, signed.facts.length])
    expect(signed.facts.map(factHash)).toEqual(signed.hashes)
    expect(signed.facts.length).toBeGreaterThan(50)
  })

  it('keep every member that an older version had', () => {
    const older = frozen.filter((one) => one.v < versionOf(one.kind))
    expect(older.length).toBeGreaterThan(0)
    for (const { kind, v, examples } of older)
      for (const { body } of examples) {
        const read = readBody(kind, body, v)
        expect(read.ok && read.body).toMatchObject(body)
      }
  })
})

describe('versions', () => {
  it('read a retention of version 1 as counted from the sealing, which is what it meant', () => {
    const old = { pack: 'p', classes: [{ class: 'invoice', days: 10, source: 's' }] }
    const read = readBody('retention-set', old, 1)
    expect(read.ok && read.body.classes).toEqual([
      { class: 'invoice', days: 10, trigger: 'sealed', source: 's' },
    ])
  })

  it('refuse what is newer instead of guessing what it means', () => {
    expect(readBody('note-written', { text: 'x' }, 2)).toMatchObject({ ok: false, path: 'v' })
    expect(understands({ kind: 'note-written', v: 2 })).toBe('newer-version')
    expect(understands({ kind: 'tyre-looked-at', v: 1 })).toBe('unknown-kind')
  })

  it('never throw on a body of an older version that never fitted', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(readBody('retention-set', value, 1).ok).toBeTypeOf('boolean')
        expect(readBody('retention-set', { pack: 'p', classes: value }, 1).ok).toBeTypeOf('boolean')
      }),
    )
  })
})

describe('reading a body without copying it', () => {
  const whole = kinds.flatMap((kind) =>
    drafts[kind].map((draft) => ({ kind, body: (readBody(kind, draft) as { body: Body<Kind> }).body })),
  )

  it('takes the fast way for the written form of every kind but those with free parts', () => {
    const slow = new Set(whole.filter(({ kind, body }) => !fitsOf(kind)(body)).map(({ kind }) => kind))
    // A replacement body is free in form, so the schema itself looks at it.
    expect([...slow]).toEqual(['corrected'])
  })

  it('takes the fast way in whatever order the members stand', () => {
    for (const { kind, body } of whole.filter(({ kind }) => kind !== 'corrected'))
      for (const order of ['sorted', 'backwards'] as const)
        expect(fitsOf(kind)(inOrder(body, order)), `${kind} ${order}`).toBe(true)
  })

  it('is never more lenient than the schema, and never gives another value', () => {
    const hostile = fc.oneof(
      fc.jsonValue(),
      fc.constantFrom<unknown>(
        '',
        ' ',
        ' x',
        'x ',
        '\u00a0x',
        Number.NaN,
        1.5,
        -1,
        1e21,
        null,
        [],
        {},
        undefined,
      ),
    )
    fc.assert(
      fc.property(
        fc.constantFrom(...whole),
        fc.nat(),
        fc.nat(),
        hostile,
        fc.boolean(),
        fc.constantFrom<Order>('as written', 'sorted', 'backwards'),
        (of, at, deep, value, drop, order) => {
          const body = structuredClone(of.body) as Record<string, unknown>
          // Changes one member, at the top or one level down, so that bodies are nearly right.
          const names = [...Object.keys(body), 'unheardOf']
          const name = names[at % names.length] as string
          const inner = body[name]
          const target =
            Array.isArray(inner) && inner.length > 0 && deep % 2 === 0 ? inner[deep % inner.length] : null
          if (typeof target === 'object' && target !== null) {
            const members = [...Object.keys(target), 'unheardOf']
            Object.assign(target, { [members[deep % members.length] as string]: value })
          } else if (drop) delete body[name]
          else body[name] = value
          const laid = inOrder(body, order)
          if (!fitsOf(of.kind)(laid)) return
          const read = bodySchemas[of.kind].safeParse(laid)
          expect(read.success, JSON.stringify(laid)).toBe(true)
          expect(read.data).toEqual(laid)
        },
      ),
      { numRuns: 4000 },
    )
  })

  it('gives what readBody gives', () => {
    for (const { kind, body } of whole)
      expect(bodyOf({ v: versionOf(kind), body: body as Record<string, unknown> }, kind)).toEqual(
        readBody(kind, body),
      )
  })
})

type Order = 'as written' | 'sorted' | 'backwards'

/** A copy whose members stand in that order, at every depth; facts are kept sorted. */
function inOrder(value: unknown, order: Order): unknown {
  if (Array.isArray(value)) return value.map((one) => inOrder(one, order))
  if (typeof value !== 'object' || value === null || order === 'as written') return value
  const names = Object.keys(value).sort()
  if (order === 'backwards') names.reverse()
  return Object.fromEntries(
    names.map((name) => [name, inOrder((value as Record<string, unknown>)[name], order)]),
  )
}

describe('corrections', () => {
  it('do not reach what proves other facts, and nothing unknown', () => {
    expect(['note-written', 'vin-read', 'price-agreed', 'recording-attached'].every(canBeCorrected)).toBe(
      true,
    )
    expect(
      [
        'document-sealed',
        'corrected',
        'deletion-proven',
        'hold-placed',
        'device-revoked',
        'tyre-looked-at',
      ].some(canBeCorrected),
    ).toBe(false)
  })
})
