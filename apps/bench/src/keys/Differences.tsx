import type { ChapterName } from '@shearline/jobfile'
import { useState } from 'react'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { Part, RecordForm } from '../job/Part.tsx'
import { differenceWords, statementWords } from '../words/engine.ts'
import { t } from '../words/index.ts'
import css from './keys.module.css'

/** Numbers that do not agree: what each difference means, and its reason in writing. */
export function Differences({ chapter }: { readonly chapter: Extract<ChapterName, 'arrival' | 'prove'> }) {
  const { state } = useDesk()
  const { differences, statements } = state.tally
  const late = (code: string) => code.startsWith('after') || code === 'stored-key-does-not-start'
  const own = differences.filter((difference) => late(difference.code) === (chapter === 'prove'))
  if (own.length === 0 && (chapter === 'arrival' || statements.length === 0)) return null
  return (
    <>
      {own.map((difference) => (
        <Part
          key={difference.code}
          title={t(difference.reason === null ? 'differences.title' : 'differences.title.explained', {
            what: differenceWords(difference),
          })}
          need={`difference-unexplained difference-unexplained:${difference.code}`}
          settled={difference.reason !== null}
          more={t('differences.again')}
          about={
            difference.reason !== null && <p>{t('differences.reason', { reason: difference.reason })}</p>
          }
        >
          <Reason code={difference.code} />
        </Part>
      ))}
      {chapter === 'prove' && statements.length > 0 && (
        <Part title={t('differences.means')}>
          <ul className={css.statements}>
            {statements.map((statement) => (
              <li key={statement.code}>{statementWords(statement)}</li>
            ))}
          </ul>
        </Part>
      )}
    </>
  )
}

/** A reason in writing for a difference or a lost function, by its code. */
export function Reason({ code }: { readonly code: string }) {
  const [reason, setReason] = useState('')
  return (
    <RecordForm
      submit={t('record')}
      onDone={() => setReason('')}
      drafts={() => [{ kind: 'difference-explained', body: { code, reason } }]}
    >
      <Words label={t('reason.writing')} value={reason} onChange={setReason} />
    </RecordForm>
  )
}
