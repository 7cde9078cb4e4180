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

/** Facts about the car that come from reading it: VIN, scans, recordings, supply. */
export const evidenceKinds = {
  'vin-read': z.object({
    source: z.enum(['glass', 'plate', 'document', 'bus']),
    vin: z.string().min(1).max(40),
    /** Control unit that answered, when read from the bus. */
    unit: z.string().exactOptional(),
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
  }),
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
  'clear-requested': z.object({ units: z.array(z.string().min(1)).min(1) }),
  'supply-set': z.object({
    floorVolts: z.number().min(0).max(60),
    floorSource: words,
    battery: z.enum(['flooded', 'efb', 'agm', 'gel', 'lithium', 'unknown']),
    capacityAmpereHours: z.number().positive().exactOptional(),
    supplyAmperes: z.number().min(0).exactOptional(),
  }),
  'supply-read': z.object({
    volts: z.number().min(0).max(60),
    during: z.enum(['rest', 'session', 'after']),
    source: z.enum(['typed', 'recording', 'meter']),
  }),
} as const
