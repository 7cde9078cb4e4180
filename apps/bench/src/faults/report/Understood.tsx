import type { ScanReport } from '@shearline/keywork'
import formCss from '../../form/form.module.css'
import { listMark, say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import type { ScannedUnits } from '../scanned.ts'
import type { Answers } from './questions.ts'
import css from './report.module.css'

/** The codes by unit as they will be kept. While a question is open, codes without a unit are not listed. */
export function Understood({
  report,
  units,
  open,
  answers,
  kept = false,
}: {
  readonly report: ScanReport
  readonly units: ScannedUnits
  readonly open: boolean
  readonly answers: Answers
  /** It is on record already. */
  readonly kept?: boolean
}) {
  const shown = units.filter((unit) => unit.unit !== '')
  const read = new Set(units.map((unit) => unit.unit))
  const silent = report.units.filter(({ name }) => !read.has(name) && !answers.headings.has(name))
  const title = t(open ? 'report.so-far' : kept ? 'report.was-kept' : 'report.understood')
  const wordingOf = (code: string) => report.codes.find((read) => read.fault.code === code)?.wording ?? ''
  return (
    <section className={css.understood} aria-label={title}>
      <h4 className={css.title}>{title}</h4>
      {shown.length === 0 && <p className={formCss.hint}>{t('report.none-understood')}</p>}
      <ul className={css.units}>
        {shown.map((unit) => (
          <li key={unit.unit}>
            <strong>{unit.unit}</strong>
            {unit.faults.length === 0 ? (
              <p>{t('report.no-fault')}</p>
            ) : (
              <ul>
                {unit.faults.map((fault) => (
                  <li key={`${fault.code} ${fault.list}`}>
                    <code>{fault.code}</code>
                    {fault.list !== undefined && ` ${say(`claim.${fault.list}`)}`}{' '}
                    {wordingOf(fault.code) !== '' && (
                      <span className={formCss.hint}>
                        {t('report.wording', { words: wordingOf(fault.code) })}
                      </span>
                    )}
                  </li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </ul>
      {!open && silent.length > 0 && (
        <p className={formCss.hint}>
          {t('report.unread-units', { units: silent.map((unit) => unit.name).join(listMark()) })}
        </p>
      )}
      {!open && !kept && <p className={formCss.hint}>{t('report.kept-beside')}</p>}
    </section>
  )
}
