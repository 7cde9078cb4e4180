/** @module Two more invented jobs, so that a first board shows a day: one in trouble on arrival, one done. */
import { settled, zone } from './scenario.ts'
import { at, type SceneFact, tested } from './write.ts'

const carVin = 'T6SHVN5C9N0017364'
const carVinMisread = 'T6SHVN5C9N0017346'

/** An estate car whose document and glass disagree in two characters: identity stands high. */
export function estateOnArrival(): SceneFact[] {
  return [
    at(0, 'job-opened', {
      title: 'Estate car, spare wanted',
      place: 'Ferry terminal, lane 3',
      zone,
      work: 'add-a-key',
      customer: 'private',
      vehicle: 'Estate car, 2022, keyless',
      demo: true,
    }),
    at(1, 'keys-said', { count: 1, absent: [] }),
    at(3, 'note-written', { text: 'Customer sails at 17:40. One proximity key, works.' }),
    at(12, 'authority-seen', {
      role: 'identity',
      document: 'passport',
      issuer: 'civil registry',
      lastCharacters: '93K',
      original: true,
      matched: true,
      checkedBy: 'technician',
    }),
    at(14, 'vin-read', { source: 'glass', vin: carVin }),
    at(15, 'vin-read', { source: 'document', vin: carVinMisread }),
    at(17, 'key-labelled', {
      key: 'A',
      origin: 'existing',
      form: 'proximity',
      make: 'genuine',
      colour: 'slate',
      onBench: true,
    }),
    at(19, 'supply-read', { volts: 12.5, during: 'rest', source: 'typed' }),
  ]
}

/** Everything the saloon's proximity keys can do. */
const keyless = {
  'emergency-start': 'works',
  'passive-start': 'works',
  'passive-entry': 'works',
  lock: 'works',
  unlock: 'works',
  boot: 'works',
  'blade-door': 'works',
} as const

/** A finished job: one proximity key added to a list that keeps the others. Scans are added from recordings. */
export function saloonUntilScan(): SceneFact[] {
  return [
    at(0, 'job-opened', {
      title: 'Saloon, one key added',
      place: 'Lighthouse road 8',
      zone,
      work: 'add-a-key',
      customer: 'private',
      vehicle: 'Saloon, 2021, keyless',
      demo: true,
    }),
    at(1, 'keys-said', { count: 1, absent: [] }),
    at(20, 'authority-seen', {
      role: 'identity',
      document: 'driving licence',
      issuer: 'road office',
      lastCharacters: '071',
      original: true,
      matched: true,
      checkedBy: 'technician',
    }),
    at(21, 'authority-seen', {
      role: 'entitlement',
      document: 'registration document',
      issuer: 'road office',
      lastCharacters: '55A',
      original: true,
      matched: true,
      checkedBy: 'technician',
    }),
    at(24, 'vin-read', { source: 'glass', vin: 'T6SHBK2D1M0090215' }),
    at(25, 'vin-read', { source: 'plate', vin: 'T6SHBK2D1M0090215' }),
    at(26, 'key-labelled', {
      key: 'A',
      origin: 'existing',
      form: 'proximity',
      make: 'genuine',
      colour: 'slate',
      onBench: true,
      lacks: ['panic'],
    }),
    at(27, 'key-labelled', {
      key: 'B',
      origin: 'new',
      form: 'proximity',
      make: 'genuine',
      colour: 'plum',
      onBench: true,
      lacks: ['panic'],
    }),
    ...tested(28, 'A', 'before', keyless),
    at(31, 'supply-read', { volts: 12.7, during: 'rest', source: 'typed' }),
    at(32, 'key-count-read', { when: 'before', count: 1, source: 'car' }),
    at(33, 'rule-chosen', {
      kind: 'append',
      commits: 'each-key',
      erases: 'never',
      onBreak: 'keep-so-far',
      opensWith: 'accepted-key',
      sameKeyTwice: 'ignored',
      capacity: 5,
      source: 'owner handbook',
    }),
    at(34, 'supply-set', {
      floorVolts: 12.4,
      floorSource: 'common practice, no source; the vehicle maker\u2019s instruction wins',
      battery: 'agm',
      capacityAmpereHours: 70,
      supplyAmperes: 30,
    }),
    at(35, 'rehearsal-read', { order: ['B'], strandedAt: [], wayBack: 'not-needed' }),
    at(36, 'backup-waived', { because: 'Nothing is written but the new entry; the list keeps the others.' }),
    at(37, 'blank-chosen', { item: 'van shelf 5, proximity key', carrierMegahertz: 433.92, fits: true }),
  ]
}

/** The session and the proof of the finished job. */
export function saloonAfterScan(): SceneFact[] {
  return [
    at(41, 'session-opened', { rehearsed: true }),
    at(43, 'key-taught', { key: 'B', carCount: 2, volts: 13.4 }),
    at(44, 'session-closed', { carCount: 2 }),
    ...tested(46, 'A', 'after', keyless),
    ...tested(49, 'B', 'after', keyless),
    at(52, 'supply-read', { volts: 12.8, during: 'after', source: 'typed' }),
    at(53, 'blank-used', { item: 'van shelf 5, proximity key', key: 'B', outcome: 'used' }),
    at(54, 'caution-read', { caution: 'keyless-can-move' }),
    ...settled(56),
  ]
}
