import type { ScanReport } from '@shearline/keywork'
import { type ReactNode, useMemo, useState } from 'react'
import formCss from '../../form/form.module.css'
import { useDesk } from '../../job/desk.ts'
import { reportFindingWords } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { knownUnits } from '../known-units.ts'
import type { ScannedUnits } from '../scanned.ts'
import { DoubtQuestion } from './DoubtQuestion.tsx'
import { MarkedSource } from './MarkedSource.tsx'
import { linesOfSource } from './marks.ts'
import { answeredUnits, noAnswers, questionsOf } from './questions.ts'
import css from './report.module.css'
import { Understood } from './Understood.tsx'

/** The source with what was understood of it, what is open one question at a time, and only then the keeping. */
export function ReportReview({
  report,
  text,
  keep,
  onOther,
}: {
  readonly report: ScanReport
  readonly text: string
  readonly keep: (units: ScannedUnits) => ReactNode
  readonly onOther: () => void
}) {
  const { state } = useDesk()
  const [answers, setAnswers] = useState(noAnswers)
  const lines = useMemo(() => linesOfSource(text), [text])
  const questions = questionsOf(report, lines, answers)
  const [question] = questions
  const units = answeredUnits(report, answers)
  const answered = answers !== noAnswers
  return (
    <div className={css.review}>
      <MarkedSource report={report} lines={lines} answers={answers} asked={question?.line ?? null} />
      <div className={css.beside}>
        {report.findings.map((finding) => (
          <p key={`${finding.code} ${finding.where.line}`} className={formCss.problem}>
            {reportFindingWords(finding)}
          </p>
        ))}
        {question !== undefined && (
          <DoubtQuestion
            // A new question starts with empty fields.
            key={`${question.what} ${question.line} ${'place' in question ? question.place : question.name}`}
            question={question}
            left={questions.length}
            units={[...new Set([...report.units.map((unit) => unit.name), ...knownUnits(state.scans)])]}
            report={report}
            answers={answers}
            onAnswer={setAnswers}
          />
        )}
        <Understood report={report} units={units} open={question !== undefined} answers={answers} />
        {question === undefined && keep(units)}
        <div className={formCss.foot}>
          {answered && (
            <button type="button" className={formCss.plain} onClick={() => setAnswers(noAnswers)}>
              {t('doubt.again')}
            </button>
          )}
          <button type="button" className={formCss.plain} onClick={onOther}>
            {t('report.other')}
          </button>
        </div>
      </div>
    </div>
  )
}
