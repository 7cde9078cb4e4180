import type { SameCodes } from '../catalogues.ts'
import type { signedWords as english } from '../en/signed.ts'

/** German: What a customer signs, said in the language of the customer. */
export const signedWords: SameCodes<typeof english> = {
  'signed.vehicle': 'Fahrzeug: {vehicle}',
  'signed.vin': 'VIN: {vin}',
  'signed.consent': 'Ich stimme zu: {what}.',
  'signed.absent': 'Schlüssel, die nicht hier sind und möglicherweise nicht mehr funktionieren: {names}.',
  'signed.received': 'Ich habe das Fahrzeug und diese Schlüssel erhalten: {keys}.',
  'signed.not-here':
    'Schlüssel, die nicht hier waren und das Fahrzeug möglicherweise nicht mehr starten: {names}.',
  'signed.price': 'Vereinbarter Preis: {amount}.',
  'signed.key': 'Schlüssel {key}, {colour}',
}
