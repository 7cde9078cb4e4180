/** @module What is wrong with the words of one language, held against the English ones. */
import { type CompiledMessage, compileMessageOrThrow } from '@lingui/message-utils/compileMessage'

type Words = Readonly<Record<string, string>>
type Token = Exclude<CompiledMessage, string>[number]

/** Names, standards and units: they read the same in every language. */
const everywhere = 'Shearline VIN UDS OBD KWP ISO SAE J CAN FD A mA V s ms'

/** Words that a language spells as English does, each met in a text of ours. Any other equal word is left over. */
const ownSpelling: Readonly<Record<string, string>> = {
  de: 'Airbag April August Bytes China Code Frames Japan Name November Permanent Scan September Start in',
  fr: 'Airbag Charge Code Document Europe Messages Minutes Note Notes Permanent Photo Photos Service Session Signature Total airbags base correction corrections document minute minutes moment moments photo signature',
  es: 'Airbag China No Total airbags base byte bytes no',
  pl: 'Stop base diesel stop',
  ar: 'base',
}

const allowed = (language: string): ReadonlySet<string> =>
  new Set(`${everywhere} ${ownSpelling[language] ?? ''}`.split(' '))

/** Every token of a message, those inside plural and select cases too. */
function tokensOf(message: CompiledMessage): readonly Token[] {
  if (typeof message === 'string') return [message]
  return message.flatMap((token) =>
    Array.isArray(token) && typeof token[2] === 'object'
      ? [token, ...casesOf(token).flatMap(([, inner]) => tokensOf(inner))]
      : [token],
  )
}

/** The cases of a plural or select token: name and what it says. */
function casesOf(token: Token): readonly (readonly [string, CompiledMessage])[] {
  if (!Array.isArray(token) || typeof token[2] !== 'object') return []
  return Object.entries(token[2] as Record<string, CompiledMessage>).filter(([name]) => name !== 'offset')
}

/** What the message asks to be filled in. How (plain, as a plural) is for each language to say. */
const places = (message: CompiledMessage) =>
  tokensOf(message).flatMap((token) => (Array.isArray(token) ? [token[0]] : []))

/** The selects that English has, each with its cases: a translation must answer the same. */
function selects(english: CompiledMessage, message: CompiledMessage): readonly string[] {
  const namesOf = (from: CompiledMessage) =>
    tokensOf(from).flatMap((token) => (Array.isArray(token) && token[1] === 'select' ? [token] : []))
  const asked = new Set(namesOf(english).map(([name]) => name))
  return namesOf(message)
    .filter(([name]) => asked.has(name))
    .map(
      (token) =>
        `${token[0]}: ${casesOf(token)
          .map(([one]) => one)
          .toSorted()
          .join(', ')}`,
    )
}

const found = new Map<string, ReadonlyMap<string, readonly number[]>>()

/** The plural categories of a language, each with the whole numbers up to a thousand that fall into it. */
function categories(language: string): ReadonlyMap<string, readonly number[]> {
  const known = found.get(language)
  if (known !== undefined) return known
  const rules = new Intl.PluralRules(language)
  const made = Map.groupBy(
    Array.from({ length: 1001 }, (_, count) => count),
    (count) => rules.select(count),
  )
  found.set(language, made)
  return made
}

/** Categories a plural does not answer, unless each number of one has a case of its own, and those it invents. */
function pluralSlips(language: string, message: CompiledMessage): readonly string[] {
  const wanted = categories(language)
  return tokensOf(message).flatMap((token) => {
    if (!Array.isArray(token) || token[1] !== 'plural') return []
    const named = casesOf(token).map(([name]) => name)
    const lacking = [...wanted]
      .filter(
        ([name, counts]) => !named.includes(name) && !counts.every((one) => named.includes(String(one))),
      )
      .map(([name]) => name)
    if (!named.includes('other') && !wanted.has('other')) lacking.push('other')
    const foreign = named.filter((name) => !/^(\d+|other|many)$/.test(name) && !wanted.has(name))
    return [
      ...lacking.map((name) => `plural of ${token[0]} lacks "${name}"`),
      ...foreign.map((name) => `plural of ${token[0]} has "${name}", which the language does not`),
    ]
  })
}

