import type { PolicyQuestion } from '@shearline/jobfile'
import { useState } from 'react'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { RecordForm } from '../job/Part.tsx'
import { t } from '../words/index.ts'
import css from './policy.module.css'
import { questionWords } from './policy-words.ts'
import { RecordedChoice } from './RecordedChoice.tsx'

/** One question of the pack that wants a yes, or a no with its reason. A tap on yes records it at once. */
export function Ask({ asked, pack }: { readonly asked: PolicyQuestion; readonly pack: string }) {
  const { record } = useDesk()
  const [no, setNo] = useState(false)
  const { question, stands } = asked
  const need = stands === 'refused' ? 'policy-answer-no' : 'policy-question-open'
  return (
    <div
      className={css.ask}
      data-stands={stands}
      data-need={stands === 'met' ? undefined : `${need} ${need}:${question}`}
    >
      <RecordedChoice
        key={String(asked.answer)}
        label={questionWords(question, asked.words)}
        value={asked.answer === true ? 'yes' : asked.answer === false ? 'no' : null}
        onAnswer={async (next) => {
          setNo(next === 'no')
          if (next === 'yes')
            await record([{ kind: 'policy-answered', body: { pack, question, answer: true } }])
        }}
        options={[
          ['yes', t('yes')],
          ['no', t('no')],
        ]}
      />
      {asked.because !== null && !no && (
        <p className={css.quiet}>{t('rules.because', { why: asked.because })}</p>
      )}
      {(no || stands === 'refused') && (
        <NotBecause question={question} pack={pack} onDone={() => setNo(false)} />
      )}
    </div>
  )
}

/** A no stands only with its reason. */
function NotBecause({
  question,
  pack,
  onDone,
}: {
  readonly question: string
  readonly pack: string
  readonly onDone: () => void
}) {
  const [because, setBecause] = useState('')
  return (
    <RecordForm
      submit={t('rules.record-no')}
      onDone={onDone}
      drafts={() => [{ kind: 'policy-answered', body: { pack, question, answer: false, because } }]}
    >
      <Words label={t('rules.why-not')} value={because} onChange={setBecause} />
    </RecordForm>
  )
}
