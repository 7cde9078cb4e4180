import { type DragEvent, type ReactNode, useRef, useState } from 'react'
import { t } from '../words/index.ts'
import { ImportContext } from './importing.ts'
import { RecordingDialog } from './RecordingDialog.tsx'
import css from './recording.module.css'

/** The whole job page as a place to drop a recording on. */
export function DropRecording({ children }: { readonly children: ReactNode }) {
  const [over, setOver] = useState(false)
  const [file, setFile] = useState<File | null>(null)
  const depth = useRef(0)
  const brings = (event: DragEvent) => event.dataTransfer.types.includes('Files')
  return (
    <ImportContext value={setFile}>
      <section
        aria-label={t('job.page')}
        onDragEnter={(event) => {
          if (!brings(event)) return
          depth.current++
          setOver(true)
        }}
        onDragLeave={() => {
          depth.current = Math.max(0, depth.current - 1)
          if (depth.current === 0) setOver(false)
        }}
        onDragOver={(event) => {
          if (brings(event)) event.preventDefault()
        }}
        onDrop={(event) => {
          event.preventDefault()
          depth.current = 0
          setOver(false)
          const dropped = event.dataTransfer.files[0]
          if (dropped !== undefined) setFile(dropped)
        }}
      >
        {children}
      </section>
      {over && (
        <div className={css.over} aria-hidden="true">
          <p>{t('recording.drop')}</p>
        </div>
      )}
      {file !== null && <RecordingDialog file={file} onClose={() => setFile(null)} />}
    </ImportContext>
  )
}
