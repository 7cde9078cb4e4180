import { type Body, bodyOf, type Fact } from '@shearline/jobfile'
import { useDesk } from '../job/desk.ts'
import { useCustomerLanguage } from '../words/useCustomerLanguage.ts'
import { Signed, signaturesFor } from './Signed.tsx'
import { consentText } from './shown.ts'

/** The signature under a consent, bound to its fact and to the words shown. */
export function ConsentSigned({ about }: { readonly about: Body<'consent-given'>['about'] }) {
  const { facts, state } = useDesk()
  const language = useCustomerLanguage(state.opened?.language)
  const given = facts.findLast(
    (fact) =>
      fact.kind === 'consent-given' &&
      fact.body.about === about &&
      !state.corrections.some((one) => one.fact === fact.id && one.stands === 'applied'),
  )
  const read = given === undefined ? null : consentOf(given)
  if (given === undefined || read === null || language === null) return null
  const ofThis = (fact: string) =>
    facts.some((one) => one.id === fact && one.kind === 'consent-given' && one.body.about === about)
  const signatures = signaturesFor(facts, state.corrections, 'consent').filter(
    ({ body }) => body.fact !== undefined && ofThis(body.fact),
  )
  const shown = consentText(language, state, read)
  return (
    <Signed
      signatures={signatures}
      wish={{
        purpose: 'consent',
        shown,
        language,
        signer: read.signer,
        fact: () => ({ id: given.id, beside: [] }),
        replaces: signatures.map(({ fact }) => fact.id),
      }}
    />
  )
}

function consentOf(fact: Fact): Body<'consent-given'> | null {
  const read = bodyOf(fact, 'consent-given')
  return read.ok ? read.body : null
}
