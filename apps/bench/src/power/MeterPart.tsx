import type { MeterLine } from '@shearline/keywork'
import { useEffect, useRef, useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { baudRates, type MeterSpeech, type OpenMeter, openMeter, serialHere } from './serial-meter.ts'

const place = 'shearline-meter'
const kept = (): { readonly baud: string; readonly speech: MeterSpeech } => {
  const [baud = '9600', speech] = (localStorage.getItem(place) ?? '').split(' ')
  return { baud: baud === '' ? '9600' : baud, speech: speech === 'listened' ? 'listened' : 'asked' }
}

/** Reads a serial meter from a tap on; says plainly where the browser cannot. */
export function MeterPart({
  before,
  onVolts,
  onEnd,
}: {
  /** Awaited before the port is asked for; rejects to give up. */
  readonly before: () => Promise<unknown>
  readonly onVolts: (volts: number) => void
  readonly onEnd: () => void
}) {
  const serial = serialHere()
  const [settings, setSettings] = useState(kept)
  const [meter, setMeter] = useState<OpenMeter | null>(null)
  const [said, setSaid] = useState('')
  const hear = useRef(onVolts)
  hear.current = onVolts
  const open = useRef<OpenMeter | null>(null)
  useEffect(() => () => void open.current?.close(), [])

  if (serial === null) return <p className={formCss.hint}>{t('power.meter.none')}</p>
  const set = (next: typeof settings) => {
    setSettings(next)
    localStorage.setItem(place, `${next.baud} ${next.speech}`)
  }
  const line = (heard: MeterLine) => {
    if ('refused' in heard) setSaid(t('power.meter.odd', { what: say(`power-meter.${heard.refused}`) }))
    else if (heard.quantity === 'amperes')
      setSaid(t('power.meter.odd', { what: say('power-meter.other-unit') }))
    else {
      setSaid('')
      hear.current(heard.value)
    }
  }
  const connect = async () => {
    try {
      await before()
      const opened = await openMeter(serial, Number(settings.baud), settings.speech, line)
      open.current = opened
      setMeter(opened)
      setSaid(t('power.meter.waits'))
      const how = await opened.ended
      open.current = null
      setMeter(null)
      setSaid(t(`power.meter.${how}`))
      onEnd()
    } catch (error) {
      const none = error instanceof DOMException && error.name === 'NotFoundError'
      setSaid(
        none
          ? t('power.meter.not-chosen')
          : t('power.meter.failed', { what: error instanceof Error ? error.message : String(error) }),
      )
    }
  }
  return (
    <>
      {meter === null && (
        <>
          <Choice
            label={t('power.meter.baud')}
            hint={t('power.meter.baud.hint')}
            value={settings.baud}
            onChange={(baud) => set({ ...settings, baud })}
            options={baudRates.map((rate) => [String(rate), String(rate)])}
            optional
          />
          <Choice
            label={t('power.meter.speech')}
            hint={t('power.meter.speech.hint')}
            value={settings.speech}
            onChange={(speech) => set({ ...settings, speech })}
            options={[
              ['asked', t('power.meter.asked')],
              ['listened', t('power.meter.listened')],
            ]}
            optional
          />
        </>
      )}
      <div className={formCss.foot}>
        {meter === null ? (
          <button type="button" className={formCss.plain} onClick={() => void connect()}>
            {t('power.meter.connect')}
          </button>
        ) : (
          <button type="button" className={formCss.plain} onClick={() => void meter.close()}>
            {t('power.meter.close')}
          </button>
        )}
      </div>
      <p className={formCss.hint} role="status">
        {said}
      </p>
    </>
  )
}
