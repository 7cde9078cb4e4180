import { closeSync, ftruncateSync, mkdtempSync, openSync, rmSync, writeFileSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, describe, expect, it } from 'vitest'
import { lines, shearline } from '../support/shearline.ts'

const folder = mkdtempSync(join(tmpdir(), 'decode-files-'))
afterAll(() => rmSync(folder, { recursive: true }))

function file(name: string, bytes: string | Uint8Array): string {
  const path = join(folder, name)
  writeFileSync(path, bytes)
  return path
}

/** A file that states 10 GB and holds only its head. */
function sparse(name: string, head: string): string {
  const path = join(folder, name)
  const open = openSync(path, 'w')
  writeSync(open, head)
  ftruncateSync(open, 10 * 2 ** 30)
  closeSync(open)
  return path
}

const exchange = Array.from(
  { length: 5000 },
  (_, index) =>
    `(${1000 + index}.000000) can0 7E0#021003\n(${1000 + index}.010000) can0 7E8#065003003201F4\n`,
).join('')

describe('shearline decode', () => {
  // Reading 10 GB takes minutes; looking at the head does not.
  it.each([
    ['nothing but zeros', ''],
    ['prose', 'It was a long recording, and nobody knew of what.\n'.repeat(200)],
    ['a table without identifiers', `when,where,why\n${'1,2,3\n'.repeat(2000)}`],
  ])('says at once that a file of 10 GB is no recording: %s', (name, head) => {
    const path = sparse(name, head)
    const begun = process.hrtime.bigint()
    const ran = shearline(['decode', path, '--summary'])
    const seconds = Number(process.hrtime.bigint() - begun) / 1e9
    expect([ran.code, ran.out]).toEqual([2, ''])
    expect(ran.err).toContain(path)
    expect(seconds).toBeLessThan(30)
  })

  it('unpacks a recording packed with gzip, and says so', () => {
    const plain = shearline(['decode', file('a.log', exchange), '--json'])
    const path = file('a.log.gz', gzipSync(exchange))
    const packed = shearline(['decode', path, '--json'])
    expect(lines(packed.out)).toHaveLength(10_000)
    expect(packed.out).toBe(plain.out)
    expect(shearline(['decode', path, '--summary']).out).toContain(
      "gzip (it is packed with gzip; inside, line 1 is a frame in candump's log layout)",
    )
  })

  it('reads a packed recording as far as it goes and tells where it ends too early', () => {
    const whole = gzipSync(exchange)
    const path = file('cut.log.gz', whole.subarray(0, whole.length - 3000))
    const ran = shearline(['decode', path, '--summary', '--json'])
    const { messages, findings } = JSON.parse(ran.out)
    expect(messages).toBeGreaterThan(5000)
    expect(findings['gzip-damaged']).toBe(1)
    expect(ran.err).toMatch(/byte \d+: the packed recording ends or is damaged/)
  })

  it('says that what is packed is no recording', () => {
    const ran = shearline(['decode', file('b.gz', gzipSync('no recording at all\n'.repeat(1000)))])
    expect([ran.code, ran.out]).toEqual([2, ''])
    expect(ran.err).toMatch(/is not a recording that can be read/)
  })

  it('answers the same by itself and among the other commands', () => {
    const path = file('c.log', exchange)
    // `--lone` is no flag: the whole command answers, with its help.
    expect(shearline(['decode', path, '--lone']).code).toBe(2)
    // Named identifiers are read by the whole command, the others by the one that starts faster.
    const named = shearline(['decode', path, '--json', '--ids', '7E0,7E8'])
    expect(named.out).toBe(shearline(['decode', path, '--json']).out)
  })
})
