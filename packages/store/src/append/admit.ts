import { envelope, type Fact, sha256OfBytes, signedText, type Verifier } from '@shearline/jobfile'
import type { Outcome, Refusal } from '../contract/index.ts'
import { type Arriving, refuseFact } from './judge.ts'

const text = new TextEncoder()

/** Reads values as facts and hashes them. The first that is not a fact refuses them all (STO-06). */
export function readFacts(values: readonly unknown[]): Outcome<readonly { fact: Fact; signed: string }[]> {
  const read: { fact: Fact; signed: string }[] = []
  for (const [index, value] of values.entries()) {
    const parsed = envelope.safeParse(value)
    if (!parsed.success) {
      const issue = parsed.error.issues[0]
      return { ok: false, refusal: notAFact(index, issue?.path.join('.') || '(whole)', issue?.message ?? '') }
    }
    read.push({ fact: parsed.data, signed: signedText(parsed.data) })
  }
  return { ok: true, value: read }
}

/**
 * Checks that the devices are known and the signatures theirs (STO-07, STO-08), many at a time.
 * `publicKeys` maps device identifiers to base64url keys.
 */
export async function checkSignatures(
  read: readonly { fact: Fact; signed: string }[],
  publicKeys: ReadonlyMap<string, string>,
  verifier: Verifier,
): Promise<Outcome<readonly Arriving[]>> {
  const arriving = read.map(({ fact, signed }, index) => ({ index, fact, hash: sha256OfBytes(signed) }))
  const stranger = arriving.find(({ fact }) => !publicKeys.has(fact.device))
  if (stranger !== undefined) {
    return {
      ok: false,
      refusal: refuseFact(
        'unknown-device',
        stranger,
        'The device that wrote it is not enrolled here.',
        'Enrol the device with its public key, then send the facts again.',
      ),
    }
  }
  const right = await Promise.all(
    read.map(({ fact, signed }) =>
      verifier.verify(publicKeys.get(fact.device) ?? '', fact.sig, text.encode(signed)),
    ),
  )
  const wrong = arriving[right.indexOf(false)]
  if (wrong === undefined) return { ok: true, value: arriving }
  return {
    ok: false,
    refusal: refuseFact(
      'signature-wrong',
      wrong,
      'Its content and its signature do not belong together: one of them was changed.',
      'Send the fact as the device wrote it, unchanged.',
    ),
  }
}

function notAFact(index: number, path: string, message: string): Refusal {
  return {
    code: 'not-a-fact',
    where: `fact ${index + 1}, ${path}`,
    what: `It is not a well-formed fact: ${message}.`,
    doNext:
      'Send the fact as the device wrote it; if the device is newer than this server, update the server.',
    fact: { index },
  }
}
