import { useLayoutEffect, useRef, useState } from 'react'
import { ItStopped } from '../teaching/guide/ItStopped.tsx'
import { chapterWord, nextWords } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { useDesk } from './desk.ts'
import css from './job.module.css'

/** The one next step, at the thumb; during a session, beside it, the way to say that it stopped. */
export function NextBar() {
  const { state, goTo } = useDesk()
  const [stopping, setStopping] = useState(false)
  const { next } = state
  const bar = useBarHeight()
  return (
    <nav className={css.bar} ref={bar} aria-label={t('next.title')}>
      <div className={css.barInner}>
        <button
          type="button"
          className={css.step}
          onClick={() => goTo({ chapter: next.chapter, need: next.code, params: next.params })}
        >
          <span className={css.stepChapter}>{chapterWord(next.chapter)}</span>
          <span>{nextWords(next)}</span>
        </button>
        {state.teaching.sessionOpen && (
          <button type="button" className={css.stopped} onClick={() => setStopping(true)}>
            {t('stopped.button')}
          </button>
        )}
      </div>
      {stopping && <ItStopped onClose={() => setStopping(false)} />}
    </nav>
  )
}

/** Tells the page how high the bar stands, so that notices and the end of the page keep clear of it. */
function useBarHeight() {
  const bar = useRef<HTMLElement>(null)
  useLayoutEffect(() => {
    const page = document.documentElement.style
    const watch = new ResizeObserver(([entry]) => {
      page.setProperty('--bar-height', `${entry?.target.clientHeight ?? 0}px`)
    })
    if (bar.current !== null) watch.observe(bar.current)
    return () => {
      watch.disconnect()
      page.removeProperty('--bar-height')
    }
  }, [])
  return bar
}
