import { type Body, type JobState, type Language, listText, moneyText, say } from '@shearline/jobfile'

/** Which car, as the first lines of everything that is signed. */
function carLines(language: Language, { opened, vin }: JobState): readonly string[] {
  return [
    ...(opened === null ? [] : [say(language, 'signed.vehicle', { vehicle: opened.vehicle })]),
    ...(vin === null ? [] : [say(language, 'signed.vin', { vin })]),
  ]
}

/** Every word a customer signs under a consent, line by line. */
export function consentText(language: Language, state: JobState, consent: Body<'consent-given'>): string {
  const { about, absentKeys } = consent
  return [
    ...carLines(language, state),
    say(language, 'signed.consent', { what: say(language, `consent.${about}`) }),
    ...(absentKeys.length === 0
      ? []
      : [say(language, 'signed.absent', { names: listText(language, absentKeys) })]),
  ].join('\n')
}

/** Every word a customer signs when car and keys are handed over, line by line. */
export function receivedText(language: Language, state: JobState): string {
  const { absentKeys, price } = state
  const keys = state.keys
    .filter((key) => key.onBench)
    .map((key) => say(language, 'signed.key', { key: key.id, colour: say(language, `colour.${key.colour}`) }))
  const sum = price?.lines.reduce((total, line) => total + line.amountMinor, 0) ?? 0
  return [
    ...carLines(language, state),
    say(language, 'signed.received', { keys: keys.join('; ') || '-' }),
    ...(absentKeys.length === 0
      ? []
      : [say(language, 'signed.not-here', { names: listText(language, absentKeys) })]),
    ...(price === null
      ? []
      : [say(language, 'signed.price', { amount: moneyText(language, price.currency, sum) })]),
  ].join('\n')
}
