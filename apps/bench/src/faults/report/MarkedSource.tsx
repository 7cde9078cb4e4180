import type { ScanReport } from '@shearline/keywork'
import { Fragment, type ReactNode, useEffect, useMemo, useRef } from 'react'
import { t } from '../../words/index.ts'
import { marksOf, type SourceMark } from './marks.ts'
import type { Answers } from './questions.ts'
import css from './report.module.css'

/** More lines than anybody looks through; the rest is read all the same. */
const MOST_LINES = 1500

/** The report as it came, with what was understood marked in place. */
export function MarkedSource({
  report,
  lines,
  answers,
  asked,
}: {
  readonly report: ScanReport
  readonly lines: readonly string[]
  readonly answers: Answers
  /** The line the open question is about. */
  readonly asked: number | null
}) {
  const marks = useMemo(() => marksOf(report, lines), [report, lines])
  const box = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (asked === null) return
    // Only the box scrolls, so that the question stays where the person looks.
    const line = box.current?.querySelector<HTMLElement>(`[data-line="${asked}"]`)
    if (line && box.current) box.current.scrollTop = line.offsetTop - box.current.clientHeight / 3
  }, [asked])
  return (
    <figure className={css.source}>
      <figcaption className={css.caption}>
        {t('report.source')}
        <span className={css.key}>
          <mark className={css.code}>{t('report.mark.code')}</mark>
          <mark className={css.unit}>{t('report.mark.unit')}</mark>
          <mark className={css.clear}>{t('report.mark.clear')}</mark>
        </span>
      </figcaption>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
      <div className={css.lines} ref={box} tabIndex={0}>
        {lines.slice(0, MOST_LINES).map((line, index) => (
          <p
            // biome-ignore lint/suspicious/noArrayIndexKey: lines of a source never move
            key={index}
            className={index + 1 === asked ? `${css.line} ${css.asked}` : css.line}
            data-line={index + 1}
          >
            <span className={css.number}>{index + 1}</span>
            <span className={css.words}>{marked(line, marks.get(index + 1) ?? [], report, answers)}</span>
          </p>
        ))}
      </div>
      {lines.length > MOST_LINES && <p>{t('report.lines-hidden', { count: lines.length - MOST_LINES })}</p>}
    </figure>
  )
}

function marked(line: string, marks: readonly SourceMark[], report: ScanReport, answers: Answers): ReactNode {
  let end = 0
  const parts = marks.map((mark) => {
    const before = line.slice(end, mark.from)
    end = mark.to
    const { sign, style } = lookOf(mark, report, answers)
    return (
      <Fragment key={mark.from}>
        {before}
        <mark className={style} title={sign}>
          {line.slice(mark.from, mark.to)}
          <span className="sr"> ({sign})</span>
        </mark>
      </Fragment>
    )
  })
  return (
    <>
      {parts}
      {line.slice(end)}
    </>
  )
}

function lookOf(mark: SourceMark, report: ScanReport, answers: Answers): { sign: string; style: string } {
  const { place, kind, name } = mark
  const style = css[kind] ?? ''
  const guessed =
    name !== null &&
    report.units.some((unit) => unit.name === name && unit.doubts.includes('heading-guessed'))
  const doubts = place === null ? [] : (report.codes[place]?.doubts ?? [])
  const asked = guessed || doubts.includes('code-mended') || doubts.includes('perhaps-no-code')
  const answer = place === null ? answers.headings.get(name ?? '') : answers.codes.get(place)
  if (answer === null) return { sign: t('report.mark.out'), style: `${style} ${css.out}` }
  if (asked && answer === undefined) return { sign: t('report.mark.doubt'), style: `${style} ${css.doubt}` }
  return { sign: t(`report.mark.${kind}`), style }
}
