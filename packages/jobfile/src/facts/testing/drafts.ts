import type { BodyInput, Kind } from '../index.ts'

const hash = 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'
const other = '4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4'
const id = '4f1c0a5e-6f0e-4c7b-9d1e-2f6a3b7c8d90'
const publicKey = '11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo'
const device = 'dev-21fe31dfa154a261'
const signature = 'A'.repeat(86)

/**
 * Bodies of every kind in its present version: one with as little as may be written, one with everything.
 * `examples.ts` freezes them; keyed by every kind, so that a new one without an example fails to compile.
 */
export const drafts: { readonly [K in Kind]: readonly [BodyInput<K>, ...BodyInput<K>[]] } = {
  'job-opened': [
    {
      title: 'Small van',
      place: 'Harbour car park, bay 14',
      zone: 'Europe/Lisbon',
      work: 'add-a-key',
      customer: 'fleet',
      vehicle: 'small van of a hire firm',
    },
    {
      title: 'Estate car, no key works',
      place: 'Mole 3',
      zone: 'Europe/Lisbon',
      work: 'all-keys-lost',
      customer: 'private',
      vehicle: 'estate car',
      language: 'en',
      demo: true,
    },
  ],
  'call-taken': [
    { channel: 'phone', starts: null, keyless: null },
    {
      channel: 'office',
      starts: true,
      keyless: false,
      toBring: ['every key', 'fleet letter'],
      words: 'Two keys wanted.',
    },
  ],
  'appointment-made': [
    { from: '2026-01-12T08:00:00.000Z', place: 'Harbour' },
    { from: '2026-01-12T08:00:00.000Z', to: '2026-01-12T10:00:00.000Z', place: 'Harbour' },
  ],
  'appointment-ended': [{ outcome: 'kept' }, { outcome: 'moved', because: 'Car not back yet.' }],
  'quote-given': [
    { currency: 'EUR', lines: [{ text: 'Two flip keys', amountMinor: 26_000 }] },
    {
      currency: 'JPY',
      lines: [
        { text: 'One key', amountMinor: 30_000 },
        { text: 'Known customer', amountMinor: -500 },
      ],
      validUntil: '2026-02-01T00:00:00.000Z',
    },
  ],
  'policy-answered': [
    { pack: 'neutral default, any, 2026-11-01', question: 'authority.original-seen', answer: true },
    {
      pack: 'neutral default, any, 2026-11-01',
      question: 'authority.kind',
      answer: 'fleet',
      because: 'Work order.',
    },
  ],
  'plan-accepted': [
    { plan: hash, order: ['A', 'D'], signer: 'fleet manager' },
    { plan: hash, order: ['A', 'B', 'D', 'E'], signer: 'fleet manager', signature: other },
  ],
  'step-done': [
    { step: 'Doors closed, ignition off', outcome: 'done' },
    { step: 'Start once', outcome: 'left-out', because: 'Car on a ferry.' },
    { step: '2. Fetch key B', of: { code: 'recovery.fetch', key: 'B', place: 2 }, outcome: 'done' },
  ],
  'signature-drawn': [
    { signer: 'fleet manager', for: 'handover', blob: hash },
    { signer: 'fleet manager', for: 'consent', blob: hash, fact: id, salt: 'q83vEjRWeJA' },
  ],
  'photo-attached': [
    { blob: hash, mediaType: 'image/jpeg', bytes: 81_234, shows: 'odometer' },
    { blob: hash, mediaType: 'image/webp', bytes: 1, shows: 'key', key: 'A', words: 'worn blade' },
  ],
  'vehicle-handed-over': [{ to: 'fleet driver' }, { to: 'fleet driver', keys: ['A', 'B', 'D', 'E'] }],
  'authority-seen': [
    {
      role: 'identity',
      document: 'identity card',
      issuer: 'civil registry',
      lastCharacters: '418',
      original: true,
      matched: true,
      checkedBy: 'technician',
    },
    {
      role: 'entitlement',
      document: 'work order',
      issuer: 'fleet office',
      lastCharacters: '2207',
      original: false,
      matched: false,
      checkedBy: 'office',
      salt: 'q83vEjRWeJA',
    },
  ],
  'authority-decided': [{ decision: 'held', reason: 'Waiting for the fleet letter.' }],
  'consent-given': [
    { about: 'clear-faults', signer: 'fleet manager' },
    {
      about: 'absent-keys-stop',
      absentKeys: ['spare at the depot'],
      signer: 'fleet manager',
      signature: hash,
      salt: 'q83vEjRWeJA',
    },
  ],
  'caution-read': [{ caution: 'steering-lock' }],
  'price-agreed': [{ currency: 'EUR', lines: [{ text: 'Two flip keys', amountMinor: 26_000 }] }],
  'invoice-issued': [
    {
      number: '2026-017',
      issued: '2026-01-12',
      due: '2026-01-26',
      currency: 'EUR',
      seller: { name: 'Harbour Keys', vatId: 'PT999999990', city: 'Ponta Clara', country: 'PT' },
      buyer: { name: 'Tidewater Hire', country: 'PT' },
      lines: [{ text: 'Two flip keys', netMinor: 21_138, category: 'S', rateBasisPoints: 2300 }],
    },
    {
      number: '2026-018',
      issued: '2026-01-12',
      delivered: '2026-01-12',
      terms: 'Paid on the spot.',
      currency: 'EUR',
      seller: {
        name: 'Harbour Keys',
        taxNumber: '17/204',
        registerNumber: 'R 4471',
        street: 'Quay street 3',
        postCode: '1000-001',
        country: 'PT',
      },
      buyer: { name: 'Keeper of the van', country: 'PT' },
      lines: [{ text: 'Attendance', netMinor: 9000, category: 'E', rateBasisPoints: 0 }],
      reasons: { E: 'Small business' },
      paidMinor: 9000,
      roundingMinor: 0,
      payment: 'transfer',
      account: 'PT50000000000000000000000',
    },
  ],
  'warranty-given': [{ months: 12 }, { months: 24, excludes: ['cells', 'water'] }],
  'note-written': [{ text: 'Gate code asked by telephone.' }],
  corrected: [
    { fact: id, action: 'withdrawn', reason: 'Read from the car beside it.' },
    { fact: id, action: 'replaced', body: { count: 3, absent: [] }, v: 1, reason: 'Counted again.' },
  ],
  'document-sealed': [
    { count: 41, root: hash, language: 'en', ready: true },
    { count: 7, root: hash, language: 'en', ready: false, open: ['vin-missing'] },
  ],
  'vin-read': [
    { source: 'glass', vin: 'T6SHVN3A0R0042788' },
    { source: 'bus', vin: 'T6SHVN3A0R0042788', unit: '7E8' },
    { source: 'plate', vin: 'T6SHVN3A0R0042788', picture: 'letters' },
    { source: 'document', vin: 'T6SHVN3A0R0042788', picture: 'code' },
  ],
  'recording-attached': [
    {
      blob: hash,
      original: other,
      name: 'arrival.log',
      bytes: 120_000,
      format: 'candump',
      frames: 3_000,
      messages: 120,
      incomplete: 0,
      negative: 3,
      findings: 1,
      from: '1767960000.000000',
      to: null,
      units: ['7E8'],
      events: [{ unit: '7E8', what: 'session-opened', time: '1767960010.5' }],
    },
    {
      blob: hash,
      original: other,
      name: 'empty.log',
      bytes: 0,
      format: 'candump',
      frames: 0,
      messages: 0,
      incomplete: 0,
      negative: 0,
      findings: 0,
      from: null,
      to: null,
      units: [],
      events: [{ unit: '7E8', what: 'refused', time: '0', detail: 'NRC 22' }],
    },
  ],
  'scan-attached': [
    { phase: 'before', units: [] },
    {
      phase: 'before',
      units: [{ unit: 'Engine', ids: ['7E0', '7E8'], time: null, availability: null, faults: [] }],
      source: { blob: hash, bytes: 120, name: 'report.pdf', original: other },
    },
    {
      phase: 'after',
      units: [
        {
          unit: '7B8',
          time: '11.0',
          availability: 127,
          faults: [
            { code: 'C0035-11', raw: '403511', status: 8 },
            { code: 'P0562', raw: '0562', status: null, list: 'pending' },
          ],
        },
        { unit: '7E8', time: null, availability: null, faults: [] },
      ],
      blob: hash,
    },
  ],
  'unit-named': [{ unit: '7B8', role: 'brakes' }],
  'unit-matched': [
    { unit: 'Brake control', other: 'BRAKES', same: true },
    { unit: 'Door (760)', other: 'Door (768)', same: false },
  ],
  'fault-acknowledged': [
    { unit: '7B8', code: 'C0035-11', words: 'Known to the firm.', signer: 'fleet manager' },
  ],
  'clear-requested': [{ units: ['7E8', '7B8'] }, { units: ['7E8'], acknowledged: ['airbag', 'emissions'] }],
  'supply-set': [
    { floorVolts: 12.5, floorSource: 'common practice', battery: 'unknown' },
    { floorVolts: 12.5, floorSource: 'maker', battery: 'agm', capacityAmpereHours: 70, supplyAmperes: 30 },
    {
      floorVolts: 12.2,
      floorSource: 'workshop manual, before programming',
      battery: 'efb',
      targetVolts: 13.6,
      targetSource: 'workshop manual, before programming',
      stopVolts: 11.7,
      makerSays: true,
      budget: {
        restVolts: 12.4,
        ageYears: 4,
        temperatureCelsius: -2,
        lastUse: 'charged',
        monitored: true,
        supplyKind: 'supply',
        steps: [{ name: 'Teach', minutes: 15, loads: ['ignition-on'], amperes: 2 }],
        verdict: 'go',
        chance: 0.01,
        neededAmperes: 25,
      },
    },
  ],
  'supply-read': [
    { volts: 12.1, during: 'rest', source: 'typed' },
    { volts: 12.6, during: 'session', source: 'recording', lowestOf: 240, blob: hash, readAt: 'socket' },
    {
      volts: 12.5,
      during: 'after',
      source: 'typed',
      supplyRemoved: true,
      drain: { amperes: 0.03, minutes: 45 },
    },
  ],
  'keys-said': [{ count: 0 }, { count: 4, absent: ['spare at the depot'] }],
  'key-labelled': [
    { key: 'A', origin: 'existing', form: 'flip', colour: 'brass', onBench: true },
    { key: 'A', origin: 'existing', form: 'flip', colour: 'brass', onBench: true, shownAs: 'key 1' },
    {
      key: 'B',
      origin: 'existing',
      form: 'proximity',
      colour: 'sky',
      onBench: true,
      cell: { cells: 1, restVolts: 3.05, loadedVolts: 2.4, replaced: true },
    },
    {
      key: 'C1',
      origin: 'new',
      form: 'transponder',
      make: 'aftermarket',
      colour: 'moss',
      onBench: false,
      cloneOf: 'A',
      lacks: ['panic', 'blade-boot'],
      note: 'clone of A',
    },
  ],
  'key-count-read': [
    { when: 'before', count: 5, source: 'car' },
    { when: 'after', count: null, source: 'equipment', because: 'The car shows none.' },
  ],
  'function-tested': [
    { key: 'A', function: 'start', phase: 'before', outcome: 'works' },
    {
      key: 'B',
      function: 'passive-entry',
      phase: 'after',
      outcome: 'not-tested',
      because: 'flat cell',
      customerPresent: true,
    },
  ],
  'difference-explained': [{ code: 'said-more-than-bench', reason: 'The spare stays at the depot.' }],
  'blank-chosen': [
    { item: 'van shelf 3, flip blank', fits: null },
    {
      item: 'van shelf 3, flip blank',
      carrierMegahertz: 433.92,
      transponder: 'as key A',
      profile: 'as key A',
      fits: true,
    },
  ],
  'remote-compared': [
    {
      verdict: 'same',
      reasons: [
        { code: 'modulation', points: 'same', side: 'both' },
        { code: 'carrier-drifted', points: 'same', side: 'new' },
      ],
      original: {
        modulation: 'OOK',
        carrierHertz: 433_920_000,
        deviationHertz: null,
        symbolsPerSecond: 2500,
        snrDecibels: 18.5,
        key: 'A',
      },
      fresh: {
        modulation: 'OOK',
        carrierHertz: 433_965_000,
        deviationHertz: null,
        symbolsPerSecond: 2510,
        snrDecibels: 21,
        key: 'B',
      },
    },
    {
      verdict: 'unsure',
      reasons: [{ code: 'no-sender', points: 'unsure', side: 'new' }],
      original: {
        modulation: '2-FSK',
        carrierHertz: null,
        deviationHertz: 20_000,
        symbolsPerSecond: 10_000,
        snrDecibels: 12,
      },
      fresh: {
        modulation: 'unsure',
        carrierHertz: null,
        deviationHertz: null,
        symbolsPerSecond: null,
        snrDecibels: null,
      },
    },
  ],
  'blank-used': [
    { item: 'van shelf 3, flip blank', outcome: 'spoiled' },
    { item: 'van shelf 3, flip blank', key: 'D', outcome: 'used' },
  ],
  'rule-chosen': [
    {
      kind: 'replace-all',
      commits: 'at-close',
      erases: 'at-close',
      onBreak: 'revert',
      opensWith: 'equipment',
      sameKeyTwice: 'refused',
      capacity: 8,
      source: 'notes of the firm',
    },
  ],
  'rehearsal-read': [
    { order: ['A'], wayBack: 'none' },
    { order: ['A', 'B', 'D'], strandedAt: ['teach B'], wayBack: 'reopen' },
  ],
  'backup-proven': [
    { firstRead: hash, secondRead: hash, what: 'immobiliser data' },
    {
      firstRead: hash,
      secondRead: hash,
      what: 'immobiliser data',
      digest: 'hmac-sha256',
      bytes: 4096,
      blob: other,
    },
  ],
  'backup-waived': [{ because: 'The unit cannot be read.' }],
  'session-opened': [{ rehearsed: true }],
  'key-taught': [{ key: 'A' }, { key: 'B', carCount: 2, volts: 13.5 }],
  'session-closed': [{}, { carCount: 4 }],
  'broke-off': [
    { why: 'unknown', after: 'A' },
    { why: 'supply', after: 'A', volts: 11.2 },
  ],
  'break-off-mended': [{ how: 'Session opened again from the start.' }],
  'retention-set': [
    {
      pack: 'neutral default, any, 2026-11-01',
      classes: [{ class: 'invoice', days: 2190, source: 'common practice' }],
    },
    {
      pack: 'neutral default, any, 2026-11-01',
      classes: [
        {
          class: 'vehicle-secret',
          days: 0,
          trigger: 'purpose-ended',
          source: 'common practice, check your law',
        },
        { class: 'job-rest', days: 2190, trigger: 'handed-over', source: 'common practice, check your law' },
      ],
    },
  ],
  'purpose-ended': [{ class: 'vehicle-secret', because: 'Warranty work settled.' }],
  'hold-placed': [
    { reason: 'Letter of a solicitor.' },
    { reason: 'Insurer asks for the photos.', classes: ['photo', 'recording'] },
  ],
  'hold-lifted': [{ hold: id, reason: 'Settled.' }],
  'deletion-proven': [
    {
      class: 'photo',
      items: [{ fact: id, what: 'blob', sha256: hash, keyDestroyed: true }],
      why: 'Due.',
      pack: 'neutral default, any, 2026-11-01',
    },
    {
      class: 'authority-record',
      items: [
        { fact: id, what: 'body', sha256: hash, keyDestroyed: false },
        { fact: id, what: 'document', sha256: other, keyDestroyed: false },
      ],
      why: 'Due.',
      pack: 'firm rules, Portugal, 2026-06-01',
    },
  ],
  'secret-sealed': [
    { what: 'immobiliser data', blob: hash, bytes: 4_200 },
    {
      what: 'immobiliser data',
      class: 'immobiliser-data',
      blob: hash,
      bytes: 4_200,
      secretBytes: 4_096,
      digest: other,
      recipients: ['office', 'safe'],
      passphrase: false,
    },
  ],
  'secret-opened': [{ blob: hash, reason: 'Control unit replaced; data written back by the workshop.' }],
  'device-enrolled': [{ device, name: 'office', publicKey, approvedBy: 'owner' }],
  'device-key-rotated': [
    {
      newDevice: device,
      name: 'van tablet 2',
      newPublicKey: publicKey,
      proof: signature,
      because: 'New tablet.',
    },
  ],
  'device-revoked': [
    { device, because: 'retired', from: '2026-02-01T00:00:00.000Z', last: null, reason: 'Sold.' },
    {
      device,
      because: 'stolen',
      from: '2026-02-01T00:00:00.000Z',
      last: { seq: 41, hash },
      reason: 'Taken from the van.',
    },
  ],
}
