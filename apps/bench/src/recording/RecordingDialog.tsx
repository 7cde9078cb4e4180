import { useEffect, useState } from 'react'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { size } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { Found } from './Found.tsx'
import css from './recording.module.css'
import { Cancelled, decodeFile } from './work.ts'
import type { Decoded } from './worker-messages.ts'

/** A recording being read, then what was found in it, then the question which scan it is. */
export function RecordingDialog({ file, onClose }: { readonly file: File; readonly onClose: () => void }) {
  const [bytes, setBytes] = useState(0)
  const [decoded, setDecoded] = useState<Decoded | null>(null)
  const [problem, setProblem] = useState('')
  useEffect(() => {
    const work = decodeFile(file, setBytes)
    work.done.then(setDecoded, (error: unknown) => {
      if (!(error instanceof Cancelled)) setProblem(problemWords(error))
    })
    return work.cancel
  }, [file])
  return (
    <Dialog title={t('recording.title', { name: file.name })} onClose={onClose}>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      {decoded === null ? (
        <>
          <progress
            className={css.progress}
            value={bytes}
            max={Math.max(1, file.size)}
            aria-label={t('recording.reading')}
          />
          <p role="status">{t('recording.read-so-far', { read: size(bytes), whole: size(file.size) })}</p>
          <div className={formCss.foot}>
            <button type="button" className={formCss.plain} onClick={onClose}>
              {problem === '' ? t('cancel') : t('close')}
            </button>
          </div>
        </>
      ) : (
        <Found decoded={decoded} onClose={onClose} />
      )}
    </Dialog>
  )
}
