import { type Language, languageFor, languages, type SheetName, type SheetOffer } from '@shearline/jobfile'
import { useEffect, useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { Part } from '../job/Part.tsx'
import { t } from '../words/index.ts'
import { ownNames } from '../words/languages.ts'
import { problemWords } from '../words/problem.ts'
import { inWorker } from './in-worker.ts'
import { RegisterRow } from './RegisterRow.tsx'
import { recordHere } from './record-here.ts'
import { SheetRow } from './SheetRow.tsx'
import css from './sheets.module.css'

/**
 * The sheets of a job: a line on what each would say, its language chosen for the reader. `only` names those that
 * belong to a chapter; a sheet the record holds nothing for stands folded away there.
 */
export function SheetsPart({
  only,
  register = false,
}: {
  readonly only?: readonly SheetName[]
  readonly register?: boolean
}) {
  const { job, state, facts } = useDesk()
  const [language, setLanguage] = useState<Language>(languageFor(state.opened?.language ?? 'en'))
  const [offers, setOffers] = useState<readonly SheetOffer[]>([])
  const [open, setOpen] = useState(false)
  const [problem, setProblem] = useState('')
  const known = facts.length

  // biome-ignore lint/correctness/useExhaustiveDependencies: `known` is the sign that something was recorded
  useEffect(() => {
    if (!open) return
    let live = true
    recordHere(job)
      .then((record) => inWorker({ what: 'offers', record, language }))
      .then(
        (answer) => {
          if (live) setOffers(answer.offers)
        },
        (error: unknown) => {
          if (live) setProblem(problemWords(error))
        },
      )
    return () => {
      live = false
    }
  }, [job, language, known, open])

  const shown = offers.filter(({ sheet }) => only === undefined || only.includes(sheet))
  const ready = shown.filter((offer) => offer.ready)
  const others = shown.filter((offer) => !offer.ready)
  const rows = (list: readonly SheetOffer[]) => (
    <ul className={css.sheets}>
      {list.map((offer) => (
        <SheetRow key={`${offer.sheet}-${language}-${known}`} offer={offer} language={language} />
      ))}
    </ul>
  )
  return (
    <Part title={t('sheets.title')}>
      <details className={formCss.more} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{t('sheets.show')}</summary>
        <p>{t('sheets.about')}</p>
        {languages.length > 1 && (
          <Choice
            label={t('sheets.language')}
            options={languages.map((one) => [
              one,
              <span key={one} lang={one}>
                {ownNames[one]}
              </span>,
            ])}
            value={language}
            onChange={setLanguage}
            optional
          />
        )}
        {ready.length > 0 && rows(ready)}
        {others.length > 0 && (
          <details className={formCss.more}>
            <summary>{t('sheets.others')}</summary>
            {rows(others)}
          </details>
        )}
        {problem !== '' && (
          <p className={formCss.problem} role="alert">
            {problem}
          </p>
        )}
        {open && shown.length === 0 && problem === '' && <p role="status">{t('sheets.looking')}</p>}
        {register && <RegisterRow />}
      </details>
    </Part>
  )
}
