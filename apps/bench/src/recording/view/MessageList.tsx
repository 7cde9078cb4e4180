import {
  type KeyboardEvent,
  memo,
  type RefObject,
  useCallback,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
} from 'react'
import formCss from '../../form/form.module.css'
import { t } from '../../words/index.ts'
import type { OpenLog } from '../open-log.ts'
import type { Directory } from './directory.ts'
import { MessageRow } from './MessageRow.tsx'
import { useLines } from './useLines.ts'
import css from './view.module.css'

/** Rows made beyond those in sight, so that a flick shows rows and not blanks. */
const beyond = 12
/** Browsers draw nothing below some 16 million pixels; this many rows stay above. */
const mostRows = 200_000
const wide = '(min-width: 60rem)'

/** The messages that fit, of which only those in sight are made: a list of any length scrolls alike. */
export const MessageList = memo(function MessageList({
  log,
  matches,
  directory,
  start,
  scroller,
  onOpen,
}: {
  readonly log: OpenLog
  readonly matches: Uint32Array
  readonly directory: Directory
  readonly start: string
  readonly scroller: RefObject<HTMLElement | null>
  readonly onOpen: (position: number) => void
}) {
  const list = useRef<HTMLUListElement>(null)
  const rowHeight = useRowHeight()
  const count = Math.min(matches.length, mostRows)
  const { first, last } = useWindow(list, scroller, rowHeight, count)
  const [active, setActive] = useState(0)
  const focusing = useRef(false)
  const at = Math.min(active, Math.max(0, count - 1))
  const positions = range(first, last)
  // The row that has the focus stays made, or scrolling away would lose it.
  if (count > 0 && (at < first || at >= last)) positions.push(at)
  const lineOf = useLines(
    log,
    positions.map((position) => matches[position] ?? 0),
  )

  useEffect(() => {
    if (!focusing.current) return
    focusing.current = false
    const row = list.current?.querySelector<HTMLElement>(`[data-position="${at}"]`)
    row?.scrollIntoView({ block: 'nearest', behavior: 'instant' })
    row?.focus({ preventScroll: true })
  }, [at])

  const open = useCallback(
    (position: number) => {
      setActive(position)
      onOpen(position)
    },
    [onOpen],
  )
  const key = (event: KeyboardEvent) => {
    const next = positionAfterKey(event.key, at, count)
    if (next === null || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    focusing.current = true
    setActive(next)
  }
  if (count === 0) return <p className={css.none}>{t('view.none')}</p>
  return (
    <>
      <ul
        ref={list}
        className={css.list}
        aria-label={t('view.list')}
        style={{ height: count * rowHeight }}
        onKeyDown={key}
      >
        {positions.map((position) => {
          const message = matches[position] ?? 0
          return (
            <li
              key={position}
              className={css.item}
              style={{ height: rowHeight, transform: `translateY(${position * rowHeight}px)` }}
              aria-posinset={position + 1}
              aria-setsize={matches.length}
            >
              <MessageRow
                line={lineOf(message)}
                directory={directory}
                start={start}
                position={position}
                isActive={position === at}
                onOpen={open}
              />
            </li>
          )
        })}
      </ul>
      {matches.length > mostRows && (
        <p className={formCss.hint}>{t('view.too-many', { shown: mostRows, count: matches.length })}</p>
      )}
    </>
  )
})

function range(first: number, last: number): number[] {
  return Array.from({ length: Math.max(0, last - first) }, (_, index) => first + index)
}

/** Where a key leads in the list, or null when it leads nowhere. */
function positionAfterKey(key: string, at: number, count: number): number | null {
  const steps: Readonly<Record<string, number>> = {
    ArrowDown: at + 1,
    ArrowUp: at - 1,
    PageDown: at + 8,
    PageUp: at - 8,
    Home: 0,
    End: count - 1,
  }
  const next = steps[key]
  return next === undefined ? null : Math.max(0, Math.min(count - 1, next))
}

/** Rows are one line where there is room, else three. Pixels, as the styles have them. */
function useRowHeight(): number {
  const [isWide, setIsWide] = useState(() => matchMedia(wide).matches)
  useEffect(() => {
    const media = matchMedia(wide)
    const change = () => setIsWide(media.matches)
    media.addEventListener('change', change)
    return () => media.removeEventListener('change', change)
  }, [])
  return isWide ? 48 : 84
}

/** Which rows are in sight of the scroller, with some beyond. */
function useWindow(
  list: RefObject<HTMLElement | null>,
  scroller: RefObject<HTMLElement | null>,
  rowHeight: number,
  count: number,
): { readonly first: number; readonly last: number } {
  const [window, setWindow] = useState({ first: 0, last: Math.min(count, 30) })
  useLayoutEffect(() => {
    const outer = scroller.current
    if (outer === null) return
    const measure = () => {
      if (list.current === null) return
      const above = outer.getBoundingClientRect().top - list.current.getBoundingClientRect().top
      const first = Math.max(0, Math.floor(above / rowHeight) - beyond)
      const last = Math.min(count, Math.ceil((above + outer.clientHeight) / rowHeight) + beyond)
      setWindow((before) => (before.first === first && before.last === last ? before : { first, last }))
    }
    measure()
    outer.addEventListener('scroll', measure, { passive: true })
    const observer = new ResizeObserver(measure)
    observer.observe(outer)
    return () => {
      outer.removeEventListener('scroll', measure)
      observer.disconnect()
    }
  }, [list, scroller, rowHeight, count])
  return { first: Math.min(window.first, count), last: Math.min(window.last, count) }
}
