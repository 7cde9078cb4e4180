import { type RefObject, useLayoutEffect, useRef } from 'react'

/**
 * Shows a dialog over everything else for as long as it is drawn. The browser keeps the focus inside, and gives it back
 * to what opened the dialog: for that it must be closed while it is still part of the page.
 */
export function useModal(): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null)
  useLayoutEffect(() => {
    // Text marked on the page behind is out of reach now; Chromium would search that whole page for its caret
    // again each time it draws, which on a long job takes longer than everything else about opening a dialog.
    getSelection()?.removeAllRanges()
    const element = dialog.current
    element?.showModal()
    return () => element?.close()
  }, [])
  return dialog
}
