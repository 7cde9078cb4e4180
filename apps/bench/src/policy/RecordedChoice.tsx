import { type ReactNode, useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { problemWords } from '../words/problem.ts'

/** One of few, recorded with the tap. It shows what was tapped at once, and what is on record when that failed. */
export function RecordedChoice<V extends string>({
  label,
  value,
  options,
  onAnswer,
}: {
  readonly label: string
  /** What is on record. */
  readonly value: V | null
  readonly options: readonly (readonly [value: V, words: ReactNode])[]
  readonly onAnswer: (value: V) => Promise<void>
}) {
  const [tapped, setTapped] = useState<V | null>(null)
  const [problem, setProblem] = useState('')
  const answer = (next: V) => {
    setTapped(next)
    onAnswer(next).then(
      () => setProblem(''),
      (error: unknown) => {
        setTapped(null)
        setProblem(problemWords(error))
      },
    )
  }
  return (
    <>
      <Choice label={label} value={tapped ?? value} onChange={answer} options={options} optional />
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
    </>
  )
}
