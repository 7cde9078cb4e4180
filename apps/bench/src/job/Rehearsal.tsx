import { useState } from 'react'
import formCss from '../form/form.module.css'
import { Tag } from '../keys/Tag.tsx'
import { t } from '../words/index.ts'
import { breakPoints, dearest } from './break-points.ts'
import { useDesk } from './desk.ts'
import { keysSentence, planOf, wayBackSentence } from './if-it-stops.ts'
import css from './job.module.css'
import { Part, RecordForm } from './Part.tsx'
import { teachingOrder } from './teaching-order.ts'

/** The session step by step, each with what holds if it stops there. Reading it is a fact. */
export function Rehearsal() {
  const { state } = useDesk()
  const { rehearsal, rule, taught } = state.teaching
  const [order, setOrder] = useState<readonly string[] | null>(null)
  const proposed = teachingOrder(state)
  const shown = order !== null && order.length === proposed.length ? order : proposed
  const missing = proposed.filter((key) => rehearsal?.order.includes(key) === false)
  const plan = planOf(state)
  const points = breakPoints(plan, shown)
  const names = [t('rehearsal.open'), ...shown.map((key) => t('rehearsal.key', { key }))]
  const move = (from: number, to: number) => {
    const next = [...shown]
    const [key] = next.splice(from, 1)
    if (key !== undefined) next.splice(to, 0, key)
    setOrder(next)
  }
  return (
    <Part
      title={t('rehearsal.title')}
      need="rehearsal-not-read"
      settled={rehearsal !== null && (missing.length === 0 || taught.length > 0)}
      more={t('rehearsal.again')}
      about={
        rehearsal !== null && (
          <p>
            {t('rehearsal.read', {
              order: rehearsal.order.join(', '),
              wayBack: t(`way-back.${rehearsal.wayBack}`),
            })}
            {missing.length > 0 &&
              ` ${t('rehearsal.missing', { keys: missing.join(', '), count: missing.length })}`}
          </p>
        )
      }
    >
      {shown.length === 0 ? (
        <p>{t('rehearsal.no-keys')}</p>
      ) : (
        <>
          {rule === null && <p className={css.small}>{t('stops.not-rehearsed')}</p>}
          {!state.keys.some((key) => key.origin === 'new') && (
            <p className={css.small}>{t('rehearsal.no-new')}</p>
          )}
          <ol className={css.steps}>
            {points.map((point, index) => {
              const key = shown[index - 1]
              const jobKey = state.keys.find((one) => one.id === key)
              return (
                <li key={names[index]} className={css.rehearsed} data-stranded={point.stranded}>
                  <span className={css.rehearsedHead}>
                    {jobKey !== undefined && <Tag letter={jobKey.id} colour={jobKey.colour} />}
                    <strong>{names[index]}</strong>
                    {index > 1 && (
                      <button
                        type="button"
                        className={formCss.plain}
                        onClick={() => move(index - 1, index - 2)}
                      >
                        {t('rehearsal.earlier')}
                      </button>
                    )}
                  </span>
                  <span>
                    <span className={css.small}>{t('stops.title')}: </span>
                    {keysSentence(point, plan.known)}{' '}
                    <span className={css.quiet}>{wayBackSentence(point.wayBack)}</span>
                  </span>
                </li>
              )
            })}
          </ol>
          <RecordForm
            submit={t('rehearsal.record')}
            drafts={() => [
              {
                kind: 'rehearsal-read',
                body: {
                  order: [...shown],
                  strandedAt: names.filter((_, index) => points[index]?.stranded === true),
                  wayBack: dearest(points),
                },
              },
            ]}
          >
            <p>{t('rehearsal.sure')}</p>
          </RecordForm>
        </>
      )}
    </Part>
  )
}
