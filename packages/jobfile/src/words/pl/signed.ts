import type { SameCodes } from '../catalogues.ts'
import type { signedWords as english } from '../en/signed.ts'

/** What a customer signs, said in the language of the customer. */
export const signedWords: SameCodes<typeof english> = {
  'signed.vehicle': 'Pojazd: {vehicle}',
  'signed.vin': 'Numer VIN: {vin}',
  'signed.consent': 'Wyrażam zgodę: {what}.',
  'signed.absent': 'Klucze, których tu nie ma i które mogą przestać działać: {names}.',
  'signed.received': 'Potwierdzam odbiór pojazdu i tych kluczy: {keys}.',
  'signed.not-here': 'Klucze, których tu nie było i które mogą już nie uruchamiać pojazdu: {names}.',
  'signed.price': 'Uzgodniona cena: {amount}.',
  'signed.key': 'Klucz {key}, {colour}',
}
