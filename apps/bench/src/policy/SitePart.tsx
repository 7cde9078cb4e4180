import { siteAnswers, siteQuestions } from '@shearline/jobfile'
import { useDesk } from '../job/desk.ts'
import { Part } from '../job/Part.tsx'
import { t } from '../words/index.ts'
import { answerWords, questionWords } from './policy-words.ts'
import { RecordedChoice } from './RecordedChoice.tsx'

/** The car and its place: four taps that decide which cautions matter here. Tapping another answer corrects it. */
export function SitePart() {
  const { state, record } = useDesk()
  const { policy } = state
  if (policy === null) return null
  const asked = siteQuestions.filter((one) => policy.questions.some(({ question }) => question === one))
  if (asked.length === 0) return null
  return (
    <Part title={t('site.title')} about={<p>{t('site.why')}</p>}>
      {asked.map((question) => {
        const answer = policy.questions.find((one) => one.question === question)?.answer ?? null
        return (
          <div
            key={question}
            data-need={answer === null ? `site-question-open site-question-open:${question}` : undefined}
          >
            <RecordedChoice
              label={questionWords(question)}
              value={typeof answer === 'string' ? answer : null}
              onAnswer={(next) =>
                record([{ kind: 'policy-answered', body: { pack: policy.pack, question, answer: next } }])
              }
              options={siteAnswers[question].map((one) => [one as string, answerWords(question, one)])}
            />
          </div>
        )
      })}
    </Part>
  )
}
