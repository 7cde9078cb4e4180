import type { SampleFormat } from '@shearline/keywork'
import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import type { Given, Setting } from './messages.ts'

const sampleFormats = [
  'cu8',
  'cs8',
  'cs16',
  'cf32',
  'cs16be',
  'cf32be',
] as const satisfies readonly SampleFormat[]

/** How a recording was made, asked where neither its name nor SigMF says it, or put right by hand. */
export function SettingForm({
  setting,
  onGiven,
}: {
  readonly setting: Setting
  readonly onGiven: (given: Given) => void
}) {
  const [rate, setRate] = useState(setting.sampleRateHz === null ? null : setting.sampleRateHz / 1000)
  const [centre, setCentre] = useState(setting.centreHz === null ? null : setting.centreHz / 1e6)
  const [format, setFormat] = useState<SampleFormat | null>(setting.format)
  return (
    <form
      className={formCss.form}
      onSubmit={(event) => {
        event.preventDefault()
        if (rate === null || format === null) return
        onGiven({
          sampleRateHz: Math.round(rate * 1000),
          format,
          ...(centre === null ? {} : { centreHz: Math.round(centre * 1e6) }),
        })
      }}
    >
      <Amount
        label={t('remote.rate')}
        unit={t('remote.rate.unit')}
        value={rate}
        onChange={setRate}
        least={10}
        most={100_000}
        step={50}
        decimals={3}
      />
      <Amount
        label={t('remote.centre')}
        unit="MHz"
        hint={t('remote.centre.hint')}
        value={centre}
        onChange={setCentre}
        most={6000}
        step={0.1}
        decimals={6}
        optional
      />
      <Choice
        label={t('remote.format')}
        value={format}
        onChange={setFormat}
        options={sampleFormats.map((one) => [one, t(`remote.format.${one}`)] as const)}
      />
      <div className={formCss.foot}>
        <button type="submit" className={formCss.submit}>
          {t('remote.measure')}
        </button>
      </div>
    </form>
  )
}
