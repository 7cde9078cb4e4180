/** @module What the engines say by code, in the bench's language. The catalogue of these words is jobfile's. */
import {
  type ChapterName,
  type Code,
  languageFor,
  type Need,
  type NextStep,
  sayDifference as sayDifferenceIn,
  say as sayIn,
  sayNeed,
  sayNext,
  sayReportFinding,
  sayStatement as sayStatementIn,
  type TumblerName,
} from '@shearline/jobfile'
import type { ReportFinding } from '@shearline/keywork'
import { language, readable } from './index.ts'

/** Words of an engine's code. */
export function say(code: Code, params?: Readonly<Record<string, string | number>>): string {
  return readable(sayIn(languageFor(language()), code, params))
}

/** What stands between the parts of a list: `, `. */
export function listMark(): string {
  return say('format.list-mark')
}

export function tumblerWord(name: TumblerName): string {
  return say(`tumbler.${name}`)
}

export function chapterWord(name: ChapterName): string {
  return say(`chapter.${name}`)
}

/** What a tumbler still wants, as a state. */
export function needWords(need: Pick<Need, 'code' | 'params'>): string {
  return readable(sayNeed(languageFor(language()), need))
}

/** The next step as a verb sentence. */
export function nextWords(step: Pick<NextStep, 'code' | 'params'>): string {
  return readable(sayNext(languageFor(language()), step))
}

export function differenceWords(difference: Parameters<typeof sayDifferenceIn>[1]): string {
  return readable(sayDifferenceIn(languageFor(language()), difference))
}

export function statementWords(statement: Parameters<typeof sayStatementIn>[1]): string {
  return readable(sayStatementIn(languageFor(language()), statement))
}

/** A finding about a report as one text: what it is, and what to do next. */
export function reportFindingWords(finding: ReportFinding): string {
  const { what, doNext } = sayReportFinding(languageFor(language()), finding)
  return readable(`${what} ${doNext}`)
}
