import { type Exercise, exercises } from '@shearline/practice-car'
import { addressOf } from '../app/route.ts'
import { t } from '../words/index.ts'
import { Exercising } from './Exercising.tsx'
import css from './practice.module.css'
import { exerciseWords } from './practice-words.ts'

/** Exercises at a simulated car. Nothing of them enters a job, a store or a server. */
export default function PracticePage({ exercise: id }: { readonly exercise: string | null }) {
  const all = exercises()
  const exercise = all.find((each) => each.id === id)
  return (
    <div className={css.page}>
      <p className={css.banner}>
        <strong>{t('practice.banner')}</strong> {t('practice.banner.what')}
      </p>
      {exercise === undefined ? <Choose all={all} /> : <Exercising key={exercise.id} exercise={exercise} />}
    </div>
  )
}

function Choose({ all }: { readonly all: readonly Exercise[] }) {
  return (
    <>
      <h1 className={css.title}>{t('practice.title')}</h1>
      <p>{t('practice.choose')}</p>
      <ul className={css.exercises}>
        {all.map((exercise) => {
          const { title, story } = exerciseWords(exercise)
          return (
            <li key={exercise.id}>
              <a className={css.exercise} href={addressOf({ page: 'practice', exercise: exercise.id })}>
                <strong>{title}</strong>
                <span>{story}</span>
              </a>
            </li>
          )
        })}
      </ul>
    </>
  )
}
