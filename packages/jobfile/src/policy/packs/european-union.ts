import type { PolicyPack } from '../pack.ts'
import { neutralPack } from './neutral.ts'

const from = (source: string) => ({ source, basis: 'source' }) as const
const recalled = (source: string) => ({ source: `${source} (from memory, check)`, basis: 'memory' }) as const

const whoever = [
  { code: 'identity-card' },
  { code: 'passport' },
  { code: 'residence-permit' },
  { code: 'driving-licence' },
]
const papers = [{ code: 'registration-certificate' }, { code: 'ownership-certificate' }]
const register = { code: 'authority.register-entry' }
const noCopy = { code: 'authority.no-copy-kept' }
const holder = { code: 'authority.person-is-holder' }
const vin = { code: 'authority.vin-on-paper' }

const twoPapers = recalled(
  'Directive 1999/37/EC, articles 3 and 4: registration certificate in one or two parts; Regulation (EU) 2018/858, annex X, as amended by Delegated Regulation (EU) 2021/1244: security-related work goes into a register',
)

/**
 * An example for a member state of the European Union with two-part registration papers, after German law. Laws are
 * cited, not copied; what was not read again says "from memory". A firm checks it before it relies on it.
 */
export const europeanUnionPack: PolicyPack = {
  format: 'shearline-policy-pack',
  version: 1,
  name: 'example: European Union, after German law',
  region: 'European Union (Germany)',
  dated: '2026-11-01',
  authority: [
    {
      situation: 'owner',
      identity: whoever,
      entitlement: papers,
      checks: [holder, vin, noCopy, register],
      ...twoPapers,
    },
    {
      situation: 'leaseholder',
      identity: whoever,
      entitlement: [{ code: 'owner-letter' }, { code: 'lease-contract' }],
      checks: [holder, vin, { code: 'authority.owner-asked' }, noCopy, register],
      ...recalled(
        'BGB sections 903 and 985: the owner decides, not the keeper; part II of the papers often lies with the owner',
      ),
    },
    {
      situation: 'trader',
      identity: whoever,
      entitlement: [{ code: 'work-order' }, { code: 'purchase-contract' }, ...papers],
      checks: [{ code: 'authority.trade-known' }, { code: 'authority.order-names-car' }, register],
      ...recalled('GewO section 14: a trade is notified, so that its notice can be shown'),
    },
    {
      situation: 'fleet',
      identity: whoever,
      entitlement: [{ code: 'work-order' }, { code: 'fleet-letter' }],
      checks: [{ code: 'authority.order-names-car' }, { code: 'authority.order-called-back' }, register],
      source: 'common practice, check your law',
      basis: 'common-practice',
    },
    {
      situation: 'no-papers',
      identity: whoever,
      entitlement: [{ code: 'registry-confirmation' }, { code: 'police-confirmation' }],
      checks: [{ code: 'authority.police-present' }, { code: 'authority.asked-second-person' }, register],
      source: 'common practice, check your law',
      basis: 'common-practice',
    },
  ],
  retention: {
    stalledAfterDays: 180,
    rules: [
      {
        class: 'invoice',
        days: 3288,
        trigger: 'sealed',
        source:
          'UStG section 14b(1), eight years from the end of the year, so up to nine (from memory, check)',
      },
      {
        class: 'authority-record',
        days: 1461,
        trigger: 'handed-over',
        source:
          'BGB sections 195 and 199(1), three years from the end of the year, so up to four (from memory, check); GDPR article 5(1)(e)',
      },
      {
        class: 'identity-image',
        days: 7,
        trigger: 'handed-over',
        source:
          'GDPR article 5(1)(c) and (e): no period named, as short as the purpose; PAuswG section 20(2) on copies (from memory, check)',
      },
      {
        class: 'photo',
        days: 30,
        trigger: 'warranty-ended',
        source: 'GDPR article 5(1)(e): no period named, the firm decides',
      },
      {
        class: 'recording',
        days: 30,
        trigger: 'warranty-ended',
        source: 'GDPR article 5(1)(e): no period named, the firm decides',
      },
      {
        class: 'vehicle-secret',
        days: 14,
        trigger: 'handed-over',
        source: 'GDPR article 5(1)(f); no period named, the firm decides',
      },
      {
        class: 'job-rest',
        days: 1461,
        trigger: 'sealed',
        source: 'BGB sections 195 and 199(1) (from memory, check)',
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
      ...recalled(
        'Directive 2011/83/EU, articles 6 to 9 and 16 (urgent visits, goods made to order); BGB sections 312b, 312d and 312g; EGBGB article 246a',
      ),
    },
  ],
  site: neutralPack.site,
  radio: {
    region: 'europe',
    bands: [],
    ...from('ERC/REC 70-03, annex 1; ETSI EN 300 220-2'),
  },
}
