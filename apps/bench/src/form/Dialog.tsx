import { type ReactNode, useId } from 'react'
import css from './form.module.css'
import { useModal } from './useModal.ts'

/** A question that stops everything else until it is answered or left. The browser keeps the focus inside. */
export function Dialog({
  title,
  onClose,
  children,
}: {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
}) {
  const dialog = useModal()
  const id = useId()
  return (
    <dialog ref={dialog} className={css.dialog} aria-labelledby={id} onCancel={onClose}>
      <div className={css.dialogBody}>
        <h2 className={css.dialogTitle} id={id}>
          {title}
        </h2>
        {children}
      </div>
    </dialog>
  )
}
