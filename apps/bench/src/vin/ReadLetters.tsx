import { useEffect, useState } from 'react'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { doubtfulBelow, type PlateVin } from './found-vin.ts'
import type { PlateReading } from './plate-letters.ts'
import { VinStanding } from './VinStanding.tsx'
import css from './vin.module.css'

/** The letters of a picture, read only when asked, shown beside the picture, taken only when each sign was compared. */
export function ReadLetters({
  picture,
  onTake,
}: {
  readonly picture: Blob
  readonly onTake: (vin: string) => void
}) {
  const [address, setAddress] = useState('')
  const [reading, setReading] = useState<PlateReading | null>(null)
  const [share, setShare] = useState(0)
  const [vins, setVins] = useState<readonly PlateVin[] | null>(null)
  const [problem, setProblem] = useState('')
  useEffect(() => {
    const made = URL.createObjectURL(picture)
    setAddress(made)
    return () => URL.revokeObjectURL(made)
  }, [picture])
  useEffect(() => () => reading?.stop(), [reading])
  const read = async () => {
    setProblem('')
    setShare(0)
    try {
      const { readPlate } = await import('./plate-letters.ts')
      const started = readPlate(picture, setShare)
      setReading(started)
      setVins(await started.vins)
    } catch (error) {
      setProblem(t('vin.letters.failed', { why: problemWords(error) }))
    }
    setReading(null)
  }
  return (
    <>
      {address !== '' && <img className={css.plate} src={address} alt={t('vin.letters.picture')} />}
      {reading !== null ? (
        <>
          <label className={formCss.field}>
            <span className={formCss.label}>{t('vin.letters.reading')}</span>
            <progress className={css.progress} max={1} value={share} />
          </label>
          <div className={formCss.foot}>
            <button type="button" className={formCss.plain} onClick={() => setReading(null)}>
              {t('vin.letters.stop')}
            </button>
          </div>
        </>
      ) : vins === null ? (
        <>
          <p>{t('vin.letters.offer')}</p>
          <div className={formCss.foot}>
            <button type="button" className={formCss.submit} onClick={() => void read()}>
              {t('vin.letters.read')}
            </button>
          </div>
        </>
      ) : vins.length === 0 ? (
        <p role="status">{t('vin.letters.none')}</p>
      ) : (
        <Compare vins={vins} onTake={onTake} />
      )}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
    </>
  )
}

function Compare({
  vins,
  onTake,
}: {
  readonly vins: readonly PlateVin[]
  readonly onTake: (vin: string) => void
}) {
  const [index, setIndex] = useState(0)
  const [repaired, setRepaired] = useState<string | null>(null)
  const [compared, setCompared] = useState(false)
  const read = vins[index]
  if (read === undefined) return null
  const vin = repaired ?? read.vin
  const doubtful = read.signs.filter(({ confidence }) => confidence < doubtfulBelow).length
  const choose = (next: number) => {
    setIndex(next)
    setRepaired(null)
    setCompared(false)
  }
  return (
    <>
      <p className={formCss.problem} role="alert">
        <strong>{t('vin.letters.mark')}</strong> {t('vin.letters.doubtful', { count: doubtful })}
      </p>
      <ol className={css.signs} aria-label={t('vin.letters.signs', { vin: [...vin].join(' ') })}>
        {[...vin].map((sign, place) => (
          <li
            // biome-ignore lint/suspicious/noArrayIndexKey: a VIN's signs are told apart by their position
            key={place}
            data-doubtful={(read.signs[place]?.confidence ?? 0) < doubtfulBelow}
            data-repaired={sign !== read.vin[place]}
          >
            <code>{sign}</code>
            <small>{place + 1}</small>
          </li>
        ))}
      </ol>
      <VinStanding
        text={vin}
        onRepair={(next) => {
          setRepaired(next)
          setCompared(false)
        }}
      />
      {vins.length > 1 && (
        <div className={formCss.foot}>
          <button type="button" className={formCss.plain} onClick={() => choose((index + 1) % vins.length)}>
            {t('vin.letters.next')}
          </button>
        </div>
      )}
      <label className={css.compared}>
        <input type="checkbox" checked={compared} onChange={(event) => setCompared(event.target.checked)} />
        {t('vin.letters.compared')}
      </label>
      <div className={formCss.foot}>
        <button type="button" className={formCss.submit} disabled={!compared} onClick={() => onTake(vin)}>
          {t('vin.take')}
        </button>
      </div>
    </>
  )
}
