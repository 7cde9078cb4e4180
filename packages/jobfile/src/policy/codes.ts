/**
 * @module What a policy pack may ask for by code. Codes have words in every language; a firm adds rows of its own with
 * its own words.
 */

/** Who stands before the technician, as far as entitlement goes (common practice; the trade's schemes keep these apart). */
export const situations = ['owner', 'leaseholder', 'trader', 'fleet', 'no-papers'] as const
export type Situation = (typeof situations)[number]

/** Documents that show who somebody is, or that they may have a key. */
export const documentCodes = [
  'identity-card',
  'passport',
  'driving-licence',
  'residence-permit',
  'registration-certificate',
  'ownership-certificate',
  'title',
  'keeper-record',
  'purchase-contract',
  'insurance-policy',
  'lease-contract',
  'owner-letter',
  'work-order',
  'trade-registration',
  'fleet-letter',
  'rental-contract',
  'court-order',
  'police-confirmation',
  'registry-confirmation',
] as const
export type DocumentCode = (typeof documentCodes)[number]

/** Questions that want a yes, or a no with a reason. */
export const checkCodes = [
  'authority.document-valid',
  'authority.person-is-holder',
  'authority.vin-on-paper',
  'authority.owner-asked',
  'authority.order-names-car',
  'authority.order-called-back',
  'authority.trade-known',
  'authority.police-present',
  'authority.asked-second-person',
  'authority.no-copy-kept',
  'authority.register-entry',
  'authority.form-signed',
  'contract.informed-before',
  'contract.cancelling-explained',
  'contract.asked-to-start-now',
  'contract.urgent-visit-asked-for',
  'contract.made-to-order',
  'contract.paper-copy-given',
] as const
export type CheckCode = (typeof checkCodes)[number]

/** Questions about the car and where it stands; the answer decides which cautions apply. */
export const siteAnswers = {
  'site.drive': ['combustion', 'hybrid', 'electric', 'unknown'],
  'site.place': ['open-air', 'roadside', 'indoors'],
  'site.alone': ['alone', 'not-alone'],
  'site.inside': ['nobody', 'child-or-animal-near'],
} as const
export type SiteQuestion = keyof typeof siteAnswers
export const siteQuestions = Object.keys(siteAnswers) as readonly SiteQuestion[]

/** The two questions everything else hangs on. */
export const packQuestion = 'pack'
export const situationQuestion = 'authority.situation'
