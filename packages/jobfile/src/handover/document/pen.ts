import type { Collected } from '../../fold/collect.ts'
import type { JobState } from '../../fold/state.ts'
import { type Code, instantText, type Language, type Params, say } from '../../words/index.ts'
import type { Block } from './blocks.ts'

/** What every section of the document needs: the job, the language, and a short way to say things. */
export interface Pen {
  readonly state: JobState
  /** The facts that the state was folded from, corrections applied. */
  readonly facts: Collected
  /** Which edition of the document is written: what an edition said never changes (decision 0018). */
  readonly edition: number
  readonly language: Language
  readonly zone: string
  readonly say: (code: Code, params?: Params) => string
  readonly instant: (instant: string) => string
}

/** A part of the document: its heading and what stands below it. */
export type Section = (pen: Pen) => readonly Block[]

export function makePen(of: Pick<Pen, 'state' | 'facts' | 'edition' | 'language'>): Pen {
  const { state, language } = of
  const zone = state.opened?.zone ?? 'UTC'
  return {
    ...of,
    zone,
    say: (code, params) => say(language, code, params),
    instant: (instant) => instantText(language, instant, zone),
  }
}

export const heading = (text: string): Block => ({ kind: 'heading', text })
export const subheading = (text: string): Block => ({ kind: 'subheading', text })
export const paragraph = (text: string): Block => ({ kind: 'paragraph', text })
export const strong = (text: string): Block => ({ kind: 'paragraph', text, strong: true })
export const quiet = (text: string): Block => ({ kind: 'paragraph', text, quiet: true })
export const list = (items: readonly string[]): Block => ({ kind: 'list', items })
