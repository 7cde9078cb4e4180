import { addressOf, go } from '../app/route.ts'
import { useSummaries } from '../board/useSummaries.ts'
import formCss from '../form/form.module.css'
import { size } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import css from './shared.module.css'
import { forgetShared, shareFor } from './store.ts'
import { useShared } from './useShared.ts'

/** The same limit as in public/share-in.js. */
const mostBytes = 32 << 20

/** A report that another app shared: for which job is it? Reading it comes after, in that job. */
export default function SharedPage({ failed }: { readonly failed: boolean }) {
  const items = useShared()
  const jobs = useSummaries()
  const waiting = items?.filter((item) => item.job === null) ?? []
  return (
    <div className={css.page}>
      <h1 className={css.title}>
        {t(items !== null && waiting.length === 0 ? 'shared.title.none' : 'shared.title')}
      </h1>
      {failed && (
        <p className={formCss.problem} role="alert">
          {t('shared.failed', { most: size(mostBytes) })}
        </p>
      )}
      {items !== null && waiting.length === 0 && <p>{t('shared.none')}</p>}
      {waiting.map((item) => {
        const name = item.file?.name ?? (item.name || t('shared.text'))
        return (
          <section key={item.id} className={css.item} aria-label={name}>
            <h2 className={css.name}>{name}</h2>
            {item.text !== '' && <p className={css.text}>{item.text.slice(0, 400)}</p>}
            <p>{jobs?.length === 0 ? t('shared.no-job') : t('shared.which')}</p>
            <ul className={css.jobs}>
              {jobs?.map(({ job, title, vehicle }) => (
                <li key={job}>
                  <button
                    type="button"
                    className={css.job}
                    onClick={() => void shareFor(item, job).then(() => go({ page: 'job', job }))}
                  >
                    <strong>{title}</strong>
                    <span>{vehicle}</span>
                  </button>
                </li>
              ))}
            </ul>
            <div className={formCss.foot}>
              <button type="button" className={formCss.plain} onClick={() => void forgetShared(item.id)}>
                {t('shared.discard', { name })}
              </button>
            </div>
          </section>
        )
      })}
      <a className={css.back} href={addressOf({ page: 'board' })}>
        {t('job.to-board')}
      </a>
    </div>
  )
}
