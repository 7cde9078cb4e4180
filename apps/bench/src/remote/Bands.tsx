import {
  type BandRow,
  bandInformation,
  fieldStrengthLimit,
  type RadioRegion,
  type RemoteMeasurement,
} from '@shearline/keywork'
import { useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import { useDesk } from '../job/desk.ts'
import { packText } from '../policy/pack-text.ts'
import { packNamed, usePacks } from '../policy/usePacks.ts'
import { megahertz, number } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import { regionOfJob, regions } from './region.ts'
import css from './remote.module.css'

/** What a sender may do at the measured carriers, by region, with its source. No verdict depends on it. */
export function Bands({
  original,
  fresh,
}: {
  readonly original: RemoteMeasurement
  readonly fresh: RemoteMeasurement
}) {
  const { state, zone } = useDesk()
  const { packs } = usePacks()
  // Undefined until somebody chooses here: the firm's own packs are read only after the first drawing.
  const [chosen, setChosen] = useState<RadioRegion | null>()
  const region = chosen === undefined ? regionOfJob(packNamed(packs, state.policy?.pack), zone) : chosen
  const carriers = [original.sender?.carrierHz ?? null, fresh.sender?.carrierHz ?? null].filter(
    (carrier) => carrier !== null,
  )
  if (carriers.length === 0) return null
  const found = new Set(
    region === null ? [] : carriers.flatMap((carrier) => bandInformation(carrier, region)),
  )
  const outside =
    region === null ? [] : carriers.filter((carrier) => bandInformation(carrier, region).length === 0)
  return (
    <section className={css.part}>
      <h3 className={css.partName}>{t('remote.bands')}</h3>
      <p className={css.quiet}>{t('remote.bands.note')}</p>
      <Choice
        label={t('remote.region')}
        value={region}
        onChange={setChosen}
        options={regions.map((one) => [one, t(`remote.region.${one}`)] as const)}
        optional
      />
      <ul className={css.bands}>
        {[...found].map((row) => (
          <Band key={`${row.lowHz} ${row.what}`} row={row} carriers={carriers} />
        ))}
        {[...new Set(outside.map((hertz) => megahertz(hertz)))].map((carrier) => (
          <li key={carrier}>{t('remote.band.none', { carrier })}</li>
        ))}
      </ul>
    </section>
  )
}

function Band({ row, carriers }: { readonly row: BandRow; readonly carriers: readonly number[] }) {
  const carrier = carriers.find((hertz) => hertz >= row.lowHz && hertz <= row.highHz)
  const field =
    row.kind === 'limit' && row.source.includes('15.231') && carrier !== undefined
      ? fieldStrengthLimit(carrier)
      : null
  return (
    <li className={css.band}>
      <strong>
        {t('remote.band.range', { low: number(row.lowHz / 1e6, 3), high: number(row.highHz / 1e6, 3) })}
      </strong>
      <span>
        {t(`remote.band.${row.kind}`)}
        {row.what !== '' && `: ${packText(row.what)}`}
      </span>
      {field !== null && carrier !== undefined && (
        <span>
          {t('remote.band.field', {
            carrier: megahertz(carrier),
            microvolts: number(field),
            decibels: number(20 * Math.log10(field), 1),
          })}
        </span>
      )}
      <span className={css.quiet}>
        {row.basis === 'memory'
          ? t('remote.band.memory')
          : t('remote.band.source', { source: packText(row.source) })}
      </span>
    </li>
  )
}
