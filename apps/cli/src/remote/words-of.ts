/**
 * Splits a command into its words as people write them: blanks part words, single and double quotes keep them together.
 * No shell is involved, so nothing in it is expanded. Throws a RangeError when a quote is not closed.
 */
export function wordsOf(command: string): readonly string[] {
  const words: string[] = []
  let word: string | null = null
  let quote = ''
  for (const letter of command) {
    if (quote !== '') {
      if (letter === quote) quote = ''
      else word = `${word ?? ''}${letter}`
    } else if (letter === '"' || letter === "'") {
      quote = letter
      word ??= ''
    } else if (/\s/.test(letter)) {
      if (word !== null) words.push(word)
      word = null
    } else word = `${word ?? ''}${letter}`
  }
  if (quote !== '') throw new RangeError(`a ${quote} is not closed`)
  if (word !== null) words.push(word)
  return words
}
