import type { MessageLine } from '@shearline/bus'
import { memo } from 'react'
import { t } from '../../words/index.ts'
import { elapsed } from '../elapsed.ts'
import { secondsAfter } from '../kept-message.ts'
import { type Directory, whoWhom } from './directory.ts'
import { KindShape } from './KindShape.tsx'
import { pairs, refusalWords, rowKind, serviceWords, subject, whoWords } from './row-words.ts'
import css from './view.module.css'

/** Bytes a row shows; the details show them all. */
const shownBytes = 16

/** One message as one line of the list. */
export const MessageRow = memo(function MessageRow({
  line,
  directory,
  start,
  position,
  isActive,
  onOpen,
}: {
  readonly line: MessageLine | undefined
  readonly directory: Directory
  readonly start: string
  readonly position: number
  readonly isActive: boolean
  readonly onOpen: (position: number) => void
}) {
  const kind = line === undefined ? null : rowKind(line)
  return (
    <button
      type="button"
      className={css.row}
      tabIndex={isActive ? 0 : -1}
      data-position={position}
      data-kind={kind ?? 'coming'}
      onClick={() => onOpen(position)}
    >
      {line === undefined || kind === null ? (
        <span className={css.coming}>{t('view.coming')}</span>
      ) : (
        <>
          <span className={css.when}>{elapsed(secondsAfter(start, line.time), 3)}</span>
          <span className={css.kind}>
            <KindShape kind={kind} />
            {t(`kind.${kind}`)}
          </span>
          <span className={css.who}>{whoWords(whoWhom(line, directory))}</span>
          <span className={css.service}>
            <strong>{serviceWords(line)}</strong>
            {line.nrc !== undefined && <span className={css.reason}>{refusalWords(line.nrc)}</span>}
            {line.nrc === undefined && <span className={css.subject}>{subject(line)}</span>}
          </span>
          <code className={css.bytes}>{pairs(line.payload, shownBytes)}</code>
        </>
      )}
    </button>
  )
})
