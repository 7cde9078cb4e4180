import type { PolicyPack } from '../pack.ts'
import { commonPractice, neutralRetention } from '../retention-pack.ts'

const usual = { source: commonPractice, basis: 'common-practice' } as const
const whoever = [{ code: 'identity-card' }, { code: 'passport' }, { code: 'driving-licence' }]

/** What a firm that has chosen nothing works by: no country's law. Every row is common practice without a source. */
export const neutralPack: PolicyPack = {
  format: 'shearline-policy-pack',
  version: 1,
  name: 'neutral default',
  region: 'any',
  dated: '2026-11-01',
  authority: [
    {
      situation: 'owner',
      identity: whoever,
      entitlement: [
        { code: 'registration-certificate' },
        { code: 'ownership-certificate' },
        { code: 'purchase-contract' },
        { code: 'insurance-policy' },
      ],
      checks: [{ code: 'authority.person-is-holder' }, { code: 'authority.vin-on-paper' }],
      ...usual,
    },
    {
      situation: 'leaseholder',
      identity: whoever,
      entitlement: [
        { code: 'lease-contract' },
        { code: 'owner-letter' },
        { code: 'registration-certificate' },
      ],
      checks: [
        { code: 'authority.person-is-holder' },
        { code: 'authority.vin-on-paper' },
        { code: 'authority.owner-asked' },
      ],
      ...usual,
    },
    {
      situation: 'trader',
      identity: whoever,
      entitlement: [{ code: 'work-order' }, { code: 'purchase-contract' }, { code: 'trade-registration' }],
      checks: [{ code: 'authority.trade-known' }, { code: 'authority.order-names-car' }],
      ...usual,
    },
    {
      situation: 'fleet',
      identity: whoever,
      entitlement: [{ code: 'work-order' }, { code: 'fleet-letter' }, { code: 'rental-contract' }],
      checks: [{ code: 'authority.order-names-car' }, { code: 'authority.order-called-back' }],
      ...usual,
    },
    {
      situation: 'no-papers',
      identity: whoever,
      entitlement: [
        { code: 'police-confirmation' },
        { code: 'registry-confirmation' },
        { code: 'court-order' },
      ],
      checks: [{ code: 'authority.police-present' }, { code: 'authority.asked-second-person' }],
      ...usual,
    },
  ],
  retention: { stalledAfterDays: neutralRetention.stalledAfterDays, rules: neutralRetention.rules },
  contract: [{ customers: ['private'], checks: [{ code: 'contract.informed-before' }], ...usual }],
  site: ['site.drive', 'site.place', 'site.alone', 'site.inside'],
  radio: {
    region: null,
    bands: [],
    source: 'no region chosen: rows of every region are shown',
    basis: 'common-practice',
  },
}
