/** @module Instants as people read them: in the job's own zone, never in the reader's. */
import { region } from './index.ts'

const forms = {
  clock: { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' },
  day: { weekday: 'short', day: 'numeric', month: 'short' },
  dayOfYear: { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' },
} as const satisfies Record<string, Intl.DateTimeFormatOptions>

/** Making a format is slow, using one is not; a page shows hundreds of instants. */
const made = new Map<string, Intl.DateTimeFormat>()

function format(locale: string, zone: string, form: string, options: Intl.DateTimeFormatOptions) {
  const key = `${locale} ${zone} ${form}`
  const known = made.get(key)
  if (known !== undefined) return known
  const fresh = new Intl.DateTimeFormat(locale, { ...options, timeZone: knownZone(zone) })
  made.set(key, fresh)
  return fresh
}

/** Hour and minute of a UTC instant in a zone: `09:12`. */
export function clock(at: string, zone: string): string {
  return format(region(), zone, 'clock', forms.clock).format(new Date(at))
}

/** Day and month of a UTC instant in a zone: `Wed 25 Nov`; with its year when that is not the present one. */
export function day(at: string, zone: string, now: Date = new Date()): string {
  const form = dayKey(at, zone).slice(0, 4) === dayKey(now, zone).slice(0, 4) ? 'day' : 'dayOfYear'
  return format(region(), zone, form, forms[form]).format(new Date(at))
}

/** The calendar day of an instant in a zone as `2026-11-25`, for grouping. */
export function dayKey(at: string | Date, zone: string): string {
  return format('en-CA', zone, 'key', { dateStyle: 'short' }).format(new Date(at))
}

/** The zone of this device, an IANA name. */
export function ownZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone
}

/** A record may hold a zone this browser does not know; UTC is then shown rather than nothing. */
function knownZone(zone: string): string {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone })
    return zone
  } catch {
    return 'UTC'
  }
}
