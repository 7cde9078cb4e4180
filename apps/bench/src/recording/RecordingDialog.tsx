import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { ChooseColumns } from './columns/ChooseColumns.tsx'
import { Found } from './Found.tsx'
import { Reading } from './Reading.tsx'
import { useImported } from './useImported.ts'

/** A recording being read, then what was found in it, then the question which scan it is. */
export function RecordingDialog({ file, onClose }: { readonly file: File; readonly onClose: () => void }) {
  const { importing, choose, askColumns, remembered } = useImported(file)
  return (
    <Dialog title={t('recording.title', { name: file.name })} onClose={onClose}>
      {importing.at === 'looking' && <p role="status">{t('recording.looking')}</p>}
      {importing.at === 'columns' && (
        <ChooseColumns
          table={importing.table}
          first={importing.columns}
          reason={importing.looked.reason}
          onChoose={choose}
          onClose={onClose}
        />
      )}
      {importing.at === 'reading' && (
        <Reading progress={importing.progress} size={file.size} onCancel={onClose} />
      )}
      {importing.at === 'found' && (
        <Found
          file={file}
          decoded={importing.decoded}
          askColumns={askColumns}
          remembered={remembered}
          onClose={onClose}
        />
      )}
      {importing.at === 'failed' && (
        <>
          <p className={formCss.problem} role="alert">
            {t('recording.failed', { problem: problemWords(importing.error) })}
          </p>
          <div className={formCss.foot}>
            <button type="button" className={formCss.plain} onClick={onClose}>
              {t('close')}
            </button>
          </div>
        </>
      )}
    </Dialog>
  )
}
