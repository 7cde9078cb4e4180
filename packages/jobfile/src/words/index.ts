/** @module Words for everything the engine says by code, in the languages there are catalogues for. */
export {
  type Catalogue,
  type Code,
  catalogues,
  codes,
  isCode,
  type Language,
  languageFor,
  languages,
} from './catalogues.ts'
export { dateAfterText, instantMilliseconds, instantText } from './instants.ts'
export { minorDigitsOf, moneyText, numberText, voltsText } from './numbers.ts'
export { type Params, say } from './say.ts'
export { listText, sayDifference, sayNeed, sayNext, sayStatement } from './speak.ts'
