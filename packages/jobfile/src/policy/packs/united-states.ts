import type { PolicyPack } from '../pack.ts'
import { neutralPack } from './neutral.ts'

const whoever = [{ code: 'driving-licence' }, { code: 'identity-card' }, { code: 'passport' }]
const holder = { code: 'authority.person-is-holder' }
const valid = { code: 'authority.document-valid' }
const vin = { code: 'authority.vin-on-paper' }
const form = { code: 'authority.form-signed' }

const registry = {
  source:
    'vehicle-security registry forms: identity and one proof of ownership, checked in person before the work; California Business and Professions Code, sections 6980.53 to 6980.55',
  basis: 'source',
} as const

/** An example for the United States. States differ: the firm checks its own before it relies on it. */
export const unitedStatesPack: PolicyPack = {
  format: 'shearline-policy-pack',
  version: 1,
  name: 'example: United States',
  region: 'United States (states differ)',
  dated: '2026-11-01',
  authority: [
    {
      situation: 'owner',
      identity: whoever,
      entitlement: [
        { code: 'registration-certificate' },
        { code: 'title' },
        { code: 'insurance-policy' },
        { code: 'purchase-contract' },
      ],
      checks: [holder, valid, vin, form],
      ...registry,
    },
    {
      situation: 'leaseholder',
      identity: whoever,
      entitlement: [
        { code: 'registration-certificate' },
        { code: 'lease-contract' },
        { code: 'owner-letter' },
      ],
      checks: [holder, valid, vin, form],
      ...registry,
    },
    {
      situation: 'trader',
      identity: whoever,
      entitlement: [{ code: 'work-order' }, { code: 'trade-registration' }],
      checks: [{ code: 'authority.trade-known' }, { code: 'authority.order-names-car' }, form],
      ...registry,
    },
    {
      situation: 'fleet',
      identity: whoever,
      entitlement: [{ code: 'work-order' }, { code: 'fleet-letter' }],
      checks: [{ code: 'authority.order-names-car' }, { code: 'authority.order-called-back' }, form],
      source:
        'vehicle-security registry: a signed work order that names the VIN, the place and who authorises it',
      basis: 'source',
    },
    {
      situation: 'no-papers',
      identity: whoever,
      entitlement: [
        { code: 'police-confirmation' },
        { code: 'court-order' },
        { code: 'registry-confirmation' },
      ],
      checks: [{ code: 'authority.police-present' }, valid, form],
      source:
        'association policy on positive identification: if in doubt only with police present, file kept three years',
      basis: 'source',
    },
  ],
  retention: {
    stalledAfterDays: 180,
    rules: [
      {
        class: 'invoice',
        days: 1461,
        trigger: 'sealed',
        source:
          '26 U.S.C. 6501(a), three years from filing, so up to four (from memory, check); Maryland: invoices three years',
      },
      {
        class: 'authority-record',
        days: 1096,
        trigger: 'handed-over',
        source: 'association policy: three years; California Business and Professions Code 6980.55: two',
      },
      {
        class: 'identity-image',
        days: 30,
        trigger: 'handed-over',
        source: 'common practice, check your law',
      },
      { class: 'photo', days: 30, trigger: 'warranty-ended', source: 'common practice, check your law' },
      { class: 'recording', days: 30, trigger: 'warranty-ended', source: 'common practice, check your law' },
      {
        class: 'vehicle-secret',
        days: 30,
        trigger: 'handed-over',
        source: 'common practice, check your law',
      },
      { class: 'job-rest', days: 1461, trigger: 'sealed', source: 'common practice, check your law' },
    ],
  },
  contract: [
    {
      customers: ['private'],
      checks: [{ code: 'contract.informed-before' }, { code: 'contract.cancelling-explained' }],
      source:
        '16 CFR part 429, cooling-off period for sales away from the seller’s place of business (from memory, check); states add to it',
      basis: 'memory',
    },
  ],
  site: neutralPack.site,
  radio: { region: 'north-america', bands: [], source: '47 CFR 15.231 and 15.249', basis: 'source' },
}
