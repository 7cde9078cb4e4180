import { neutralPack, retentionPackOf } from '@shearline/jobfile'
import { useEffect, useState } from 'react'
import { addressOf } from '../app/route.ts'
import formCss from '../form/form.module.css'
import { everyPack } from '../policy/kept-packs.ts'
import { packText } from '../policy/pack-text.ts'
import { packNamed } from '../policy/usePacks.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { day } from '../words/instants.ts'
import { problemWords } from '../words/problem.ts'
import css from './custody.module.css'
import type { DueAnswer, DueLine } from './due.worker.ts'

/** Everything due for deletion in every job this device knows, oldest first. */
export default function KeepingPage() {
  const [lines, setLines] = useState<readonly DueLine[] | null>(null)
  const [looked, setLooked] = useState(0)
  const [problem, setProblem] = useState('')
  useEffect(() => {
    const worker = new Worker(new URL('./due.worker.ts', import.meta.url), { type: 'module' })
    worker.addEventListener('message', ({ data }: MessageEvent<DueAnswer>) => {
      if (data.what === 'looked') setLooked(data.jobs)
      else if (data.what === 'done') setLines(data.lines)
      else setProblem(problemWords(new Error(data.why)))
    })
    worker.addEventListener('error', (event) => setProblem(problemWords(new Error(event.message))))
    everyPack().then(
      ({ packs, usual }) =>
        worker.postMessage({
          now: Date.now(),
          pack: retentionPackOf(packNamed(packs, usual) ?? neutralPack),
        }),
      (error: unknown) => setProblem(problemWords(error)),
    )
    return () => worker.terminate()
  }, [])
  return (
    <div className={css.page}>
      <h1 className={css.title}>{t('keeping.title')}</h1>
      <p>{t('keeping.what')}</p>
      <p role="status">
        {lines === null && problem === '' ? t('keeping.reading', { count: looked }) : ''}
        {lines?.length === 0 ? t('keeping.none') : ''}
      </p>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <ul className={css.list}>
        {lines?.map(({ title, zone, due }) => (
          <li key={`${due.job} ${due.class}`} className={css.due}>
            <a href={addressOf({ page: 'job', job: due.job })}>{title}</a>
            <span>
              {say(`retention.${due.class}`)}: {t('keeping.items', { count: due.items.length })},{' '}
              {t('keeping.since', { day: day(new Date(due.until).toISOString(), zone) })}
            </span>
            <span className={css.quiet}>
              {t('keeping.rule', {
                days: due.days,
                trigger: due.trigger.replaceAll('-', '_'),
                source: packText(due.source),
              })}
            </span>
            {due.stalled && <span className={css.quiet}>{t('keeping.stalled')}</span>}
            {due.heldBy.map((hold) => (
              <strong key={hold.fact}>{t('keeping.held', { reason: hold.reason })}</strong>
            ))}
          </li>
        ))}
      </ul>
    </div>
  )
}
