import { useSyncExternalStore } from 'react'
import { type Sending, sendingState, watchSending } from '../sync/outbox.ts'
import { t } from '../words/index.ts'
import css from './app.module.css'
import { addressOf } from './route.ts'

/** How far sending has come. */
export function useSending(): Sending {
  return useSyncExternalStore(watchSending, sendingState)
}

/** In two words what is saved here and what is sent; leads to the device's page, where it is said in full. */
export function SendingSign() {
  const sending = useSending()
  const count = sending.facts + sending.blobs
  return (
    <a className={css.sending} href={addressOf({ page: 'device' })} data-state={sending.state}>
      <svg className={css.sendingShape} viewBox="0 0 24 16" aria-hidden="true">
        <rect x="1" y="3" width="9" height="10" rx="2" className={css.kept} />
        <rect
          x="14"
          y="3"
          width="9"
          height="10"
          rx="2"
          className={sending.state === 'sent' ? css.kept : css.notYet}
        />
      </svg>
      <span role="status">
        {sending.state === 'refused' ? t('sending.refused') : t(`sending.${sending.state}`, { count })}
      </span>
    </a>
  )
}
