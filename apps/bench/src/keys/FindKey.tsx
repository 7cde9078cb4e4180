import { useState } from 'react'
import { CodeFinder } from '../capture/CodeFinder.tsx'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { t } from '../words/index.ts'
import { readTag, shortCode, type TaggedKey, tidyCode } from './tag-code.ts'

/** Reads a key's tag with the camera, from a photo, or by its typed code, and says which key it is. */
export default function FindKey({
  known,
  onFound,
  onClose,
}: {
  /** Keys that can be found by their typed code. */
  readonly known: readonly TaggedKey[]
  readonly onFound: (key: TaggedKey) => void
  readonly onClose: () => void
}) {
  const [problem, setProblem] = useState('')
  const [typed, setTyped] = useState('')
  return (
    <Dialog title={t('tags.find')} onClose={onClose}>
      <p>{t('tags.find.how')}</p>
      <CodeFinder
        onFound={(codes) => {
          for (const { text } of codes) {
            const tag = readTag(text)
            if (tag !== null) return onFound(tag)
          }
          setProblem(t('tags.find.other'))
        }}
      />
      {known.length > 0 && (
        <form
          className={formCss.dialogBody}
          onSubmit={(event) => {
            event.preventDefault()
            const found = known.find((key) => shortCode(key) === tidyCode(typed))
            if (found === undefined) setProblem(t('tags.find.unknown', { code: tidyCode(typed) }))
            else onFound(found)
          }}
        >
          <Words
            label={t('tags.find.code')}
            hint={t('tags.find.code.hint')}
            value={typed}
            onChange={setTyped}
            maxLength={8}
            mono
          />
          <div className={formCss.foot}>
            <button type="submit" className={formCss.submit}>
              {t('tags.find.do')}
            </button>
            <button type="button" className={formCss.plain} onClick={onClose}>
              {t('cancel')}
            </button>
          </div>
        </form>
      )}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      {known.length === 0 && (
        <div className={formCss.foot}>
          <button type="button" className={formCss.plain} onClick={onClose}>
            {t('cancel')}
          </button>
        </div>
      )}
    </Dialog>
  )
}
