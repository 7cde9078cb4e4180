import type { VaultRecipient } from '@shearline/jobfile'
import { useEffect, useId, useState } from 'react'
import formCss from '../form/form.module.css'
import { remote } from '../sync/remote.ts'
import { t } from '../words/index.ts'
import css from './vault.module.css'

interface Props {
  readonly here: readonly VaultRecipient[]
  readonly onTake: (recipient: VaultRecipient) => void
}

/**
 * Keys the office seals to and this device does not. Only shown: a server that could name a recipient by itself could
 * have every secret opened by whoever runs it.
 */
export function OfficeRecipients({ here, onTake }: Props) {
  const title = useId()
  const [office, setOffice] = useState<readonly VaultRecipient[]>([])
  useEffect(() => {
    // Without a connection there is nothing to propose; the keys named on this device still hold.
    remote.recipients().then(
      ({ recipients }) => setOffice(recipients),
      () => setOffice([]),
    )
  }, [])
  const missing = office.filter(({ recipient }) => !here.some((one) => one.recipient === recipient))
  if (missing.length === 0) return null
  return (
    <section aria-labelledby={title}>
      <h3 id={title} className={css.title}>
        {t('vault.recipients.office')}
      </h3>
      <p>{t('vault.recipients.office.about')}</p>
      <ul className={css.list}>
        {missing.map((one) => (
          <li key={one.recipient} className={css.row}>
            <span>
              {one.name}
              <code className={css.key}>{one.recipient}</code>
            </span>
            <button
              type="button"
              className={formCss.plain}
              aria-label={t('vault.recipients.take-named', { name: one.name })}
              onClick={() => onTake(one)}
            >
              {t('vault.recipients.take')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
