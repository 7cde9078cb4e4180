import { type Code, isCode, type Language } from './catalogues.ts'
import { say } from './say.ts'

/** Days since 1970-01-01 of a Gregorian date (the civil-from-days arithmetic in its usual public form). */
function daysSince1970(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year
  const era = Math.floor(y / 400)
  const yearOfEra = y - era * 400
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear
  return era * 146097 + dayOfEra - 719468
}

const form = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/

/** Milliseconds since 1970 of a UTC instant `2026-11-25T09:12:00.000Z`; null when the text is not one. */
export function instantMilliseconds(instant: string): number | null {
  if (!form.test(instant)) return null
  const number = (from: number, to: number): number => {
    let value = 0
    for (let at = from; at < to; at++) value = value * 10 + instant.charCodeAt(at) - 48
    return value
  }
  const days = daysSince1970(number(0, 4), number(5, 7), number(8, 10))
  return (((days * 24 + number(11, 13)) * 60 + number(14, 16)) * 60 + number(17, 19)) * 1000 + number(20, 23)
}

interface WallClock {
  readonly year: string
  readonly month: string
  readonly day: string
  readonly hour: string
  readonly minute: string
}

/** What a clock in the zone showed, read digit by digit so that no locale table decides how it is written. */
function wallClock(milliseconds: number, zone: string): WallClock | null {
  try {
    const parts = new Intl.DateTimeFormat('en-GB', {
      timeZone: zone,
      calendar: 'gregory',
      numberingSystem: 'latn',
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: '2-digit',
      minute: '2-digit',
    }).formatToParts(milliseconds)
    const part = (type: string) => parts.find((candidate) => candidate.type === type)?.value ?? ''
    return {
      year: part('year'),
      month: String(Number(part('month'))),
      day: String(Number(part('day'))),
      hour: part('hour'),
      minute: part('minute'),
    }
  } catch {
    return null
  }
}

function dateWords(language: Language, clock: WallClock): string {
  const code = `month.${clock.month}`
  const month = isCode(code) ? say(language, code satisfies Code) : clock.month
  return say(language, 'format.date', { day: clock.day, month, year: clock.year })
}

/**
 * A UTC instant as date, time and zone in words. A zone this runtime does not know is shown in UTC and said so;
 * a text that is no instant is shown as it is.
 */
export function instantText(language: Language, instant: string, zone: string): string {
  const milliseconds = instantMilliseconds(instant)
  if (milliseconds === null) return instant
  const local = wallClock(milliseconds, zone)
  const clock = local ?? wallClock(milliseconds, 'UTC')
  if (clock === null) return instant
  return say(language, 'format.instant', {
    date: dateWords(language, clock),
    hour: clock.hour,
    minute: clock.minute,
    zone: local === null ? say(language, 'doc.zone-unknown') : zone,
  })
}

/** A span in words: the day is named once when both ends fall on it, in the zone. */
export function spanText(
  language: Language,
  [from, to]: readonly [from: string, to: string],
  zone: string,
): string {
  const [first, last] = [from, to].map((instant) =>
    wallClock(instantMilliseconds(instant) ?? Number.NaN, zone),
  )
  const [day, lastDay] = [first, last].map((clock) => (clock ? dateWords(language, clock) : null))
  if (!first || !last || !day || day !== lastDay) {
    const [start, end] = [from, to].map((instant) => instantText(language, instant, zone))
    return say(language, 'doc.span-days', { from: start ?? from, to: end ?? to })
  }
  const time = ({ hour, minute }: WallClock) => `${hour}:${minute}`
  return say(language, 'doc.span-day', { date: day, from: time(first), to: time(last), zone })
}

/** The date `days` after an instant, in the zone (UTC when the zone is not known). */
export function dateAfterText(language: Language, instant: string, days: number, zone: string): string {
  const milliseconds = instantMilliseconds(instant)
  if (milliseconds === null) return instant
  const then = milliseconds + days * 86_400_000
  const clock = wallClock(then, zone) ?? wallClock(then, 'UTC')
  return clock === null ? instant : dateWords(language, clock)
}
