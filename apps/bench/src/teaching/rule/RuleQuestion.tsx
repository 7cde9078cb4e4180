import { Amount } from '../../form/Amount.tsx'
import { Choice } from '../../form/Choice.tsx'
import formCss from '../../form/form.module.css'
import { Several } from '../../form/Several.tsx'
import { t } from '../../words/index.ts'
import { type Answer, notKnown } from './answers.ts'
import type { Question, RulePath } from './questions.ts'
import { optionWords, unitOf, worstWords } from './rule-words.ts'

/** One question about a rule. "Not known" is always an answer, and says what it means. */
export function RuleQuestion({
  question,
  path,
  value,
  problem,
  onChange,
}: {
  readonly question: Question
  readonly path: RulePath
  readonly value: Answer
  /** What is wrong with the answer, said at the question; empty when nothing is. */
  readonly problem: string
  readonly onChange: (value: Answer) => void
}) {
  const label = t(`rule.${path}`)
  const hint = value === notKnown ? { hint: worstWords(path, question.ask) } : {}
  const { answers = [] } = question
  return (
    <div className={formCss.field} data-path={path}>
      {question.ask === 'one' ? (
        <Choice
          label={label}
          value={value as string}
          onChange={onChange}
          options={[...answers, notKnown].map((each) => [each, optionWords(path, each)])}
          {...hint}
        />
      ) : (
        <>
          <Choice
            label={label}
            value={value === notKnown ? notKnown : 'given'}
            onChange={(how) => onChange(how === notKnown ? notKnown : question.ask === 'several' ? [] : null)}
            options={[
              ['given', t('rule.figure')],
              [notKnown, t('rule.unknown')],
            ]}
            {...hint}
          />
          {value !== notKnown && <Given question={question} path={path} value={value} onChange={onChange} />}
        </>
      )}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
    </div>
  )
}

function Given({
  question,
  path,
  value,
  onChange,
}: {
  readonly question: Question
  readonly path: RulePath
  readonly value: Answer
  readonly onChange: (value: Answer) => void
}) {
  const label = t(`rule.${path}`)
  if (question.ask === 'several')
    return (
      <Several
        label={label}
        value={Array.isArray(value) ? (value as readonly string[]) : []}
        onChange={onChange}
        options={(question.answers ?? []).map((each) => [each, optionWords(path, each)])}
      />
    )
  const one = unitOf(question.ask)
  const { ask } = question
  if (ask === 'one') return null
  const whole = ask === 'whole'
  return (
    <Amount
      label={t(`rule.figure.${ask}`)}
      value={typeof value === 'number' ? value / one : null}
      onChange={(next) => onChange(next === null ? null : next * one)}
      least={question.least ?? 0}
      most={whole ? 99 : 9999}
      decimals={whole ? 0 : 1}
      optional
    />
  )
}
