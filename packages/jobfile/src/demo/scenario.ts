/** @module The invented jobs that come with a new data folder. No make, shop, person or car in here exists. */
import { at, type KeyFunction, type SceneFact, tested } from './write.ts'

/** Time zone of the invented coastal town. */
export const zone = 'Europe/Lisbon'

/** The VIN of the demo van: right check digit, maker prefix from a range no maker is registered in. */
export const demoVin = 'T6SHVN3A0R0042788'

/** Everything of the van job up to the open teaching session: five entries stored, two keys and a clone here. */
export function vanUntilSession(): SceneFact[] {
  return [
    at(0, 'job-opened', {
      title: 'Small van, five keys stored',
      place: 'Harbour car park, bay 14',
      zone,
      work: 'add-a-key',
      customer: 'fleet',
      vehicle: 'Small van of a hire firm, 2024',
      demo: true,
    }),
    at(1, 'keys-said', { count: 4, absent: ['spare at the depot'] }),
    at(2, 'note-written', {
      text: 'Two more keys wanted. Starts well. All keys to be brought, identity and fleet letter too.',
    }),
    at(30, 'authority-seen', {
      role: 'identity',
      document: 'identity card',
      issuer: 'civil registry',
      lastCharacters: '418',
      original: true,
      matched: true,
      checkedBy: 'technician',
    }),
    at(31, 'authority-seen', {
      role: 'entitlement',
      document: 'signed work order of the hire firm',
      issuer: 'fleet office',
      lastCharacters: '2207',
      original: true,
      matched: true,
      checkedBy: 'technician',
    }),
    at(34, 'vin-read', { source: 'glass', vin: demoVin }),
    at(34.5, 'vin-read', { source: 'document', vin: demoVin }),
    ...vanKeys(),
    ...vanTestsBefore(),
    at(42, 'supply-read', { volts: 12.1, during: 'rest', source: 'typed' }),
    at(43, 'key-count-read', { when: 'before', count: 5, source: 'equipment' }),
    at(44, 'difference-explained', {
      code: 'said-more-than-bench',
      reason: 'The spare stays at the depot; the office cannot bring it today.',
    }),
    at(44.5, 'difference-explained', {
      code: 'stored-more-than-bench',
      reason:
        'One is the spare at the depot. Two were never handed back by earlier drivers, says the fleet office.',
    }),
    at(46, 'rule-chosen', {
      kind: 'replace-all',
      commits: 'at-close',
      erases: 'at-close',
      onBreak: 'revert',
      opensWith: 'equipment',
      sameKeyTwice: 'refused',
      capacity: 8,
      source: 'notes of the firm on this van',
    }),
    at(47, 'supply-set', {
      floorVolts: 12.5,
      floorSource: 'common practice, no source; the vehicle maker\u2019s instruction wins',
      battery: 'flooded',
      capacityAmpereHours: 60,
      supplyAmperes: 30,
    }),
    at(48, 'consent-given', {
      about: 'absent-keys-stop',
      absentKeys: ['spare at the depot'],
      signer: 'fleet manager',
    }),
    at(49, 'rehearsal-read', { order: ['A', 'B', 'D', 'E'], strandedAt: [], wayBack: 'reopen' }),
    at(53, 'backup-proven', {
      firstRead: backupHash,
      secondRead: backupHash,
      what: 'immobiliser data of the body control unit',
    }),
    at(54, 'blank-chosen', {
      item: 'van shelf 3, flip blank',
      carrierMegahertz: 433.92,
      transponder: 'as key A',
      profile: 'as key A',
      fits: true,
    }),
    at(56, 'session-opened', { rehearsed: true }),
    at(57, 'supply-read', { volts: 13.6, during: 'session', source: 'meter' }),
    at(58, 'key-taught', { key: 'A', carCount: 1, volts: 13.6 }),
  ]
}

/** SHA-256 of the words "demo-van: backup of the immobiliser data, read twice alike": there is no such backup. */
const backupHash = 'ba96f9dc53f35f405dc5d8c5b1c26dcbad16f9f27f8bffd0ad7693f2ead377d0'

