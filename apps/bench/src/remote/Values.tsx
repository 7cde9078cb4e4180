import type { RemoteMeasurement, SenderMeasurement } from '@shearline/keywork'
import { lasting } from '../recording/elapsed.ts'
import { kilohertz, number } from '../words/amounts.ts'
import { readable, t, type WordKey } from '../words/index.ts'
import css from './remote.module.css'
import { carrierWords, modulationWords } from './say-remote.ts'

const maybe = (value: number | null, words: (value: number) => string): string =>
  value === null ? '\u2013' : words(value)

const rows: readonly (readonly [WordKey, (sender: SenderMeasurement) => string])[] = [
  ['remote.value.modulation', ({ modulation }) => modulationWords(modulation)],
  ['remote.value.carrier', carrierWords],
  ['remote.value.deviation', ({ deviationHz }) => maybe(deviationHz, kilohertz)],
  ['remote.value.rate', ({ symbolRate }) => maybe(symbolRate, number)],
  ['remote.value.pulses', ({ pulses }) => lengths(pulses)],
  ['remote.value.gaps', ({ gaps }) => lengths(gaps)],
  ['remote.value.burst', ({ bursts }) => lasting(bursts.seconds)],
  ['remote.value.repeats', ({ bursts }) => `${bursts.count}; ${bursts.repeats}`],
  ['remote.value.width', ({ occupiedBandwidthHz }) => kilohertz(occupiedBandwidthHz)],
  ['remote.value.snr', ({ snrDb }) => readable(`${number(snrDb)}\u00a0dB`)],
  ['remote.value.clipped', ({ clippedShare }) => readable(`${number(100 * clippedShare)}\u00a0%`)],
]

/** Usual lengths in microseconds, most frequent first. */
export function lengths(clusters: SenderMeasurement['pulses']): string {
  return clusters.length === 0 ? '\u2013' : clusters.map(({ us }) => number(us)).join(' / ')
}

/** What was measured of each, side by side. */
export function Values({
  original,
  fresh,
}: {
  readonly original: RemoteMeasurement
  readonly fresh: RemoteMeasurement
}) {
  const of = ({ sender }: RemoteMeasurement, words: (sender: SenderMeasurement) => string): string =>
    sender === null ? '\u2013' : words(sender)
  return (
    <section className={css.part}>
      <h3 className={css.partName}>{t('remote.values')}</h3>
      <table className={css.values}>
        <thead>
          <tr>
            <th scope="col">{t('remote.value')}</th>
            <th scope="col">{t('remote.original')}</th>
            <th scope="col">{t('remote.new')}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([key, words]) => (
            <tr key={key}>
              <th scope="row">{t(key)}</th>
              <td>{of(original, words)}</td>
              <td>{of(fresh, words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
