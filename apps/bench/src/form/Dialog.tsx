import { type ReactNode, useEffect, useId, useRef } from 'react'
import css from './form.module.css'

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
  const dialog = useRef<HTMLDialogElement>(null)
  const id = useId()
  useEffect(() => {
    const element = dialog.current
    element?.showModal()
    return () => element?.close()
  }, [])
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
