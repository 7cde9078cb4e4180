import { createHash } from 'node:crypto'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { type Fact, neutralRetention } from '@shearline/jobfile'
import { openStore } from '@shearline/store'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { shearline } from '../support/shearline.ts'

let folder = ''
let env: Record<string, string> = {}
const run = (...args: string[]) => shearline(args, { env })
const seal = (name: string) => run('job', 'seal', 'van-1', '--even-if-not-ready', '--out', join(folder, name))
const record = (kind: string, body: unknown) =>
  shearline(['job', 'record', 'van-1', kind, '-', '--json'], { env, input: JSON.stringify(body) })

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-retention-'))
  env = { SHEARLINE_DATA: join(folder, 'data'), SHEARLINE_BY: 'office' }
  const opened = run(
    ...['job', 'open', 'van-1', '--title', 'Small van', '--place', 'Harbour', '--vehicle', 'small van'],
    ...['--zone', 'Europe/Lisbon'],
  )
  expect([opened.code, opened.err]).toEqual([0, ''])
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** Files under a folder in which some text stands as it is. */
function filesHolding(place: string, text: string): string[] {
  return readdirSync(place, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => readFileSync(file).includes(text))
}

describe('shearline retention', () => {
  it('says what is due on a day, why, and what holds it; a hold stops deletion until it is lifted', () => {
    const blob = 'a'.repeat(64)
    expect(
      record('photo-attached', { blob, mediaType: 'image/jpeg', bytes: 9, shows: 'identity' }).code,
    ).toBe(0)
    expect(record('vehicle-handed-over', { to: 'driver' }).code).toBe(0)
    expect(run('retention', 'due')).toMatchObject({ code: 0, out: 'Nothing is due.\n' })
    const day = new Date(Date.now() + 40 * 86_400_000).toISOString().slice(0, 10)
    const due = run('retention', 'due', 'van-1', '--on', day, '--json')
    expect(due.code).toBe(1)
    expect(JSON.parse(due.out)).toMatchObject({
      due: [
        {
          job: 'van-1',
          class: 'identity-image',
          days: 30,
          trigger: 'handed-over',
          heldBy: [],
          documents: [],
        },
      ],
    })
    const held = JSON.parse(
      run('retention', 'hold', 'van-1', '--why', 'Letter of a solicitor.', '--json').out,
    )
    expect(run('retention', 'due', '--on', day).out).toContain(`Letter of a solicitor. (${held.id})`)
    expect(run('job', 'show', 'van-1').out).toContain('Letter of a solicitor.')
    expect(run('retention', 'lift', 'van-1', blob, '--why', 'x').code).toBe(2)
    expect(run('retention', 'lift', 'van-1', held.id, '--why', 'Settled.').code).toBe(0)
    expect(run('retention', 'due', '--on', day).out).not.toContain('solicitor')
  })

  it('deletes nothing that is not due or is held, and records nothing then', () => {
    const facts = () => JSON.parse(run('job', 'show', 'van-1', '--json').out).factCount as number
    const before = facts()
    const early = run('retention', 'delete', 'van-1', '--why', 'Tidying.', '--json')
    expect([early.code, JSON.parse(early.out)]).toEqual([1, { job: 'van-1', deleted: [], heldBy: [] }])
    expect(facts()).toBe(before)
    expect(run('retention', 'delete', 'van-2', '--why', 'x').code).toBe(2)
  })

  it('deletes what is due and proves it: content and bytes are gone, the record still proves, a hold refuses', {
    timeout: 400_000,
  }, async () => {
    const phone = '+351 000 000 000'
    const words = 'Holds the registration paper beside the van'
    const photo = Buffer.from('invented bytes of a photo of an identity card')
    const blob = createHash('sha256').update(photo).digest('hex')
    const data = env.SHEARLINE_DATA ?? ''
    const store = await openStore(data)
    await store.putBlob(blob, 'image/jpeg', Readable.from([photo]))
    await store.close()
    const attached = { blob, mediaType: 'image/jpeg', bytes: photo.length, shows: 'identity' }
    expect(record('photo-attached', attached).code).toBe(0)
    const seen = { role: 'entitlement', document: words, issuer: 'registry office', lastCharacters: '17' }
    expect(
      record('authority-seen', { ...seen, original: true, matched: true, checkedBy: 'Robin' }),
    ).toMatchObject({ code: 0, err: '' })
    expect(record('note-written', { text: `Driver ${phone}` }).code).toBe(0)
    expect(record('vehicle-handed-over', { to: 'driver' }).code).toBe(0)
    for (let i = 0; i < 2; i++) expect(seal(`${i}.pdf`)).toMatchObject({ code: 0, err: '' })
    const sealed = filesHolding(data, words)
    expect(sealed.length).toBeGreaterThan(0)
    const pack = join(folder, 'pack.json')
    const rules = neutralRetention.rules.map((rule) => ({ ...rule, trigger: 'handed-over', days: 0 }))
    writeFileSync(pack, JSON.stringify({ ...neutralRetention, name: 'at once', rules, stalledAfterDays: 1 }))
    expect(run('retention', 'pack', pack).code).toBe(0)

    const held = JSON.parse(run('retention', 'hold', 'van-1', '--why', 'A dispute.', '--json').out)
    const refused = run('retention', 'delete', 'van-1', '--why', 'Over.', '--json')
    expect([refused.code, JSON.parse(refused.out)]).toMatchObject([
      1,
      { deleted: [], heldBy: ['A dispute.'] },
    ])
    expect(filesHolding(data, words)).toEqual(sealed)
    expect(run('retention', 'lift', 'van-1', held.id, '--why', 'Settled.').code).toBe(0)

    const due = JSON.parse(run('retention', 'due', 'van-1', '--json').out).due as { class: string }[]
    expect(due.map((one) => one.class)).toEqual(
      expect.arrayContaining(['identity-image', 'authority-record']),
    )
    const done = run('retention', 'delete', 'van-1', '--why', 'Their time is over.', '--json')
    expect([done.code, done.err]).toEqual([0, ''])
    const { deleted, copiesStay } = JSON.parse(done.out)
    expect(deleted).toHaveLength(due.length)
    for (const one of deleted) expect(one).toMatchObject({ shared: [], proof: expect.any(String) })
    expect(copiesStay).toContain('backups')
    expect(run('retention', 'due', 'van-1')).toMatchObject({ code: 0, out: 'Nothing is due.\n' })

    // Nothing of it stands in any file any more: facts, photo, both sealed documents.
    expect(filesHolding(data, words)).toEqual([])
    expect(filesHolding(data, phone)).toEqual([])
    expect(filesHolding(data, photo.toString())).toEqual([])
    const facts = JSON.parse(run('job', 'export', 'van-1').out).facts as Fact[]
    const proofs = facts.filter(({ kind }) => kind === 'deletion-proven')
    expect(proofs.map(({ id }) => id)).toEqual(deleted.map((one: { proof: string }) => one.proof))
    const items = proofs.flatMap(({ body }) => body.items as { what: string; keyDestroyed: boolean }[])
    expect(items.filter(({ what }) => what === 'document')).toHaveLength(2)
    expect(items.some(({ keyDestroyed }) => keyDestroyed)).toBe(false)
    expect(facts.some(({ kind, body }) => kind === 'authority-seen' && 'erased' in body)).toBe(true)

    // The doctor is content, and the record still proves, signatures, links and seal, with the erased facts named by proof.
    expect(run('doctor')).toMatchObject({ code: 0, err: '' })
    const verified = shearline(['verify', '-', '--json'], { input: run('job', 'export', 'van-1').out })
    expect([verified.code, JSON.parse(verified.out)]).toMatchObject([
      0,
      { proven: true, facts: facts.length, signatures: facts.length },
    ])
    expect(verified.out).not.toContain('taken out')
    expect(seal('after.pdf').code).toBe(0)
  })

  it("takes a firm's own periods and names what is wrong in them", () => {
    expect(run('retention', 'pack').out).toContain('neutral default, any')
    const file = join(folder, 'pack.json')
    const rules = neutralRetention.rules.map((rule) =>
      rule.class === 'photo' ? { ...rule, days: -3 } : rule,
    )
    writeFileSync(file, JSON.stringify({ ...neutralRetention, rules }))
    const wrong = run('retention', 'pack', file)
    expect(wrong.code).toBe(2)
    expect(wrong.err).toContain('rules.3.days')
    writeFileSync(file, JSON.stringify({ ...neutralRetention, name: 'firm rules', stalledAfterDays: 1 }))
    expect(run('retention', 'pack', file).out).toContain('firm rules, any')
    const day = new Date(Date.now() + 3000 * 86_400_000).toISOString().slice(0, 10)
    const due = run('retention', 'due', '--on', day)
    expect(due.out).toContain('its clock never started')
  })
})
