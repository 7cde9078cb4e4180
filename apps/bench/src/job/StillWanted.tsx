import type { ChapterName } from '@shearline/jobfile'
import { Glyph } from '../cylinder/Glyph.tsx'
import { standingWords } from '../cylinder/standing.ts'
import { chapterWord, needWords, tumblerWord } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { useDesk } from './desk.ts'
import css from './job.module.css'

/**
 * What a chapter still wants, each thing a way to its control. When a tumbler was tapped its whole list
 * stands here, other chapters' needs too, so that nothing is looked for.
 */
export function StillWanted({ chapter }: { readonly chapter: ChapterName }) {
  const { state, goTo, chosen } = useDesk()
  const tapped = state.tumblers.find((tumbler) => tumbler.name === chosen)
  const needs = state.tumblers.flatMap((tumbler) =>
    tumbler.needs
      .filter((need) => need.chapter === chapter || tumbler === tapped)
      .map((need, index) => ({ need, tumbler, id: `${tumbler.name}-${need.code}-${index}` })),
  )
  if (needs.length === 0)
    return tapped === undefined ? null : <p className={css.small}>{t('wanted.nothing')}</p>
  return (
    <details className={css.wantedBox} key={chosen} open={tapped !== undefined}>
      <summary className={css.wantedHead}>
        {tapped === undefined ? (
          t('wanted.here', { count: needs.length })
        ) : (
          <>
            <Glyph state={tapped.state} />{' '}
            {t('wanted.tapped', { name: tumblerWord(tapped.name), standing: standingWords(tapped) })}
          </>
        )}
      </summary>
      <ul>
        {needs.map(({ need, tumbler, id }) => (
          <li key={id}>
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
                    ? tumblerWord(tumbler.name)
                    : t('wanted.elsewhere', {
                        name: tumblerWord(tumbler.name),
                        chapter: chapterWord(need.chapter),
                      })}
                </span>
              </span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  )
}
