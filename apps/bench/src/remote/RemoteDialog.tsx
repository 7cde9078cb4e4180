import { useId } from 'react'
import formCss from '../form/form.module.css'
import { useModal } from '../form/useModal.ts'
import { t } from '../words/index.ts'
import { Compared } from './Compared.tsx'
import css from './remote.module.css'
import { SideCard } from './SideCard.tsx'
import { useRemote } from './useRemote.ts'

/** Two recordings, measured one beside the other, and what they say together. Leaving it forgets both. */
export function RemoteDialog({ onClose }: { readonly onClose: () => void }) {
  const dialog = useModal()
  const id = useId()
  const original = useRemote()
  const fresh = useRemote()
  const both =
    original.side.at === 'measured' && fresh.side.at === 'measured'
      ? { original: original.side.measured, fresh: fresh.side.measured }
      : null
  return (
    <dialog ref={dialog} className={css.dialog} aria-labelledby={id} onCancel={onClose}>
      <div className={css.page}>
        <header className={css.head}>
          <h2 className={css.title} id={id}>
            {t('remote.title')}
          </h2>
          <button type="button" className={formCss.plain} onClick={onClose}>
            {t('remote.close')}
          </button>
        </header>
        {both === null && <p>{t('remote.how')}</p>}
        <div className={css.sides}>
          <SideCard name={t('remote.original')} remote={original} />
          <SideCard name={t('remote.new')} remote={fresh} />
        </div>
        <p className={css.quiet}>{t('remote.privacy')}</p>
        {both !== null && <Compared original={both.original} fresh={both.fresh} />}
      </div>
    </dialog>
  )
}
