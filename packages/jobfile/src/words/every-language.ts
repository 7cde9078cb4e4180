/** @module Every language at once, for programs that write in the customer's language whatever their own. */
import { ar } from './ar/index.ts'
import { addCatalogue } from './catalogues.ts'
import { de } from './de/index.ts'
import { es } from './es/index.ts'
import { fr } from './fr/index.ts'
import { pl } from './pl/index.ts'

/** Makes the words of every language known. */
export function addEveryLanguage(): void {
  addCatalogue('de', de)
  addCatalogue('fr', fr)
  addCatalogue('es', es)
  addCatalogue('pl', pl)
  addCatalogue('ar', ar)
}
