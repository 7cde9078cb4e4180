import type { MessageLine } from '@shearline/bus'
import { useEffect, useRef, useState } from 'react'
import { Dialog } from '../../form/Dialog.tsx'
import formCss from '../../form/form.module.css'
import { Facts } from '../../job/Facts.tsx'
import { t } from '../../words/index.ts'
import type { OpenLog } from '../open-log.ts'
import { BytesTable } from './BytesTable.tsx'
import { detailRows } from './detail-rows.ts'
import type { Directory } from './directory.ts'
import { rowKind, serviceWords } from './row-words.ts'

/** One message, whole: what it means field by field, and its bytes. The neighbours are one press away. */
export function MessageDetails({
  log,
  matches,
  position,
  directory,
  start,
  onPosition,
  onClose,
}: {
  readonly log: OpenLog
  readonly matches: Uint32Array
  readonly position: number
  readonly directory: Directory
  readonly start: string
  readonly onPosition: (position: number) => void
  readonly onClose: () => void
}) {
  const line = useLine(log, matches[position])
  return (
    <Dialog
      title={
        line === null
          ? t('view.coming')
          : t('details.title', { service: serviceWords(line), kind: t(`kind.${rowKind(line)}`) })
      }
      onClose={onClose}
    >
      {line !== null && (
        <>
          <p role="status">{t('details.of', { number: position + 1, count: matches.length })}</p>
          <Facts rows={detailRows(line, directory, start)} />
          <BytesTable payload={line.payload} />
        </>
      )}
      <div className={formCss.foot}>
        <button
          type="button"
          className={formCss.plain}
          disabled={position === 0}
          onClick={() => onPosition(position - 1)}
        >
          {t('details.before')}
        </button>
        <button
          type="button"
          className={formCss.plain}
          disabled={position + 1 >= matches.length}
          onClick={() => onPosition(position + 1)}
        >
          {t('details.next')}
        </button>
        <button type="button" className={formCss.submit} onClick={onClose}>
          {t('close')}
        </button>
      </div>
    </Dialog>
  )
}

/** One line: at once when it was brought before; else the one shown last stands until it has come. */
function useLine(log: OpenLog, message: number | undefined): MessageLine | null {
  const known = message === undefined ? undefined : log.known(message)
  const [, setCame] = useState(0)
  const last = useRef<MessageLine | null>(null)
  useEffect(() => {
    if (message === undefined || known !== undefined) return
    let left = false
    void log.lines([message]).then(() => {
      if (!left) setCame((count) => count + 1)
    })
    return () => {
      left = true
    }
  }, [log, message, known])
  useEffect(() => {
    last.current = known ?? last.current
  })
  return known ?? last.current
}
