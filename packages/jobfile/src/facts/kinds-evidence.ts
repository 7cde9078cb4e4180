import { z } from 'zod'
import { sha256Hex } from './envelope.ts'

const words = z.string().trim().min(1).max(2000)

const reportedFault = z.object({
  code: z.string().min(1),
  raw: z.string(),
  status: z.number().int().min(0).max(255).nullable(),
  list: z.enum(['confirmed', 'pending', 'permanent']).exactOptional(),
})

const unitScan = z.object({
  unit: z.string().min(1),
  /** Request and response identifiers or addresses, where the source tells them. */
  ids: z.array(z.string().min(1).max(32)).exactOptional(),
  time: z.string().nullable(),
  availability: z.number().int().min(0).max(255).nullable(),
  faults: z.array(reportedFault),
})

/** What the recording or a person saw happen to a control unit; times are seconds as the recording wrote them. */
const workEvent = z.object({
  unit: z.string().min(1),
  what: z.enum(['session-opened', 'reset', 'muted', 'faults-cleared', 'refused', 'supply-low']),
  time: z.string(),
  detail: z.string().exactOptional(),
})

const maybe = (least: number, most: number) => z.number().min(least).max(most).exactOptional()

/** What the supply budget was computed from beyond the floor; absent: not known. Names as in keywork's power file. */
const supplyBudget = z.object({
  hourRate: maybe(1, 100),
  coldCrankingAmperes: maybe(50, 3000),
  ageYears: maybe(0, 50),
  restVolts: maybe(0, 60),
  hoursAtRest: maybe(0, 100_000),
  lastUse: z.enum(['charged', 'drained', 'unknown']).exactOptional(),
  temperatureCelsius: maybe(-60, 80),
  knownBad: z.boolean().exactOptional(),
  monitored: z.boolean().exactOptional(),
  engine: z.enum(['petrol', 'diesel', 'unknown']).exactOptional(),
  supplyKind: z.enum(['none', 'supply', 'charger', 'unknown']).exactOptional(),
  supplyVolts: maybe(10, 16),
  steps: z
    .array(
      z.object({
        name: words,
        minutes: z.number().min(0.1).max(4320),
        loads: z.array(
          z.enum([
            'ignition-on',
            'first-minutes',
            'low-beam',
            'side-lamps',
            'hazard-lamps',
            'interior-lamps',
            'blower',
            'cooling-fan',
            'heated-items',
            'awake',
            'asleep',
          ]),
        ),
        /** Measured or stated current, beside the named loads. */
        amperes: maybe(0, 2000),
      }),
    )
    .min(1),
  /** What was said to the person then. */
  verdict: z.enum(['go', 'connect-supply', 'stop']),
  /** Chance of crossing the floor, 0 to 1. */
  chance: z.number().min(0).max(1),
  /** Least supply that holds the plan; 0 none needed, absent: none is enough. */
  neededAmperes: maybe(0, 2000),
})

/** Facts about the car that come from reading it: VIN, scans, recordings, supply. */
export const evidenceKinds = {
  'vin-read': z.object({
    source: z.enum(['glass', 'plate', 'document', 'bus']),
    vin: z.string().min(1).max(40),
    /** Control unit that answered, when read from the bus. */
    unit: z.string().exactOptional(),
    /** What in a picture it was read from: its letters or a code; absent: typed by a person or read from the bus. */
    picture: z.enum(['letters', 'code']).exactOptional(),
  }),
  'recording-attached': z.object({
    /** What is kept: the messages read from it, one JSON object a line, security payloads redacted. */
    blob: sha256Hex,
    /** SHA-256 of the file as it was; the file itself is not kept, because its frames still hold those payloads. */
    original: sha256Hex,
    name: words,
    bytes: z.number().int().min(0),
    format: words,
    frames: z.number().int().min(0),
    messages: z.number().int().min(0),
    incomplete: z.number().int().min(0),
    negative: z.number().int().min(0),
    findings: z.number().int().min(0),
    /** First and last frame, seconds as the recording wrote them. */
    from: z.string().nullable(),
    to: z.string().nullable(),
    /** Response identifiers of the control units that answered. */
    units: z.array(z.string()),
    events: z.array(workEvent).default([]),
  }),
  'scan-attached': z.object({
    phase: z.enum(['before', 'after', 'cleared', 'cycled']),
    units: z.array(unitScan),
    /** The recording the scan was read from, if any. */
    blob: sha256Hex.exactOptional(),
    /** The report it was read from, kept as the text that was understood, with codes that open things blotted out. */
    source: z
      .object({
        blob: sha256Hex,
        bytes: z.number().int().min(0),
        /** Name of the file it came as; absent: pasted or shared text. */
        name: words.exactOptional(),
        /** SHA-256 of that file as it was; the file itself is not kept. */
        original: sha256Hex.exactOptional(),
      })
      .exactOptional(),
  }),
  /** Whether two names in the scans mean one control unit, said by a person. */
  'unit-matched': z.object({ unit: z.string().min(1), other: z.string().min(1), same: z.boolean() }),
  /** What a control unit is for, said by a person: codes that name a unit can then be held against it. */
  'unit-named': z.object({
    unit: z.string().min(1),
    role: z.enum([
      'engine',
      'transmission',
      'brakes',
      'steering',
      'body',
      'gateway',
      'restraints',
      'instruments',
      'immobiliser',
      'alarm',
      'remote',
    ]),
  }),
  'fault-acknowledged': z.object({ unit: z.string().min(1), code: z.string().min(1), words, signer: words }),
  'clear-requested': z.object({
    units: z.array(z.string().min(1)).min(1),
    /** What the person confirmed before asking: the scan is saved, and warnings on airbag codes, emissions readiness, permanent codes. */
    acknowledged: z.array(z.enum(['scan-saved', 'airbag', 'emissions', 'permanent'])).exactOptional(),
  }),
  'supply-set': z.object({
    floorVolts: z.number().min(0).max(60),
    floorSource: words,
    battery: z.enum(['flooded', 'efb', 'agm', 'gel', 'lithium', 'unknown']),
    capacityAmpereHours: z.number().positive().exactOptional(),
    supplyAmperes: z.number().min(0).exactOptional(),
    targetVolts: z.number().min(10).max(16).exactOptional(),
    targetSource: words.exactOptional(),
    /** Below this the work stops at once. */
    stopVolts: z.number().min(0).max(60).exactOptional(),
    /** Floor and target are the vehicle maker's instruction; the source then names it. */
    makerSays: z.boolean().exactOptional(),
    budget: supplyBudget.exactOptional(),
  }),
  'supply-read': z.object({
    volts: z.number().min(0).max(60),
    during: z.enum(['rest', 'session', 'after']),
    source: z.enum(['typed', 'recording', 'meter']),
    /** So many readings of which this is the lowest. */
    lowestOf: z.number().int().min(1).exactOptional(),
    /** The kept recording it was read from. */
    blob: sha256Hex.exactOptional(),
    readAt: z.enum(['battery', 'socket']).exactOptional(),
    /** After the work: the support supply was taken off before this reading. */
    supplyRemoved: z.boolean().exactOptional(),
    /** After the work: current at the battery, so many minutes after the car was locked. */
    drain: z
      .object({ amperes: z.number().min(0).max(1000), minutes: z.number().min(0).max(1440) })
      .exactOptional(),
  }),
} as const
