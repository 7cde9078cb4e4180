import type { Body } from '../../facts/index.ts'

type Opened = Body<'job-opened'>
type Retention = Body<'retention-set'>['classes'][number]
type Caution = Body<'caution-read'>['caution']

/** What kind of job, who ordered it, what was signed, what is kept. */
export const authorityWords = {
  'work.add-a-key': 'Add a key',
  'work.all-keys-lost': 'All keys lost',
  'work.replace-keys': 'Replace keys',
  'customer.private': 'private customer',
  'customer.trade': 'trade customer',
  'customer.fleet': 'fleet customer',
  'role.identity': 'Identity',
  'role.entitlement': 'Entitlement',
  'decision.refused': 'Refused',
  'decision.held': 'Held',
  'decision.released': 'Released',
  'consent.absent-keys-stop': 'Keys that are not here may stop starting this car',
  'consent.no-check-before': 'Nothing could be checked before the work, because no key works',
  'consent.clear-faults': 'Faults may be cleared; their state was saved first',
  'retention.invoice': 'Invoice',
  'retention.authority-record': 'What was seen of identity and entitlement',
  'retention.identity-image': 'Images of identity documents',
  'retention.photo': 'Photos',
  'retention.recording': 'Recordings of the car',
  'retention.vehicle-secret': 'Sealed vehicle data (backup)',
  'retention.job-rest': 'Everything else of the job',
} as const satisfies Record<
  | `work.${Opened['work']}`
  | `customer.${Opened['customer']}`
  | `role.${Body<'authority-seen'>['role']}`
  | `decision.${Body<'authority-decided'>['decision']}`
  | `consent.${Body<'consent-given'>['about']}`
  | `retention.${Retention['class']}`,
  string
>

/**
 * Cautions: a name and the usual sentence. Sources: the trade practice notes, section 7; HSE, fire-service and
 * maker advice named there. Every one gives way to local law and licensed practice, which `caution.defers` says.
 */
export const cautionWords = {
  'caution.defers': 'These are the usual cautions. Local law and licensed practice come first.',
  'caution.airbag': 'Airbag',
  'caution-means.airbag':
    'An airbag fault that was there before the work is left as it was found. Have it checked by a workshop licensed for airbags.',
  'caution.keyless-can-move': 'Keyless car can become ready to drive',
  'caution-means.keyless-can-move':
    'A car with a proximity key can start when the key is merely near. Keep keys away from the car while anyone works on it.',
  'caution.high-voltage': 'High voltage',
  'caution-means.high-voltage':
    'An electric or hybrid car holds dangerous voltage even when off. Only people trained for it open or touch those parts.',
  'caution.carbon-monoxide': 'Carbon monoxide',
  'caution-means.carbon-monoxide':
    'Never let the engine run in a garage or covered place. With a proximity key, see that the engine is off before you walk away.',
  'caution.roadside': 'Work at the roadside',
  'caution-means.roadside':
    'Passing traffic is the main danger at the roadside. Stand away from the traffic side and move the car to a safe place first if in doubt.',
  'caution.lone-work': 'Working alone',
  'caution-means.lone-work':
    'Someone working alone keeps in touch with another person who knows the place and the time of return.',
  'caution.button-cells': 'Button cells',
  'caution-means.button-cells':
    'A swallowed button cell can burn a child within two hours. Keep cells away from children; if one is swallowed, get medical help at once.',
  'caution.locked-in': 'Nothing living stays inside',
  'caution-means.locked-in':
    'Children and animals stay out of the car during key work: the doors may lock by themselves.',
  'caution.steering-lock': 'Steering lock',
  'caution-means.steering-lock':
    'Do not tow or push the car until the steering lock is seen to be released. After a failed session it can stay locked.',
} as const satisfies Record<`caution.${Caution | 'defers'}` | `caution-means.${Caution}`, string>
