import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Fact } from '../facts/index.ts'
import { TestDevice, testVerifier } from '../testing/device.ts'
import { canonicalJson, factHash, fromBase64Url, signedText, toBase64Url } from './index.ts'

const hex = (text: string) => Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16))

describe('RFC 8785', () => {
  // RFC 8785 appendix B, written from memory of the RFC: bits of a binary64 number and its JSON text.
  const numbers: readonly (readonly [string, string])[] = [
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ]

  it.each(numbers)('appendix B: the number %s is written %s', (bits, text) => {
    expect(canonicalJson(new DataView(hex(bits).buffer).getFloat64(0))).toBe(text)
  })

  it('appendix B: numbers that JSON cannot hold are refused', () => {
    for (const bits of ['7fffffffffffffff', '7ff0000000000000'])
      expect(() => canonicalJson(new DataView(hex(bits).buffer).getFloat64(0))).toThrow()
  })

  it('section 3.2.3: members are sorted by their UTF-16 code units', () => {
    const names = ['\u20ac', '\r', '\ufb33', '1', '\u{1f600}', '\u0080', '\u00f6']
    const sorted = JSON.parse(canonicalJson(Object.fromEntries(names.map((name) => [name, name]))))
    // "1" is an index and comes first in any object, so the order is read from the text.
    const text = canonicalJson(sorted)
    const places = ['\\r', '1', '\u0080', '\u00f6', '\u20ac', '\u{1f600}', '\ufb33'].map((name) =>
      text.indexOf(`"${name}":`),
    )
    expect(places).toEqual([...places].sort((a, b) => a - b))
    expect(places).not.toContain(-1)
  })
})

describe('RFC 8032', () => {
  it('section 7.1 test 3 holds, and test 1 is signed to the same 64 bytes', async () => {
    const three = 'fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025'
    const threeSig =
      '6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a'
    const verifier = testVerifier()
    expect(await verifier.verify(toBase64Url(hex(three)), toBase64Url(hex(threeSig)), hex('af82'))).toBe(true)
    expect(await verifier.verify(toBase64Url(hex(three)), toBase64Url(hex(threeSig)), hex('af83'))).toBe(
      false,
    )
    // PKCS #8 frame of RFC 8410 section 7 around the seed of test 1.
    const seed = '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60'
    const key = await crypto.subtle.importKey(
      'pkcs8',
      hex(`302e020100300506032b657004220420${seed}`),
      { name: 'Ed25519' },
      false,
      ['sign'],
    )
    const signed = new Uint8Array(await crypto.subtle.sign('Ed25519', key, new Uint8Array(0)))
    expect(Buffer.from(signed).toString('hex')).toBe(
      'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
    )
  })
})

/** RFC 8785 for values of plain ASCII text and small integers, written apart from ours: sorted members, no blanks. */
function sortedJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(sortedJson).join(',')}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${members.map(([name, inner]) => `${JSON.stringify(name)}:${sortedJson(inner)}`).join(',')}}`
}

describe('an exported fact', () => {
  it('is verified by openssl from files alone, and refused when one byte is changed', async () => {
    const tablet = await TestDevice.create()
    await tablet.write('note-written', { text: 'Gate code asked.' })
    const fact = JSON.parse(
      JSON.stringify(await tablet.write('keys-said', { count: 4, absent: ['spare'] })),
    ) as Fact
    // What decision 0003 says, done by hand: the body by its hash, no signature, sorted members.
    const { sig, body, ...rest } = fact
    const bodyHash = createHash('sha256').update(sortedJson(body)).digest('hex')
    const text = sortedJson({ ...rest, body: bodyHash })
    expect(text).toBe(signedText(fact))
    expect(createHash('sha256').update(text).digest('hex')).toBe(factHash(fact))

    const folder = mkdtempSync(join(tmpdir(), 'shearline-openssl-'))
    try {
      const file = (name: string, bytes: Uint8Array | string) => {
        writeFileSync(join(folder, name), bytes)
        return join(folder, name)
      }
      // SubjectPublicKeyInfo of RFC 8410 section 4 around the 32 raw bytes.
      const spki = Buffer.from([
        ...hex('302a300506032b6570032100'),
        ...(fromBase64Url(tablet.device.publicKey) ?? []),
      ])
      const key = file(
        'device.pem',
        `-----BEGIN PUBLIC KEY-----\n${spki.toString('base64')}\n-----END PUBLIC KEY-----\n`,
      )
      const signature = file('fact.sig', Buffer.from(sig, 'base64url'))
      const check = (signed: string) =>
        execFileSync(
          'openssl',
          ['pkeyutl', '-verify', '-pubin', '-inkey', key, '-rawin', '-in', signed, '-sigfile', signature],
          { encoding: 'utf8', stdio: 'pipe' },
        )
      expect(check(file('fact.txt', text))).toContain('Signature Verified Successfully')
      expect(() => check(file('changed.txt', text.replace('"seq":2', '"seq":3')))).toThrow()
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })
})
