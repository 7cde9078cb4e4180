import type { ScanReport } from '@shearline/keywork'
import formCss from '../../form/form.module.css'
import { say } from '../../words/engine.ts'
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
}: {
  readonly report: ScanReport
  readonly units: ScannedUnits
  readonly open: boolean
  readonly answers: Answers
}) {
  const shown = units.filter((unit) => unit.unit !== '')
  const kept = new Set(units.map((unit) => unit.unit))
  const silent = report.units.filter(({ name }) => !kept.has(name) && !answers.headings.has(name))
  const title = t(open ? 'report.so-far' : 'report.understood')
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
          {t('report.unread-units', { units: silent.map((unit) => unit.name).join(', ') })}
        </p>
      )}
      {!open && <p className={formCss.hint}>{t('report.not-kept')}</p>}
    </section>
  )
}
