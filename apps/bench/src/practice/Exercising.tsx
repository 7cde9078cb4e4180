import type { Action, Exercise, Score } from '@shearline/practice-car'
import { useMemo, useRef, useState } from 'react'
import { addressOf } from '../app/route.ts'
import formCss from '../form/form.module.css'
import { type Desk, DeskProvider } from '../job/desk.ts'
import { Session } from '../teaching/guide/Session.tsx'
import { ClockAhead } from '../teaching/guide/useNow.ts'
import { Rehearsal } from '../teaching/rehearsal/Rehearsal.tsx'
import { t } from '../words/index.ts'
import { ownZone } from '../words/instants.ts'
import { AtTheCar, CarLog } from './AtTheCar.tsx'
import css from './practice.module.css'
import { exerciseWords, outcomeWords } from './practice-words.ts'
import { CarSaysOtherwise, PracticeRun, practiceJob } from './run.ts'
import { Scored } from './Scored.tsx'

/** One attempt: the story, the car, the same guide as in a job, and the score at the end. */
export function Exercising({ exercise }: { readonly exercise: Exercise }) {
  const [run, setRun] = useState(() => new PracticeRun(exercise, ownZone()))
  const [changes, setChanges] = useState(0)
  const [score, setScore] = useState<Score | null>(null)
  const name = useRef<HTMLHeadingElement>(null)
  const { title, story } = exerciseWords(exercise)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the run changes in place, and says so by counting
  const desk = useMemo(() => deskOf(run, () => setChanges((count) => count + 1)), [run, changes])
  const act = (action: Action) => {
    run.act(action)
    setChanges((count) => count + 1)
  }
  const again = () => {
    setRun(new PracticeRun(exercise, ownZone()))
    setScore(null)
    name.current?.focus()
  }
  return (
    <DeskProvider value={desk}>
      <ClockAhead value={run.aheadMs}>
        <h1 className={css.title} ref={name} tabIndex={-1}>
          {title}
        </h1>
        <p>{story}</p>
        {score !== null ? (
          <Scored score={score} onAgain={again} />
        ) : (
          <div className={css.two}>
            <AtTheCar run={run} onAct={act} />
            <section className={css.guide} aria-label={t('practice.guide')}>
              <details className={formCss.more}>
                <summary>{t('practice.rehearse')}</summary>
                <Rehearsal />
              </details>
              <Session />
              <div className={formCss.foot}>
                <button type="button" className={formCss.plain} onClick={() => setScore(run.score())}>
                  {t('practice.finish')}
                </button>
              </div>
            </section>
          </div>
        )}
        {score === null && <CarLog run={run} />}
        <p>
          <a className={css.back} href={addressOf({ page: 'practice', exercise: null })}>
            {t('practice.other')}
          </a>
        </p>
      </ClockAhead>
    </DeskProvider>
  )
}

/** The parts of a job page work here too; what they record goes to the practice car and into memory only. */
function deskOf(run: PracticeRun, onChange: () => void): Desk {
  return {
    job: practiceJob,
    state: run.state,
    facts: run.facts,
    by: t('practice.by'),
    zone: ownZone(),
    record: async (drafts) => {
      try {
        run.record(drafts)
      } catch (error) {
        if (error instanceof CarSaysOtherwise)
          throw new Error(t('practice.otherwise', { what: outcomeWords(error.outcome) }))
        throw error
      } finally {
        onChange()
      }
    },
    signedBy: async () => t('practice.by'),
    goTo: () => undefined,
  }
}
