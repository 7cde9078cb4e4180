import { number } from '../../words/amounts.ts'
import { t } from '../../words/index.ts'

/** A duration as people say it; null: there is no figure. Parts of a minute count as a whole one. */
export function lasting(seconds: number | null): string {
  if (seconds === null) return t('lasting.none')
  if (seconds < 90) return t('lasting.seconds', { count: Math.round(seconds), figure: number(seconds) })
  const minutes = Math.ceil(seconds / 60)
  return t('lasting.minutes', { count: minutes, figure: number(minutes) })
}

/** A running clock: `03:12`, with hours once there are any. */
export function running(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds))
  const two = (value: number) => String(value).padStart(2, '0')
  const hours = Math.floor(whole / 3600)
  const rest = `${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`
  return hours === 0 ? rest : `${hours}:${rest}`
}
