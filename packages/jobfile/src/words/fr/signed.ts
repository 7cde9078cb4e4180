import type { SameCodes } from '../catalogues.ts'
import type { signedWords as english } from '../en/signed.ts'

/** French: What a customer signs, said in the language of the customer. */
export const signedWords: SameCodes<typeof english> = {
  'signed.vehicle': 'Véhicule : {vehicle}',
  'signed.vin': 'VIN : {vin}',
  'signed.consent': 'Je donne mon accord : {what}.',
  'signed.absent': 'Clés qui ne sont pas ici et qui peuvent cesser de fonctionner : {names}.',
  'signed.received': 'J’ai reçu le véhicule et ces clés : {keys}.',
  'signed.not-here': 'Clés qui n’étaient pas ici et qui peuvent ne plus démarrer le véhicule : {names}.',
  'signed.price': 'Prix convenu : {amount}.',
  'signed.key': 'Clé {key}, {colour}',
}
