/**
 * Text as it may stand on a page: composed characters (NFC), one space for any run of blanks, and no characters
 * that are invisible or turn the reading direction, because those could make a page show what the record does not.
 */
export function tidy(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .replace(/[\p{Cf}\p{Co}\p{Cs}]/gu, '')
    .trim()
}
