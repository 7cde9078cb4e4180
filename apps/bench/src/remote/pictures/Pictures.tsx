import type { RemotePictures, SenderMeasurement } from '@shearline/keywork'
import { lasting } from '../../recording/elapsed.ts'
import { kilohertz, megahertz, number } from '../../words/amounts.ts'
import { readable, t } from '../../words/index.ts'
import type { Measured } from '../messages.ts'
import css from '../remote.module.css'
import { carrierWords } from '../say-remote.ts'
import { lengths } from '../Values.tsx'
import { Pair, type Row } from './Pair.tsx'
import {
  across,
  high,
  outlineArea,
  pulseLine,
  spectrumLines,
  type Window,
  waterfallShades,
  wide,
  windowsOf,
} from './shapes.ts'

/** A recording that has something to draw. */
interface Drawn {
  readonly name: string
  readonly sender: SenderMeasurement
  readonly pictures: RemotePictures
  readonly seconds: number
  readonly sampleRateHz: number
  /** Its centre less the original's, hertz; 0 when one is not known. */
  readonly shiftHz: number
}

/** Both remotes, picture by picture, one above the other. */
export function Pictures({ original, fresh }: { readonly original: Measured; readonly fresh: Measured }) {
  const centreHz = original.measurement.centreHz
  const both = [
    drawn(t('remote.original'), original, centreHz),
    drawn(t('remote.new'), fresh, centreHz),
  ].filter((one) => one !== null)
  if (both.length === 0) return null
  const windows = windowsOf(
    both.map(({ sender, shiftHz, sampleRateHz }) => ({
      sampleRateHz,
      shiftHz,
      carrierOffsetHz: sender.carrierOffsetHz,
      widthHz: sender.occupiedBandwidthHz,
    })),
  )
  const known = bothKnown(original, fresh) ? centreHz : null
  const placed = both.flatMap((one, at) => {
    const window = windows[at]
    return window === undefined ? [] : [{ one, window, frequencies: frequencyAxis(window, known) }]
  })
  const apart = windows.some((window) => window !== windows[0])
  return (
    <section className={css.part}>
      <h3 className={css.partName}>{t('remote.pictures')}</h3>
      <p className={css.quiet}>{t('remote.pictures.content')}</p>
      <div className={css.pictures}>
        <Pair
          title={t('remote.spectrum')}
          note={
            apart ? `${t('remote.spectrum.key')} ${t('remote.spectrum.apart')}` : t('remote.spectrum.key')
          }
          {...(apart ? {} : { axis: placed[0]?.frequencies ?? [] })}
          rows={placed.map(({ one, window, frequencies }) => ({
            ...spectrumRow(one, window),
            ...(apart ? { axis: frequencies } : {}),
          }))}
        />
        <Pair title={t('remote.burst')} note={t('remote.burst.key')} {...burstRows(both)} />
        <Pair
          title={t('remote.waterfall')}
          note={t('remote.waterfall.key')}
          rows={placed.map(({ one, window, frequencies }) => waterfallRow(one, window, frequencies))}
        />
        {both.some(({ pictures }) => pictures.pulse !== null) && (
          <Pair title={t('remote.pulse')} note={t('remote.pulse.key')} {...pulseRows(both)} />
        )}
      </div>
    </section>
  )
}

function bothKnown(original: Measured, fresh: Measured): boolean {
  return original.measurement.centreHz !== null && fresh.measurement.centreHz !== null
}

function drawn(name: string, { measurement, pictures }: Measured, originalHz: number | null): Drawn | null {
  const { sender, centreHz, seconds, sampleRateHz } = measurement
  if (sender === null || pictures === null) return null
  const shiftHz = originalHz === null || centreHz === null ? 0 : centreHz - originalHz
  return { name, sender, pictures, seconds, sampleRateHz, shiftHz }
}

function frequencyAxis({ lowHz, highHz }: Window, centreHz: number | null): readonly string[] {
  return [lowHz, (lowHz + highHz) / 2, highHz].map((hertz) =>
    centreHz === null ? kilohertz(hertz) : megahertz(centreHz + hertz),
  )
}

function spectrumRow({ name, sender, pictures, shiftHz }: Drawn, window: Window): Row {
  const { burst, quiet } = spectrumLines(pictures.spectrum, shiftHz, window)
  const marks = sender.tonesHz ?? [sender.carrierOffsetHz]
  return {
    name,
    says: t('remote.spectrum.says', {
      name,
      carrier: carrierWords(sender),
      width: kilohertz(sender.occupiedBandwidthHz),
      snr: number(sender.snrDb),
    }),
    drawing: (
      <>
        <path className={css.quietLine} d={quiet} />
        <path className={css.burstLine} d={burst} />
        {marks.map((hertz) => {
          const x = across(hertz + shiftHz, window)
          return <line key={hertz} className={css.carrier} x1={x} x2={x} y1={0} y2={high} />
        })}
      </>
    ),
  }
}

function waterfallRow(
  { name, sender, pictures, shiftHz, seconds }: Drawn,
  window: Window,
  frequencies: readonly string[],
): Row {
  return {
    name,
    upwards: t('remote.waterfall.range', { low: frequencies[0] ?? '', high: frequencies.at(-1) ?? '' }),
    axis: ['', lasting(seconds)],
    says: t('remote.waterfall.says', {
      name,
      bursts: sender.bursts.count,
      seconds: lasting(seconds),
      carrier: carrierWords(sender),
    }),
    drawing: waterfallShades(pictures.waterfall, shiftHz, window).map(({ opacity, d }) => (
      <path key={opacity} className={css.shade} opacity={opacity} d={d} />
    )),
  }
}

function burstRows(both: readonly Drawn[]): {
  readonly rows: readonly Row[]
  readonly axis: readonly string[]
} {
  const lead = Math.max(...both.map(({ pictures }) => pictures.outline.leadSeconds))
  const seconds = Math.max(
    ...both.map(
      ({ pictures: { outline } }) =>
        lead - outline.leadSeconds + outline.levelsDb.length * outline.secondsPerPoint,
    ),
  )
  return {
    axis: ['', '', lasting(seconds)],
    rows: both.map(({ name, sender, pictures }) => ({
      name,
      says: t('remote.burst.says', { name, length: lasting(sender.bursts.longestSeconds) }),
      drawing: (
        <>
          <path className={css.outline} d={outlineArea(pictures.outline, lead, seconds)} />
          <line
            className={css.start}
            x1={(wide * lead) / seconds}
            x2={(wide * lead) / seconds}
            y1={0}
            y2={high}
          />
        </>
      ),
    })),
  }
}

function pulseRows(both: readonly Drawn[]): {
  readonly rows: readonly Row[]
  readonly axis: readonly string[]
} {
  const pulses = both.map(({ pictures }) => pictures.pulse).filter((pulse) => pulse !== null)
  const lead = Math.max(...pulses.map(({ leadUs }) => leadUs))
  const us = Math.max(...pulses.map((pulse) => lead - pulse.leadUs + pulse.levels.length * pulse.usPerPoint))
  return {
    axis: ['', '', readable(`${number(us)}\u00a0µs`)],
    rows: both.map(({ name, sender, pictures: { pulse } }) =>
      pulse === null
        ? { name, says: t('remote.pulse.none', { name }), drawing: null }
        : {
            name,
            says: t('remote.pulse.says', { name, pulses: pulse.pulses, lengths: lengths(sender.pulses) }),
            drawing: <path className={css.burstLine} d={pulseLine(pulse, lead, us)} />,
          },
    ),
  }
}
