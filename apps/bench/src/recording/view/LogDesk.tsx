import type { JobState } from '@shearline/jobfile'
import { type ReactNode, type RefObject, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react'
import { Choice } from '../../form/Choice.tsx'
import formCss from '../../form/form.module.css'
import { number } from '../../words/amounts.ts'
import { t } from '../../words/index.ts'
import { elapsed } from '../elapsed.ts'
import { type Filter, filters } from '../filters.ts'
import { marksOf } from '../marks.ts'
import type { OpenLog } from '../open-log.ts'
import { directoryOf } from './directory.ts'
import { Legend } from './Legend.tsx'
import { MarkList } from './MarkList.tsx'
import { MessageDetails } from './MessageDetails.tsx'
import { MessageList } from './MessageList.tsx'
import { StripChart } from './StripChart.tsx'
import { type Span, wholeSpan } from './span.ts'
import { useAnswer } from './useAnswer.ts'
import css from './view.module.css'
import { ZoomBar } from './ZoomBar.tsx'

/** Into how many slices the stretch in sight is cut. */
const slices = 160

/** An opened recording: strip, marks, filters and messages, all of the same stretch of time. */
export function LogDesk({
  log,
  recording,
  head,
  scroller,
}: {
  readonly log: OpenLog
  readonly recording: JobState['recordings'][number]
  readonly head: ReactNode
  readonly scroller: RefObject<HTMLDialogElement | null>
}) {
  const { strip } = log
  const whole = useMemo(() => wholeSpan(strip.from, strip.to), [strip])
  const marks = useMemo(() => marksOf(strip), [strip])
  const directory = useMemo(() => directoryOf(strip.entries), [strip])
  const [span, setSpan] = useState<Span>(whole)
  const [filter, setFilter] = useState<Filter>('all')
  const [words, setWords] = useState('')
  const [opened, setOpened] = useState<number | null>(null)
  // What is said in words of the stretch in sight may come a moment after the strip itself.
  const said = useDeferredValue(span)
  const answer = useAnswer(log, { ...span, filter, words: useDeferredValue(words), slices })
  const top = useRef<HTMLDivElement>(null)
  useScrollRoom(top, scroller)
  const matches = answer?.matches ?? null
  const inSight = answer === null ? 0 : answer.total.reduce((sum, count) => sum + count, 0)
  const decimals = span.to - span.from < 10 ? 3 : 1
  const shown = t('view.shown', {
    from: elapsed(Math.max(span.from, strip.from), decimals),
    to: elapsed(Math.min(span.to, strip.to), decimals),
    messages: number(inSight),
  })
  return (
    <div className={css.desk}>
      <div className={css.top} ref={top}>
        {head}
        <StripChart
          span={span}
          whole={whole}
          answer={answer}
          marks={marks}
          label={t('view.chart', { name: recording.name })}
          onSpan={setSpan}
        />
        <ZoomBar span={span} whole={whole} onSpan={setSpan} />
        <p className={css.shown} role="status">
          {shown}
        </p>
      </div>
      <Legend marks={marks} span={said} answer={answer} />
      {strip.leftOut > 0 && <p className={formCss.hint}>{t('view.left-out', { count: strip.leftOut })}</p>}
      <MarkList marks={marks} span={said} whole={whole} onSpan={setSpan} />
      <div className={css.filters}>
        <Choice
          label={t('view.filter')}
          value={filter}
          onChange={setFilter}
          options={filters.map((one) => [one, t(`filter.${one}`)])}
          optional
        />
        <label className={formCss.field}>
          <span className={formCss.label}>{t('view.search')}</span>
          <input
            className={formCss.input}
            type="search"
            value={words}
            onChange={(event) => setWords(event.target.value)}
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
          />
        </label>
      </div>
      {matches !== null && (
        <>
          <p role="status" className={css.count}>
            {t('view.count', { count: matches.length })}
          </p>
          <MessageList
            log={log}
            matches={matches}
            directory={directory}
            start={strip.start}
            scroller={scroller}
            onOpen={setOpened}
          />
          {opened !== null && (
            <MessageDetails
              log={log}
              matches={matches}
              position={opened}
              directory={directory}
              start={strip.start}
              onPosition={setOpened}
              onClose={() => setOpened(null)}
            />
          )}
        </>
      )}
    </div>
  )
}

/** What stands fixed at the top must not cover what is scrolled to: the browser is told how high it is. */
function useScrollRoom(top: RefObject<HTMLElement | null>, scroller: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const element = top.current
    if (element === null) return
    const observer = new ResizeObserver(() => {
      const isFixed = getComputedStyle(element).position === 'sticky'
      const room = isFixed ? element.offsetHeight : 0
      scroller.current?.style.setProperty('scroll-padding-block-start', `${room}px`)
    })
    observer.observe(element)
    return () => observer.disconnect()
  }, [top, scroller])
}
