/** @module Words for everything the engine says by code, in the languages there are catalogues for. */
export {
  addCatalogue,
  type Catalogue,
  type Code,
  catalogueOf,
  codes,
  directionOf,
  isCode,
  type Language,
  languageFor,
  languages,
  type SameCodes,
} from './catalogues.ts'
export { addEveryLanguage } from './every-language.ts'
export { dateAfterText, instantMilliseconds, instantText, spanText } from './instants.ts'
export { minorDigitsOf, moneyText, numberText, voltsText } from './numbers.ts'
export { languageAsOf, type PastWord, pastWords } from './past.ts'
export { type Params, say } from './say.ts'
export { listText, sayDifference, sayNeed, sayNext, sayStatement } from './speak.ts'
export { sayEvidence, sayFaultFinding, sayReportFinding } from './speak-faults.ts'
