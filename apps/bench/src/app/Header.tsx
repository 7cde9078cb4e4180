import { t } from '../words/index.ts'
import css from './app.module.css'
import { addressOf, type Route } from './route.ts'
import { SendingSign } from './SendingSign.tsx'

/** The way home, what is saved and sent, and the way to this device's page. */
export function Header({ route }: { readonly route: Route }) {
  return (
    <header className={css.header}>
      <a
        className={css.home}
        href={addressOf({ page: 'board' })}
        aria-current={route.page === 'board' ? 'page' : undefined}
      >
        <svg className={css.mark} viewBox="0 0 40 40" aria-hidden="true">
          <rect className={css.markSteel} x="7" y="6" width="7" height="12" rx="1.5" />
          <rect className={css.markSteel} x="17" y="6" width="7" height="12" rx="1.5" />
          <rect className={css.markSteel} x="27" y="12" width="7" height="12" rx="1.5" />
          <path
            className={css.markBrass}
            d="M7 18h7v13l-3.5 4L7 31zM17 18h7v13l-3.5 4-3.5-4zM27 24h7v7l-3.5 4-3.5-4z"
          />
          <path className={css.markLine} d="M2 18H38" />
        </svg>
        <span>{t('app.name')}</span>
      </a>
      <SendingSign />
      <a
        className={css.headerLink}
        href={addressOf({ page: 'device' })}
        aria-current={route.page === 'device' ? 'page' : undefined}
      >
        {t('app.device')}
      </a>
    </header>
  )
}