function vanKeys(): SceneFact[] {
  const lacks: KeyFunction[] = ['panic', 'blade-boot']
  return [
    at(35, 'key-labelled', {
      key: 'A',
      origin: 'existing',
      form: 'flip',
      make: 'genuine',
      colour: 'brass',
      onBench: true,
      lacks,
      note: 'worn, works',
    }),
    at(35.3, 'key-labelled', {
      key: 'B',
      origin: 'existing',
      form: 'flip',
      make: 'genuine',
      colour: 'sky',
      onBench: true,
      lacks,
      note: 'flat cell',
    }),
    at(35.6, 'key-labelled', {
      key: 'C',
      origin: 'existing',
      form: 'transponder',
      make: 'aftermarket',
      colour: 'moss',
      onBench: true,
      cloneOf: 'A',
      lacks,
      note: 'bought by an earlier driver',
    }),
    at(50, 'key-labelled', {
      key: 'D',
      origin: 'new',
      form: 'flip',
      make: 'aftermarket',
      colour: 'plum',
      onBench: true,
      lacks,
    }),
    at(50.3, 'key-labelled', {
      key: 'E',
      origin: 'new',
      form: 'flip',
      make: 'aftermarket',
      colour: 'rust',
      onBench: true,
      lacks,
    }),
  ]
}

function vanTestsBefore(): SceneFact[] {
  return [
    ...tested(37, 'A', 'before', {
      start: 'works',
      lock: 'works',
      unlock: 'works',
      boot: 'works',
      'blade-door': 'works',
      'blade-ignition': 'works',
    }),
    ...tested(38, 'B', 'before', {
      start: 'works',
      lock: 'fails',
      unlock: 'fails',
      boot: 'fails',
      'blade-door': 'works',
      'blade-ignition': 'works',
    }),
    ...tested(39, 'C', 'before', { start: 'works', 'blade-door': 'works', 'blade-ignition': 'works' }),
  ]
}

/** The rest of the van job: session closed, everything proven, all but the scans, which come from recordings. */
export function vanAfterSession(): SceneFact[] {
  const all = {
    start: 'works',
    lock: 'works',
    unlock: 'works',
    boot: 'works',
    'blade-door': 'works',
    'blade-ignition': 'works',
  } as const
  return [
    at(60, 'key-taught', { key: 'B', carCount: 2, volts: 13.5 }),
    at(62, 'key-taught', { key: 'D', carCount: 3, volts: 13.5 }),
    at(64, 'key-taught', { key: 'E', carCount: 4, volts: 13.4 }),
    at(65, 'session-closed', { carCount: 4 }),
    at(66, 'note-written', { text: 'New cell in key B.' }),
    at(67, 'key-count-read', { when: 'after', count: 4, source: 'equipment' }),
    ...tested(68, 'A', 'after', all),
    ...tested(69, 'B', 'after', all),
    ...tested(70, 'C', 'after', { start: 'works', 'blade-door': 'works', 'blade-ignition': 'works' }),
    ...tested(71, 'D', 'after', all),
    ...tested(72, 'E', 'after', all),
    at(74, 'supply-read', { volts: 12.6, during: 'after', source: 'meter' }),
    at(75, 'blank-used', { item: 'van shelf 3, flip blank', key: 'D', outcome: 'used' }),
    at(75.5, 'blank-used', { item: 'van shelf 3, flip blank', key: 'E', outcome: 'used' }),
  ]
}

/** What is settled with the customer at the end: cautions, price, warranty, how long what is kept. */
export function settled(minute: number): SceneFact[] {
  const cautions = ['steering-lock', 'carbon-monoxide', 'locked-in', 'button-cells'] as const
  return [
    ...cautions.map((caution, index) => at(minute + index * 0.2, 'caution-read', { caution })),
    at(minute + 1, 'price-agreed', {
      currency: 'EUR',
      lines: [
        { text: 'Attendance and preparation', amountMinor: 9000 },
        { text: 'Two flip keys, cut and taught', amountMinor: 26000 },
      ],
    }),
    at(minute + 1.5, 'warranty-given', { months: 12, excludes: ['cells', 'water', 'drops'] }),
    at(minute + 2, 'retention-set', {
      pack: 'neutral, check your local law',
      classes: [
        { class: 'invoice', days: 3650, source: 'common practice, no source: check your tax law' },
        {
          class: 'authority-record',
          days: 1095,
          source: 'common practice, no source: check your local rules',
        },
        { class: 'recording', days: 365, source: 'common practice, no source' },
        {
          class: 'vehicle-secret',
          days: 30,
          source: 'common practice, no source: as short as the job allows',
        },
      ],
    }),
  ]
}
