import { useSyncExternalStore } from 'react'
import { clockState, watchClocks } from '../sync/skew.ts'
import { t } from '../words/index.ts'
import css from './app.module.css'
import { renew, renewalState, watchRenewal } from './renewal.ts'
import type { Route } from './route.ts'

/** What the person should know, said once and quietly below the header: clocks that differ, a newer version. */
export function Notices({ route }: { readonly route: Route }) {
  const clocks = useSyncExternalStore(watchClocks, clockState)
  const renewal = useSyncExternalStore(watchRenewal, renewalState)
  const inJob = route.page === 'job' || route.page === 'new'
  const lines = [
    clocks.minutes > 0 && t('clock.ahead', { minutes: clocks.minutes }),
    clocks.minutes < 0 && t('clock.behind', { minutes: -clocks.minutes }),
    ...clocks.others.map(({ name, minutes }) => t('clock.other-ahead', { name, minutes })),
  ].filter((line) => line !== false)
  const newer = renewal !== 'none' && !inJob
  if (lines.length === 0 && !newer) return null
  return (
    <div className={css.notices} role="status">
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {newer && (
        <p>
          {renewal === 'ready' ? t('renewal.ready') : t('renewal.job-open')}{' '}
          <button type="button" className={css.noticeButton} onClick={() => void renew()}>
            {t('renewal.reload')}
          </button>
        </p>
      )}
    </div>
  )
}
