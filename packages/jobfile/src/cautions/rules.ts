/** @module The rules as data: one row per caution and reason. A row without conditions holds for every job. */
import type { Body } from '../facts/index.ts'
import type { ChapterName } from '../fold/state.ts'
import type { SiteQuestion } from '../policy/index.ts'

export type Caution = Body<'caution-read'>['caution']
type Form = Body<'key-labelled'>['form']

/** One thing that may be so on record. */
export type Condition =
  | { readonly answered: SiteQuestion; readonly with: readonly string[] }
  | { readonly keyForm: readonly Form[] }
  | { readonly airbagFault: true }

export interface CautionRule {
  readonly caution: Caution
  /** Any one of these; none: always. */
  readonly when: readonly Condition[]
  /** Where in the day it matters: it is shown there until somebody has read it. */
  readonly chapters: readonly ChapterName[]
  readonly source: string
}

const withCells: readonly Form[] = ['remote-head', 'flip', 'proximity', 'card']

export const cautionRules: readonly CautionRule[] = [
  {
    caution: 'steering-lock',
    when: [],
    chapters: ['teach', 'prove'],
    source:
      'trade practice notes 7.9: maker’s symptom text for the steering-lock unit; the rest common practice',
  },
  {
    caution: 'carbon-monoxide',
    when: [{ answered: 'site.place', with: ['indoors'] }],
    chapters: ['arrival', 'teach', 'prove'],
    source: 'trade practice notes 7.5: never run the engine in a garage or under a covered place',
  },
  {
    caution: 'carbon-monoxide',
    when: [],
    chapters: ['prove', 'handover'],
    source: 'trade practice notes 7.5: press on deaths with keyless cars 2015 to 2018',
  },
  {
    caution: 'locked-in',
    when: [],
    chapters: ['arrival', 'teach'],
    source: 'trade practice notes 7.8: common practice, no source',
  },
  {
    caution: 'locked-in',
    when: [{ answered: 'site.inside', with: ['child-or-animal-near'] }],
    chapters: ['arrival', 'teach', 'prove', 'handover'],
    source: 'trade practice notes 7.8: common practice, no source',
  },
  {
    caution: 'keyless-can-move',
    when: [{ keyForm: ['proximity', 'card'] }],
    chapters: ['arrival', 'teach', 'prove'],
    source: 'trade practice notes 7.3: vehicle-recovery institute, rules of 2022',
  },
  {
    caution: 'button-cells',
    when: [{ keyForm: withCells }],
    chapters: ['arrival', 'prepare', 'handover'],
    source: 'trade practice notes 7.7: consumer product safety commission and council notices',
  },
  {
    caution: 'high-voltage',
    when: [{ answered: 'site.drive', with: ['electric', 'hybrid'] }],
    chapters: ['arrival', 'plan', 'teach', 'handover'],
    source: 'trade practice notes 7.3 and 7.4: vehicle-recovery institute; EU safety recommendations',
  },
  {
    caution: 'roadside',
    when: [{ answered: 'site.place', with: ['roadside'] }],
    chapters: ['arrival', 'teach', 'prove'],
    source: 'trade practice notes 7.1: HSE essential precautions for roadside work',
  },
  {
    caution: 'lone-work',
    when: [{ answered: 'site.alone', with: ['alone'] }],
    chapters: ['arrival', 'teach'],
    source: 'trade practice notes 7.2: SafeWork SA, roadside maintenance',
  },
  {
    caution: 'airbag',
    when: [{ airbagFault: true }],
    chapters: ['arrival', 'teach', 'faults'],
    source: 'trade practice notes 7.6 and 4.13: maker’s service precautions for restraint systems',
  },
]