/** How a message may end: its final marks, one for each case. Quotes round the last sentence do not count. */
function ends(message: CompiledMessage): ReadonlySet<string> {
  const last = typeof message === 'string' ? message : message.at(-1)
  if (Array.isArray(last)) {
    const cases = casesOf(last)
    return cases.length === 0 ? new Set(['']) : new Set(cases.flatMap(([, inner]) => [...ends(inner)]))
  }
  const text = (last ?? '').replace(/["”“»›\s\u200E\u200F]+$/u, '').replace(/\.\.\.$/, '…')
  const mark = /[.!?:;…؟؛]$/u.exec(text)?.[0] ?? ''
  return new Set([{ '؟': '?', '؛': ';' }[mark] ?? mark])
}

/** The plain spaces round a message; the narrow one that French sets before a mark is no glue. */
const edges = (text: string) => `${/^ */.exec(text)?.[0]}|${/ *$/.exec(text)?.[0]}`
const same = (one: Iterable<string>, other: Iterable<string>) =>
  [...new Set(one)].toSorted().join('\n') === [...new Set(other)].toSorted().join('\n')

/** Habits of writing that a machine can check. `spare` takes out what an instrument prints. */
function mannerSlips(language: string, text: string): readonly string[] {
  const spare = text.replaceAll('MEAS:VOLT:DC?', '')
  const slips: string[] = []
  if (text.includes("'")) slips.push('straight apostrophe: ICU reads it as a quote, write ’')
  if (text.includes('"')) slips.push('straight double quote: use the quotes of the language')
  if (language === 'fr' && /( |[^\s\u202F\u00A0])[:;!?»](?=[\s}]|$)|«(?![\u202F\u00A0])/u.test(spare))
    slips.push('French wants a narrow no-break space before : ; ! ? » and after «')
  return slips
}

/** Everything wrong with one text of a language; empty when nothing is. */
function slipsOf(language: string, english: string, own: string): readonly string[] {
  const theirs = compileMessageOrThrow(english)
  let ours: CompiledMessage
  try {
    ours = compileMessageOrThrow(own)
  } catch (problem) {
    return [`is not ICU message format: ${String(problem)}`]
  }
  const slips: string[] = [...pluralSlips(language, ours), ...mannerSlips(language, own)]
  if (!same(places(theirs), places(ours)))
    slips.push(`places are [${places(ours).join('; ')}], in English [${places(theirs).join('; ')}]`)
  if (!same(selects(theirs, theirs), selects(theirs, ours)))
    slips.push(
      `selects [${selects(theirs, ours).join('; ')}], in English [${selects(theirs, theirs).join('; ')}]`,
    )
  // A message that is one mark and no word, the decimal mark, is no sentence.
  if (/\p{L}/u.test(english) && !same(ends(theirs), ends(ours)))
    slips.push(
      `ends with [${[...ends(ours)].join('] or [')}], in English [${[...ends(theirs)].join('] or [')}]`,
    )
  if (edges(english) !== edges(own)) slips.push('begins or ends with another space than English')
  if (own.trim() === '' && english.trim() !== '') slips.push('is empty')
  if (own === english) {
    const literals = tokensOf(ours).filter((token) => typeof token === 'string')
    const words = literals.join(' ').split(/[^\p{L}]+/u)
    const foreign = words.filter((word) => word !== '' && !allowed(language).has(word))
    if (foreign.length > 0) slips.push(`is still English: ${foreign.join(' ')}`)
  }
  return slips
}

/**
 * Holds the words of a language against the English ones: the same keys, the same places, ICU message format, every
 * plural category the language has (CLDR, as Intl.PluralRules knows it), final marks and outer spaces kept, nothing
 * left in English. Returns one line for each slip, with its key.
 */
export function slipsAgainstEnglish(language: string, english: Words, own: Words): readonly string[] {
  const missing = Object.keys(english).filter((key) => !Object.hasOwn(own, key))
  const surplus = Object.keys(own).filter((key) => !Object.hasOwn(english, key))
  return [
    ...missing.map((key) => `${key}: is missing`),
    ...surplus.map((key) => `${key}: English has no such key`),
    ...Object.entries(own).flatMap(([key, text]) =>
      Object.hasOwn(english, key)
        ? slipsOf(language, english[key] ?? '', text).map((slip) => `${key}: ${slip}`)
        : [],
    ),
  ]
}
