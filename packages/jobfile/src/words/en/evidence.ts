import type { FaultClaim, FaultClass, ScanPhase } from '@shearline/keywork'
import type { Body } from '../../facts/index.ts'

type Supply = Body<'supply-set'>
type Rule = Body<'rule-chosen'>

/** Where readings come from and when they were taken. */
export const readingWords = {
  'vin-source.glass': 'glass',
  'vin-source.plate': 'plate',
  'vin-source.document': 'document',
  'vin-source.bus': 'car itself',
  'battery.flooded': 'flooded lead-acid battery',
  'battery.efb': 'enhanced flooded lead-acid battery',
  'battery.agm': 'glass-mat lead-acid battery',
  'battery.gel': 'gel lead-acid battery',
  'battery.lithium': 'lithium battery',
  'battery.unknown': 'battery kind not known',
  'during.rest': 'at rest',
  'during.session': 'during the session',
  'during.after': 'after the work',
  'rule.replace-all': 'Replace-all session: the list of accepted keys was to be rewritten',
  'rule.append': 'Add-a-key: the new keys were to be added to the list',
  'rule.append-drop-oldest':
    'Add-a-key: the new keys were to be added, and a full list drops its oldest entry',
  'rule.numbered-slots': 'Numbered places: each key was to be put into a place of its own',
  'rule.unknown': 'The teaching rule was not known and was treated as replace-all',
  'break.supply': 'the supply was lost',
  'break.link': 'the connection was lost',
  'break.time-out': 'the time ran out',
  'break.key-refused': 'a key was refused',
  'break.ignition-off': 'the ignition went off',
  'break.operator': 'the technician stopped it',
  'break.unknown': 'the reason is not known',
} as const satisfies Record<
  | `vin-source.${Body<'vin-read'>['source']}`
  | `battery.${Supply['battery']}`
  | `during.${Body<'supply-read'>['during']}`
  | `rule.${Rule['kind']}`
  | `break.${Body<'broke-off'>['why']}`,
  string
>

/** Why the work may have raised a fault, by the rule of the fault comparison. */
export const explanationWords = {
  'explanation.reset-silence':
    'The work restarted the control unit this code names; it was silent for a moment.',
  'explanation.muted-silence': 'The work told the control unit this code names to be silent for a while.',
  'explanation.supply-low-supply-codes': 'The supply was low or interrupted during the work.',
  'explanation.supply-low-silence':
    'The supply was low or interrupted during the work; control units then fall silent one after another.',
  'explanation.key-refused': 'A key that the car did not know was shown during the work.',
  'explanation.immobiliser-teaching': 'The immobiliser was in its session during the work.',
  'explanation.battery-off-steering':
    'The battery was off; the steering finds its middle again when the wheel is turned from lock to lock.',
} as const satisfies Record<`explanation.${string}`, string>

/** Fault classes for a customer: a heading, and what may be said of them and no more. */
export const faultWords = {
  'phase.before': 'before the work',
  'phase.after': 'after the work',
  'phase.cleared': 'after clearing',
  'phase.cycled': 'after an ignition cycle',
  'fault-class.there-before-still': 'There before the work and still there',
  'fault-class.there-before-gone': 'There before the work, not reported in the last scan',
  'fault-class.there-before-back': 'There before the work, cleared, and back',
  'fault-class.raised-by-work': 'Raised by the work',
  'fault-class.new-unexplained': 'New and not explained',
  'fault-class.permanent': 'Permanent',
  'fault-class.not-comparable': 'Could not be compared',
  'fault-means.there-before-still':
    'The car reported these before anything was touched, and again in the last scan. The work did not bring them.',
  'fault-means.there-before-gone':
    'The car reported these before anything was touched, and not in the last scan. That a code is gone does not prove that its cause is mended.',
  'fault-means.there-before-back':
    'The car reported these before anything was touched. They were cleared and came back.',
  'fault-means.raised-by-work':
    'These were not there before. They came up with the work, for the reason given. The last column says whether they are gone.',
  'fault-means.new-unexplained':
    'These were not there before the work, and the record holds no reason for them. They may or may not have to do with the work.',
  'fault-means.permanent':
    'Only the car itself clears these, after its own tests have passed. No equipment can clear them (SAE J1979, service 0A).',
  'fault-means.not-comparable':
    'The control unit was not read both before and after the work, or showed too little. Nothing can be said about what changed.',
  'claim.failing-now': 'failing at the time of the scan',
  'claim.pending': 'pending',
  'claim.confirmed': 'confirmed',
  'claim.failed-this-cycle': 'failed in this cycle',
  'claim.failed-since-clear': 'failed since clearing',
  'claim.warning-lamp': 'asks for its warning lamp',
  'claim.permanent': 'on the permanent list',
  'claim.not-tested-since-clear': 'not tested since clearing',
  'claim.not-tested-this-cycle': 'not tested in this cycle',
  'claim.unit-not-read': 'control unit not read',
  'claim.absent': 'not reported',
  'claim.absent-but-untested': 'not reported, but not yet tested',
  'claim.none': 'reported',
} as const satisfies Record<
  | `phase.${ScanPhase}`
  | `fault-class.${FaultClass}`
  | `fault-means.${FaultClass}`
  | `claim.${FaultClaim | 'none'}`,
  string
>
