/**
 * @module Blots out of a report what the job must not keep in the clear: codes that open or start things, and how the
 * customer is reached. What is blotted out keeps its length, so that places in the text stay what they were.
 *
 * Our own rule; the words are those of the six languages of the product. A VIN and trouble codes stay: they are the job.
 */

/** Words before a code that opens or starts something. */
const OPENING =
  /\b(?:pin(?:[ -]?code)?|security[ -]?code|access[ -]?code|immobili[sz]er[ -]?code|key[ -]?code|radio[ -]?code|password|passcode|sicherheitscode|zugangscode|schl[uü]sselnummer|passwort|code[ -](?:de[ -])?(?:s[eé]curit[eé]|acc[eè]s|cl[eé])|mot de passe|c[oó]digo[ -]de[ -](?:seguridad|acceso|llave)|contrase[nñ]a|kod[ -](?:dost[eę]pu|zabezpieczaj[aą]cy|kluczyka)|has[lł]o)\b|رمز (?:الأمان|الدخول|المفتاح)|كلمة المرور/giu

const MAIL = /[\w.+-]+@[\w-]+(?:\.[\w-]+)+/g
/** Telephone numbers: only where a word or the international mark says so. */
const TELEPHONE =
  /(?:\b(?:tel|phone|mobile|telefon|mobil|t[eé]l[eé]phone|tel[eé]fono|m[oó]vil|kom[oó]rka)\b\W{0,3}|هاتف\W{0,3}|(?<!\w)(?=\+\d))(\+?\d[\d ()/.-]{5,18}\d)/giu

/** The text with opening codes, mail addresses and telephone numbers as rows of `x`. Never throws. */
export function redactReport(text: string): string {
  return text
    .split('\n')
    .map((line) => withoutTelephone(withoutOpening(line).replace(MAIL, (mail) => 'x'.repeat(mail.length))))
    .join('\n')
}

/** The first run of at least three letters and digits with a digit in it, within a few signs behind such a word. */
function withoutOpening(line: string): string {
  let read = line
  for (const match of line.matchAll(OPENING)) {
    const from = match.index + match[0].length
    const code = /^[^\p{L}\d]{0,6}(?:(?:is|ist|est|es|to)\b[^\p{L}\d]{0,3})?([A-Z\d][A-Z\d -]*)/iu.exec(
      line.slice(from),
    )
    const run = code?.[1]?.trimEnd() ?? ''
    if (run.length < 3 || !/\d/.test(run)) continue
    const at = from + (code?.[0] ?? '').indexOf(run)
    read = `${read.slice(0, at)}${'x'.repeat(run.length)}${read.slice(at + run.length)}`
  }
  return read
}

function withoutTelephone(line: string): string {
  return line.replace(TELEPHONE, (whole, number: string) => whole.replace(number, 'x'.repeat(number.length)))
}
