/** @module What is known at the start of an exercise, as the facts a job would hold by then. */
import type { Exercise } from '@shearline/practice-car'
import type { Draft } from '../sync/write.ts'
import { t } from '../words/index.ts'
import { exerciseWords } from './practice-words.ts'

type Labelled = Extract<Draft, { kind: 'key-labelled' }>['body']

const colours: readonly Labelled['colour'][] = ['brass', 'sky', 'moss', 'plum', 'rust', 'sand']
/** Below this a session is at risk; common practice, no source. */
const floorVolts = 12

/** Job, keys, stored count, rule, backup and supply of an exercise. */
export function firstFacts(exercise: Exercise, zone: string): readonly Draft[] {
  const { car, gate } = exercise
  const { title } = exerciseWords(exercise)
  const fresh = car.keys.find((key) => !car.stored.includes(key.identity))
  return [
    {
      kind: 'job-opened',
      body: {
        title,
        place: t('practice.place'),
        zone,
        work: 'add-a-key',
        customer: 'private',
        vehicle: t('practice.vehicle'),
        demo: true,
      },
    },
    ...car.keys.map((key, index): Draft => {
      const original = car.keys.slice(0, index).find((other) => other.identity === key.identity)
      return {
        kind: 'key-labelled',
        body: {
          key: key.label,
          origin: car.stored.includes(key.identity) ? 'existing' : 'new',
          form: 'remote-head',
          colour: colours[index % colours.length] ?? 'brass',
          onBench: key.onBench,
          cloneOf: original?.label ?? null,
        },
      }
    }),
    { kind: 'key-count-read', body: { when: 'before', count: car.stored.length, source: 'car' } },
    {
      kind: 'rule-chosen',
      body: {
        ...car.rule,
        accepts: [...car.rule.accepts],
        source: t('practice.rule-source'),
        newKeys: fresh?.state === 'blank' ? 'blank' : 'prepared',
        seconds: { open: 15, show: 10, close: 5, restore: 600 },
        ...(gate === undefined
          ? {}
          : {
              codeAtHand: true,
              gate: {
                triesBeforeWait: gate.triesBeforeWait,
                waitSeconds: gate.waitSeconds,
                ignitionOff: 'runs' as const,
                supplyLost: 'runs' as const,
              },
            }),
      },
    },
    ...(exercise.backup
      ? [
          {
            kind: 'backup-proven' as const,
            body: { firstRead: listHash, secondRead: listHash, what: t('practice.backup') },
          },
        ]
      : []),
    {
      kind: 'supply-set',
      body: { floorVolts, floorSource: t('practice.floor-source'), battery: 'flooded' },
    },
  ]
}

/** Stands for the hash of the saved list: in practice nothing is read, so there is nothing to hash. */
const listHash = '0'.repeat(64)
