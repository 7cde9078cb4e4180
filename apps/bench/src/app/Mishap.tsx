import { Component, type ReactNode } from 'react'
import { t } from '../words/index.ts'
import css from './app.module.css'

/** Shows what went wrong instead of an empty page. What was recorded before stays on the device. */
export class Mishap extends Component<{ readonly children: ReactNode }, { readonly what: string | null }> {
  override state: { readonly what: string | null } = { what: null }

  static getDerivedStateFromError(error: unknown) {
    return { what: error instanceof Error ? error.message : String(error) }
  }

  override render() {
    if (this.state.what === null) return this.props.children
    return (
      <div className={css.mishap} role="alert">
        <h1>{t('mishap.title')}</h1>
        <p>{t('mishap.kept')}</p>
        <p>
          <code>{this.state.what}</code>
        </p>
        <button type="button" className={css.button} onClick={() => location.reload()}>
          {t('mishap.reload')}
        </button>
      </div>
    )
  }
}
