import { number } from '../words/amounts.ts'
import { t } from '../words/index.ts'

/** Seconds since the beginning of a recording: `12.345 s`, from a minute on `2:05.123`, from an hour on `1:02:05`. */
export function elapsed(seconds: number, decimals: number): string {
  const factor = 10 ** decimals
  const rounded = Math.round(Math.abs(seconds) * factor) / factor
  const sign = seconds < 0 && rounded > 0 ? '\u2212' : ''
  if (rounded < 60) return t('elapsed.seconds', { seconds: `${sign}${number(rounded, decimals, decimals)}` })
  const whole = Math.floor(rounded)
  const hours = Math.floor(whole / 3600)
  const minutes = Math.floor(whole / 60) % 60
  const rest = new Intl.NumberFormat('en', {
    minimumIntegerDigits: 2,
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  }).format(rounded % 60)
  return hours > 0
    ? `${sign}${hours}:${String(minutes).padStart(2, '0')}:${rest}`
    : `${sign}${minutes}:${rest}`
}

/** How long something lasts, as coarse as it deserves: `3 ms`, `0.25 s`, `12 s`. */
export function lasting(seconds: number): string {
  if (seconds < 0.1) return t('elapsed.milliseconds', { milliseconds: number(seconds * 1000, 1) })
  return seconds < 60
    ? t('elapsed.seconds', { seconds: number(seconds, seconds < 10 ? 2 : 0) })
    : elapsed(seconds, 0)
}
