import type { JobState } from '@shearline/jobfile'
import formCss from '../../form/form.module.css'
import { Tag } from '../../keys/Tag.tsx'
import { listMark } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'

/** The order the keys are shown in; each can be moved forward, and the best order taken back. */
export function Order({
  order,
  best,
  keys,
  onChange,
  onBest,
}: {
  readonly order: readonly string[]
  readonly best: readonly string[]
  readonly keys: JobState['keys']
  readonly onChange: (order: readonly string[]) => void
  readonly onBest: () => void
}) {
  return (
    <div className={css.order}>
      <p className={formCss.label}>{t('order.title')}</p>
      <ol className={css.orderKeys}>
        {order.map((label, index) => {
          const key = keys.find((one) => one.id === label)
          return (
            <li key={label}>
              {key !== undefined && <Tag letter={label} colour={key.colour} />}
              {index > 0 && (
                <button
                  type="button"
                  className={formCss.plain}
                  aria-label={t('order.earlier', { key: label })}
                  onClick={() => onChange(earlier(order, index))}
                >
                  {t('rehearsal.earlier')}
                </button>
              )}
            </li>
          )
        })}
      </ol>
      {best.join() !== order.join() && (
        <div className={formCss.foot}>
          <span>{t('rehearsal.better', { order: best.join(listMark()) })}</span>
          <button type="button" className={formCss.plain} onClick={onBest}>
            {t('rehearsal.take-better')}
          </button>
        </div>
      )}
    </div>
  )
}

/** The order with the key at `index` shown one place earlier. */
function earlier(order: readonly string[], index: number): readonly string[] {
  const next = [...order]
  const [key] = next.splice(index, 1)
  if (key !== undefined) next.splice(index - 1, 0, key)
  return next
}
