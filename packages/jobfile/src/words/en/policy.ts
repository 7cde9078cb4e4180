import type { CheckCode, DocumentCode, SiteQuestion, Situation } from '../../policy/index.ts'

/** What a policy pack asks for by code: situations, documents, questions. Laws are named in the pack, not here. */
export const policyWords = {
  'situation.owner': 'The owner is here',
  'situation.leaseholder': 'Keeper of a leased, financed or company car',
  'situation.trader': 'A trader, for a customer or from stock',
  'situation.fleet': 'A fleet or hire firm',
  'situation.no-papers': 'Nobody can show papers',

  'policy-document.identity-card': 'Identity card',
  'policy-document.passport': 'Passport',
  'policy-document.driving-licence': 'Driving licence',
  'policy-document.residence-permit': 'Residence permit',
  'policy-document.registration-certificate': 'Registration certificate',
  'policy-document.ownership-certificate': 'Second part of the registration certificate',
  'policy-document.title': 'Title of the vehicle',
  'policy-document.keeper-record': 'Record of the registered keeper (shows the keeper, not the owner)',
  'policy-document.purchase-contract': 'Contract or bill of sale',
  'policy-document.insurance-policy': 'Insurance policy for this car',
  'policy-document.lease-contract': 'Lease or finance contract',
  'policy-document.owner-letter': 'Letter of the owner',
  'policy-document.work-order': 'Signed work order',
  'policy-document.trade-registration': 'Registration of the trade',
  'policy-document.fleet-letter': 'Letter of the fleet',
  'policy-document.rental-contract': 'Rental contract',
  'policy-document.court-order': 'Court order',
  'policy-document.police-confirmation': 'Confirmation by the police',
  'policy-document.registry-confirmation': 'Confirmation by the vehicle registry',

  'policy-asks.authority.situation': 'Who wants the key?',
  'policy-asks.authority.document-valid':
    'Is the identity document valid and not cancelled (no holes, no cut corner)?',
  'policy-asks.authority.person-is-holder': 'Is the person here the holder of the identity document?',
  'policy-asks.authority.vin-on-paper': 'Does the VIN on the paper match the car?',
  'policy-asks.authority.owner-asked': 'Has the owner (lessor, bank, employer) agreed?',
  'policy-asks.authority.order-names-car': 'Does the order name this VIN, the place and who authorises it?',
  'policy-asks.authority.order-called-back':
    'Was the order confirmed by calling a number that did not come with it?',
  'policy-asks.authority.trade-known': 'Is the trader known or its registration checked?',
  'policy-asks.authority.police-present': 'Are the police here, or have they confirmed?',
  'policy-asks.authority.asked-second-person': 'Has a second person of the firm agreed to the work?',
  'policy-asks.authority.no-copy-kept':
    'Was only noted what was seen, with no copy of the identity document kept?',
  'policy-asks.authority.register-entry': 'Is the work entered in the register that the scheme wants?',
  'policy-asks.authority.form-signed': 'Has the customer signed the form on identity and authority?',
  'policy-asks.contract.informed-before': 'Did the customer get price, work and terms before agreeing?',
  'policy-asks.contract.cancelling-explained': 'Was the right to cancel explained, and when it ends?',
  'policy-asks.contract.asked-to-start-now':
    'Did the customer ask to start now, within the time for cancelling?',
  'policy-asks.contract.urgent-visit-asked-for': 'Did the customer ask for this visit as an urgent repair?',
  'policy-asks.contract.made-to-order':
    'Was the customer told that a key made for this car cannot be returned?',
  'policy-asks.contract.paper-copy-given': 'Does the customer have the information on paper or as a file?',
  'policy-asks.site.drive': 'What drives the car?',
  'policy-asks.site.place': 'Where does the car stand?',
  'policy-asks.site.alone': 'Is somebody with you?',
  'policy-asks.site.inside': 'Are children or animals in the car or near it?',

  'site.drive.combustion': 'Petrol, diesel or gas only',
  'site.drive.hybrid': 'Hybrid',
  'site.drive.electric': 'Electric',
  'site.drive.unknown': 'Not known',
  'site.place.open-air': 'In the open, off the road',
  'site.place.roadside': 'At the roadside',
  'site.place.indoors': 'Indoors or under a roof',
  'site.alone.alone': 'I work alone',
  'site.alone.not-alone': 'Somebody is with me',
  'site.inside.nobody': 'Nobody',
  'site.inside.child-or-animal-near': 'Yes, in it or near it',

  'policy-basis.source': 'source read',
  'policy-basis.memory': 'from memory, check',
  'policy-basis.common-practice': 'common practice, no source',
  'policy-basis.firm': 'the firm’s own',
} as const satisfies Record<
  | `situation.${Situation}`
  | `policy-document.${DocumentCode}`
  | `policy-asks.${CheckCode | SiteQuestion | 'authority.situation'}`,
  string
> &
  Record<`site.${string}` | `policy-basis.${string}`, string>
