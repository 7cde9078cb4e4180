import type { ScanReport } from '@shearline/keywork'
import { type FormEvent, useState } from 'react'
import formCss from '../../form/form.module.css'
import { Words } from '../../form/Words.tsx'
import { t } from '../../words/index.ts'
import { type Answers, namelessPlaces, onlyCode, type Question } from './questions.ts'
import css from './report.module.css'

/** One doubt in plain words; answering it brings the next. */
export function DoubtQuestion({
  question,
  left,
  units,
  report,
  answers,
  onAnswer,
}: {
  readonly question: Question
  readonly left: number
  readonly units: readonly string[]
  readonly report: ScanReport
  readonly answers: Answers
  readonly onAnswer: (answers: Answers) => void
}) {
  const heading = (value: string | null) => {
    if (question.what !== 'heading') return
    onAnswer({ ...answers, headings: new Map(answers.headings).set(question.name, value) })
  }
  const code = (value: string | null) => {
    if (question.what === 'heading') return
    onAnswer({ ...answers, codes: new Map(answers.codes).set(question.place, value) })
  }
  return (
    <section className={css.question} aria-label={t('doubt.left', { count: left })}>
      <p className={css.left}>{t('doubt.left', { count: left })}</p>
      <p className={css.ask} role="status">
        {askOf(question)}
      </p>
      {question.what === 'heading' && (
        <>
          <div className={formCss.foot}>
            <Answer words={t('doubt.yes-heading')} onPick={() => heading(question.name)} />
            <Answer words={t('doubt.no-heading')} onPick={() => heading(null)} />
          </div>
          <Other label={t('doubt.other-name')} onTake={heading} />
        </>
      )}
      {question.what === 'code' && (
        <>
          <div className={formCss.foot}>
            <Answer words={t('doubt.yes-code', { code: question.code })} onPick={() => code(question.code)} />
            <Answer words={t('doubt.leave-out')} onPick={() => code(null)} />
          </div>
          <Other label={t('doubt.other-code')} onTake={code} read={onlyCode} mono />
        </>
      )}
      {question.what === 'unit' && (
        <WhichUnit
          more={question.more}
          units={units}
          onLeaveOut={() => code(null)}
          onTake={(unit, too) => {
            const places = too ? namelessPlaces(report, answers) : [question.place]
            const named = new Map(answers.units)
            for (const place of places) named.set(place, unit)
            onAnswer({ ...answers, units: named })
          }}
        />
      )}
    </section>
  )
}

function askOf(question: Question): string {
  switch (question.what) {
    case 'heading':
      return t('doubt.heading', { line: question.line, name: question.name })
    case 'unit':
      return t('doubt.unit', { line: question.line, code: question.code })
    case 'code': {
      const { line, reads, code } = question
      if (!question.mended) return t('doubt.perhaps', { line, reads, code })
      const [, ...digits] = reads.toUpperCase()
      const has = (letter: string) => digits.includes(letter)
      const letters = has('O') && has('I') ? 'both' : has('O') ? 'O' : 'I'
      return t('doubt.mended', { line, reads, code, letters })
    }
  }
}

function Answer({ words, onPick }: { readonly words: string; readonly onPick: () => void }) {
  return (
    <button type="button" className={formCss.plain} onClick={onPick}>
      {words}
    </button>
  )
}

function WhichUnit({
  more,
  units,
  onTake,
  onLeaveOut,
}: {
  readonly more: number
  readonly units: readonly string[]
  readonly onTake: (unit: string, too: boolean) => void
  readonly onLeaveOut: () => void
}) {
  const [too, setToo] = useState(false)
  return (
    <>
      {more > 0 && (
        <label className={formCss.choice}>
          <input type="checkbox" checked={too} onChange={(event) => setToo(event.target.checked)} />
          <span>{t('doubt.same-unit', { count: more })}</span>
        </label>
      )}
      <div className={formCss.foot}>
        {units.map((unit) => (
          <Answer key={unit} words={unit} onPick={() => onTake(unit, too)} />
        ))}
        <Answer words={t('doubt.leave-out')} onPick={onLeaveOut} />
      </div>
      <Other label={t('doubt.other-unit')} onTake={(unit) => onTake(unit, too)} />
    </>
  )
}

/** An answer typed in; `read` turns it into what is taken, or null when it is not one. */
function Other({
  label,
  onTake,
  read = (words) => words.trim() || null,
  mono = false,
}: {
  readonly label: string
  readonly onTake: (words: string) => void
  readonly read?: (words: string) => string | null
  readonly mono?: boolean
}) {
  const [words, setWords] = useState('')
  const [wrong, setWrong] = useState(false)
  const take = (event: FormEvent) => {
    event.preventDefault()
    const taken = read(words)
    setWrong(taken === null)
    if (taken !== null) onTake(taken)
  }
  return (
    <form className={css.other} onSubmit={take}>
      <Words label={label} value={words} onChange={setWords} mono={mono} />
      <button type="submit" className={formCss.plain}>
        {t('doubt.take')}
      </button>
      {wrong && (
        <p className={formCss.problem} role="alert">
          {t('doubt.not-a-code')}
        </p>
      )}
    </form>
  )
}
