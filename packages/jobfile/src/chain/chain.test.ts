import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { TestDevice, testVerifier } from '../testing/device.ts'
import {
  canonicalJson,
  deviceIdOf,
  FactRefused,
  factHash,
  fromBase64Url,
  sha256OfBytes,
  signedText,
  toBase64Url,
  treeHead,
  verifyFacts,
} from './index.ts'

const hex = (text: string) => Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16))

describe('canonical JSON', () => {
  it('gives the sample of RFC 8785 section 3.2.2', () => {
    // Sample text of RFC 8785 sections 3.2.2 to 3.2.4, written from memory of the RFC.
    const input =
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}'
    expect(canonicalJson(JSON.parse(input))).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    )
  })

  it('does not depend on the order in which members were written', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
        const turned = Object.fromEntries(Object.entries(value).reverse())
        expect(canonicalJson(turned)).toBe(canonicalJson(value))
      }),
    )
  })
})

describe('base64url', () => {
  it('reads back what it wrote, and only one text stands for the same bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 80 }), (bytes) => {
        const text = toBase64Url(bytes)
        expect(text).toBe(Buffer.from(bytes).toString('base64url'))
        expect(fromBase64Url(text)).toEqual(bytes)
      }),
    )
    expect(fromBase64Url('QQ')).toEqual(Uint8Array.of(65))
    expect(fromBase64Url('QR')).toBeNull()
    expect(fromBase64Url('Q=')).toBeNull()
  })
})

describe('tree head', () => {
  it('equals the eight published heads of RFC 6962 test trees', () => {
    // Leaves and heads: transparency-dev/merkle test data (Apache-2.0), as listed in ../shared/reference/merkle_rfc6962.tsv.
    const leaves = [
      '',
      '00',
      '10',
      '2021',
      '3031',
      '40414243',
      '5051525354555657',
      '606162636465666768696a6b6c6d6e6f',
    ].map(hex)
    const heads = [
      'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
      '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
      'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
      'aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77',
      'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
      '4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4',
      '76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef',
      'ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c',
      '5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328',
    ]
    for (const [size, expected] of heads.entries()) {
      expect(treeHead(leaves.slice(0, size)), `tree of ${size}`).toBe(expected)
    }
  })
})

describe('signatures', () => {
  it('agree with RFC 8032 section 7.1 tests 1 and 2', async () => {
    const verifier = testVerifier()
    const one = 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a'
    const oneSig =
      'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b'
    const two = '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c'
    const twoSig =
      '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00'
    expect(await verifier.verify(toBase64Url(hex(one)), toBase64Url(hex(oneSig)), new Uint8Array(0))).toBe(
      true,
    )
    expect(await verifier.verify(toBase64Url(hex(two)), toBase64Url(hex(twoSig)), Uint8Array.of(0x72))).toBe(
      true,
    )
    expect(await verifier.verify(toBase64Url(hex(two)), toBase64Url(hex(twoSig)), Uint8Array.of(0x73))).toBe(
      false,
    )
    expect(await verifier.verify('short', 'short', Uint8Array.of(1))).toBe(false)
  })
})

describe('a chain of facts', () => {
  const chain = async () => {
    const tablet = await TestDevice.create()
    await tablet.write('job-opened', {
      title: 'Small van',
      place: 'Harbour',
      zone: 'Europe/Lisbon',
      work: 'add-a-key',
      customer: 'fleet',
      vehicle: 'small van',
    })
    await tablet.write('keys-said', { count: 5, absent: ['spare at the depot'] })
    await tablet.write('note-written', { text: 'Gate code asked by phone.' })
    return tablet
  }

  it('verifies when untouched', async () => {
    const tablet = await chain()
    const check = await verifyFacts(tablet.facts, [tablet.device], testVerifier())
    expect(check.findings).toEqual([])
    expect([check.facts.length, check.signaturesRight, check.linksRight]).toEqual([3, 3, 3])
  })

  it('names the fact whose content was changed, and the one that no longer follows it', async () => {
    const tablet = await chain()
    const changed = structuredClone(tablet.facts)
    const second = changed[1]
    if (second === undefined) throw new Error('three facts were written')
    second.body = { count: 4, absent: ['spare at the depot'] }
    const check = await verifyFacts(changed, [tablet.device], testVerifier())
    expect(check.findings.map((finding) => [finding.code, finding.where.part])).toEqual([
      ['signature-wrong', 'fact 2 (keys-said)'],
      ['link-broken', 'fact 3 (note-written)'],
    ])
  })

  it('finds a change of any single member of any fact', async () => {
    const tablet = await chain()
    const verifier = testVerifier()
    const members = ['v', 'id', 'job', 'device', 'seq', 'at', 'by', 'kind', 'prev', 'sig'] as const
    for (let index = 0; index < tablet.facts.length; index++) {
      for (const member of members) {
        const changed: Record<string, unknown>[] = structuredClone(tablet.facts)
        const fact = changed[index]
        if (fact === undefined) continue
        const old = fact[member]
        fact[member] =
          typeof old === 'number' ? old + 1 : old === null ? 'a'.repeat(64) : swapLast(String(old))
        const check = await verifyFacts(changed, [tablet.device], verifier)
        expect(
          check.findings.filter((finding) => finding.severity === 'error').length,
          `${member} of fact ${index + 1}`,
        ).toBeGreaterThan(0)
      }
    }
  })

  it('stays whole when a body is erased but its hash is kept', async () => {
    const tablet = await chain()
    const facts = structuredClone(tablet.facts)
    const third = facts[2]
    if (third === undefined) throw new Error('three facts were written')
    third.body = { erased: sha256OfBytes(canonicalJson(third.body)) }
    const check = await verifyFacts(facts, [tablet.device], testVerifier())
    // Nobody recorded a deletion, which is said; the chain holds all the same.
    expect(check.findings.map((finding) => [finding.code, finding.severity])).toEqual([
      ['erased-without-proof', 'warning'],
    ])
    expect(factHash(third)).toBe(factHash(tablet.facts[2] as typeof third))
  })

  it('refuses a body that does not fit its kind, with the path of what is wrong', async () => {
    const tablet = await TestDevice.create()
    const attempt = tablet.write('keys-said', { count: -1 })
    await expect(attempt).rejects.toBeInstanceOf(FactRefused)
    await expect(attempt).rejects.toMatchObject({ path: 'count' })
    expect(tablet.facts).toEqual([])
  })

  it('knows a device by its key: another key under the same identifier is refused', async () => {
    const tablet = await chain()
    const other = await TestDevice.create()
    const swapped = { ...tablet.device, publicKey: other.device.publicKey }
    const check = await verifyFacts(tablet.facts, [swapped], testVerifier())
    expect(check.findings[0]?.code).toBe('device-key-mismatch')
    expect(check.signaturesRight).toBe(0)
    expect(deviceIdOf(fromBase64Url(tablet.device.publicKey) ?? new Uint8Array())).toBe(tablet.device.device)
  })

  it('signs the body by its hash, so that the signed text never carries the body itself', async () => {
    const tablet = await chain()
    for (const fact of tablet.facts)
      expect(signedText(fact)).toContain(sha256OfBytes(canonicalJson(fact.body)))
    expect(signedText(tablet.facts[2] as (typeof tablet.facts)[number])).not.toContain('Gate code')
  })
})

function swapLast(text: string): string {
  const last = text.at(-1) === '0' ? '1' : '0'
  return text.slice(0, -1) + last
}
