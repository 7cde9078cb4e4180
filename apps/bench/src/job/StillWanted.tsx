import type { ChapterName, Need, TumblerName } from '@shearline/jobfile'
import { useState } from 'react'
import { Glyph } from '../cylinder/Glyph.tsx'
import { standingWords } from '../cylinder/standing.ts'
import { chapterWord, needWords, tumblerWord } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { homeOf } from './chapter-of.ts'
import { useDesk, useTapped } from './desk.ts'
import css from './job.module.css'

interface Wanted {
  readonly need: Need
  readonly tumbler: TumblerName
}

/** What a chapter still wants, folded: its forms show it too. Each thing is a way to its control. */
export function StillWanted({ chapter }: { readonly chapter: ChapterName }) {
  const { state } = useDesk()
  const [open, setOpen] = useState(false)
  const wanted = state.tumblers.flatMap((tumbler) =>
    tumbler.needs
      .filter((need) => need.chapter === chapter)
      .map((need): Wanted => ({ need, tumbler: tumbler.name })),
  )
  if (wanted.length === 0) return null
  return (
    <details className={css.wantedBox} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className={css.wantedHead}>{t('wanted.here', { count: wanted.length })}</summary>
      {open && <List wanted={wanted} chapter={chapter} />}
    </details>
  )
}

/** Everything the tapped tumbler wants, in whatever chapter, said in the chapter the tap led to. */
export function TappedTumbler({ chapter }: { readonly chapter: ChapterName }) {
  const { state } = useDesk()
  const chosen = useTapped()
  const tapped = state.tumblers.find((tumbler) => tumbler.name === chosen)
  if (tapped === undefined || chapter !== (tapped.needs[0]?.chapter ?? homeOf(tapped.name))) return null
  const wanted = tapped.needs.map((need): Wanted => ({ need, tumbler: tapped.name }))
  return (
    <div className={css.wantedBox}>
      <p className={css.wantedHead}>
        <Glyph state={tapped.state} />{' '}
        {t('wanted.tapped', { name: tumblerWord(tapped.name), standing: standingWords(tapped) })}
      </p>
      {wanted.length === 0 ? (
        <p className={css.wantedNothing}>{t('wanted.nothing')}</p>
      ) : (
        <List wanted={wanted} chapter={chapter} />
      )}
    </div>
  )
}

function List({ wanted, chapter }: { readonly wanted: readonly Wanted[]; readonly chapter: ChapterName }) {
  const { goTo } = useDesk()
  return (
    <ul>
      {wanted.map(({ need, tumbler }) => (
        <li key={`${tumbler} ${need.code} ${Object.values(need.params).join(' ')}`}>
          <button
            type="button"
            className={css.need}
            onClick={() => goTo({ chapter: need.chapter, need: need.code, params: need.params })}
          >
            <Glyph state={need.conflict ? 'high' : 'low'} />
            <span>
              {needWords(need)}
              <span className={css.needWhere}>
                {need.chapter === chapter
                  ? tumblerWord(tumbler)
                  : t('wanted.elsewhere', { name: tumblerWord(tumbler), chapter: chapterWord(need.chapter) })}
              </span>
            </span>
          </button>
        </li>
      ))}
    </ul>
  )
}
