import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { t } from '../words/index.ts'
import css from './shared.module.css'
import { forgetShared } from './store.ts'
import { useSharedFor } from './useShared.ts'

/** Says that a report waits for this job, and leads to where scans come in. */
export function SharedHere() {
  const { job, state, goTo } = useDesk()
  const item = useSharedFor(job)
  if (item === null) return null
  const name = item.file?.name ?? (item.name || t('shared.text'))
  const first = !state.scans.some((scan) => scan.phase === 'before')
  return (
    <section className={css.waiting} aria-label={t('shared.title')}>
      <p>{t('shared.waiting', { name })}</p>
      <div className={formCss.foot}>
        <button
          type="button"
          className={formCss.submit}
          onClick={() =>
            goTo({
              chapter: first ? 'arrival' : 'faults',
              need: first ? 'scan-before-missing' : 'scan-after-missing',
              params: {},
            })
          }
        >
          {t('shared.read')}
        </button>
        <button type="button" className={formCss.plain} onClick={() => void forgetShared(item.id)}>
          {t('shared.discard', { name })}
        </button>
      </div>
    </section>
  )
}
