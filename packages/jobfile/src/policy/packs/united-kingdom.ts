import type { PolicyPack } from '../pack.ts'
import { neutralPack } from './neutral.ts'

const whoever = [{ code: 'driving-licence' }, { code: 'passport' }]
const holder = { code: 'authority.person-is-holder' }
const vin = { code: 'authority.vin-on-paper' }
const form = { code: 'authority.form-signed' }

const oneAndOne = {
  source:
    'trade guidance: one identity and one entitlement document, originals, a traceable number kept rather than a copy; the V5C says itself that it is no proof of ownership',
  basis: 'source',
} as const

/** An example for the United Kingdom. Laws are cited, not copied; a firm checks it before it relies on it. */
export const unitedKingdomPack: PolicyPack = {
  format: 'shearline-policy-pack',
  version: 1,
  name: 'example: United Kingdom',
  region: 'United Kingdom',
  dated: '2026-11-01',
  authority: [
    {
      situation: 'owner',
      identity: whoever,
      entitlement: [{ code: 'purchase-contract' }, { code: 'keeper-record' }, { code: 'insurance-policy' }],
      checks: [holder, vin, form],
      ...oneAndOne,
    },
    {
      situation: 'leaseholder',
      identity: whoever,
      entitlement: [{ code: 'lease-contract' }, { code: 'owner-letter' }],
      checks: [holder, vin, { code: 'authority.owner-asked' }, form],
      ...oneAndOne,
    },
    {
      situation: 'trader',
      identity: whoever,
      entitlement: [{ code: 'work-order' }, { code: 'purchase-contract' }, { code: 'trade-registration' }],
      checks: [{ code: 'authority.trade-known' }, { code: 'authority.order-names-car' }, form],
      source: 'common practice, check your law',
      basis: 'common-practice',
    },
    {
      situation: 'fleet',
      identity: whoever,
      entitlement: [{ code: 'fleet-letter' }, { code: 'work-order' }],
      checks: [{ code: 'authority.order-names-car' }, { code: 'authority.order-called-back' }, form],
      source: 'trade guidance: a fleet letter or an insurer’s reference is accepted instead of papers',
      basis: 'source',
    },
    {
      situation: 'no-papers',
      identity: whoever,
      entitlement: [{ code: 'registry-confirmation' }, { code: 'police-confirmation' }],
      checks: [{ code: 'authority.police-present' }, { code: 'authority.asked-second-person' }, form],
      source: 'common practice, check your law',
      basis: 'common-practice',
    },
  ],
  retention: {
    stalledAfterDays: 180,
    rules: [
      {
        class: 'invoice',
        days: 2557,
        trigger: 'sealed',
        source: 'HMRC manual VATREC3032: six years; one more for the end of the accounting period',
      },
      {
        class: 'authority-record',
        days: 1096,
        trigger: 'handed-over',
        source: 'UK GDPR article 5(1)(e): no period named; three years is common practice',
      },
      {
        class: 'identity-image',
        days: 7,
        trigger: 'handed-over',
        source: 'UK GDPR article 5(1)(c) and (e): no period named, as short as the purpose',
      },
      {
        class: 'photo',
        days: 30,
        trigger: 'warranty-ended',
        source: 'UK GDPR article 5(1)(e): no period named, the firm decides',
      },
      {
        class: 'recording',
        days: 30,
        trigger: 'warranty-ended',
        source: 'UK GDPR article 5(1)(e): no period named, the firm decides',
      },
      {
        class: 'vehicle-secret',
        days: 14,
        trigger: 'handed-over',
        source: 'UK GDPR article 5(1)(f); no period named, the firm decides',
      },
      {
        class: 'job-rest',
        days: 2192,
        trigger: 'sealed',
        source: 'Limitation Act 1980, section 5: six years for a contract (from memory, check)',
      },
    ],
  },
  contract: [
    {
      customers: ['private'],
      checks: [
        { code: 'contract.informed-before' },
        { code: 'contract.cancelling-explained' },
        { code: 'contract.asked-to-start-now' },
        { code: 'contract.paper-copy-given' },
      ],
      source:
        'Consumer Contracts (Information, Cancellation and Additional Charges) Regulations 2013, regulations 10, 28, 29 and 36 (28 and 36 from memory, check)',
      basis: 'memory',
    },
  ],
  site: neutralPack.site,
  radio: {
    region: 'europe',
    bands: [],
    source: 'Ofcom interface requirement IR 2030, in step with ERC/REC 70-03 (from memory, check)',
    basis: 'memory',
  },
}
