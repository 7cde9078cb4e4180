/** @module Every language at once, for programs that write in the customer's language whatever their own. */
import { addCatalogue, type Catalogue, type Language } from './catalogues.ts'

const others: readonly (readonly [Language, Catalogue])[] = []

/** Makes the words of every language known. */
export function addEveryLanguage(): void {
  for (const [language, catalogue] of others) addCatalogue(language, catalogue)
}
