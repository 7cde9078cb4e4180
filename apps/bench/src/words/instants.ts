/** @module Instants as people read them: in the job's own zone, never in the reader's. */
import { region } from './index.ts'

/** Hour and minute of a UTC instant in a zone: `09:12`. */
export function clock(at: string, zone: string): string {
  return new Intl.DateTimeFormat(region(), {
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
    timeZone: safe(zone),
  }).format(new Date(at))
}

/** Day and month of a UTC instant in a zone: `Wed 25 Nov`. */
export function day(at: string, zone: string): string {
  return new Intl.DateTimeFormat(region(), {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    timeZone: safe(zone),
  }).format(new Date(at))
}

/** The calendar day of an instant in a zone as `2026-11-25`, for grouping. */
export function dayKey(at: string | Date, zone: string): string {
  return new Intl.DateTimeFormat('en-CA', { timeZone: safe(zone), dateStyle: 'short' }).format(new Date(at))
}

/** The zone of this device, an IANA name. */
export function ownZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone
}

/** A record may hold a zone this browser does not know; UTC is then shown rather than nothing. */
function safe(zone: string): string {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone })
    return zone
  } catch {
    return 'UTC'
  }
}
