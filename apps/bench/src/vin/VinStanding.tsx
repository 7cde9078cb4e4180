import { proposeRepairs, readVin, tidyVin } from '@shearline/keywork'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { MarkedVin } from './MarkedVin.tsx'

/** What form and check digit say of a VIN, and what it may have been: proposals, each one tap away. */
export function VinStanding({
  text,
  onRepair,
}: {
  readonly text: string
  readonly onRepair: (vin: string) => void
}) {
  if (tidyVin(text).length !== 17) return null
  const reading = readVin(text)
  const right = reading.wellFormed && reading.checkDigit?.ok === true
  const repairs = right ? [] : proposeRepairs(text).slice(0, 3)
  return (
    <>
      <p className={formCss.hint} role="status">
        {reading.wellFormed ? t('vin.well-formed') : t('vin.not-well-formed')}{' '}
        {reading.checkDigit !== null &&
          t(reading.checkDigit.ok ? 'vin.check.ok' : 'vin.check.other', {
            expected: reading.checkDigit.expected,
          })}
      </p>
      {repairs.length > 0 && (
        <div className={formCss.field}>
          <span className={formCss.label}>{t('vin.repairs')}</span>
          <div className={formCss.choices}>
            {repairs.map((repair) => (
              <button
                key={repair.vin}
                type="button"
                className={formCss.plain}
                onClick={() => onRepair(repair.vin)}
              >
                <span className="mono">
                  <MarkedVin vin={repair.vin} positions={repair.changes.map((change) => change.position)} />
                </span>
              </button>
            ))}
          </div>
        </div>
      )}
    </>
  )
}
