import type { SameCodes } from '../catalogues.ts'
import type { signedWords as english } from '../en/signed.ts'

/** What a customer signs, said in the language of the customer. */
export const signedWords: SameCodes<typeof english> = {
  'signed.vehicle': 'Vehículo: {vehicle}',
  'signed.vin': 'Número de bastidor (VIN): {vin}',
  'signed.consent': 'Doy mi conformidad: {what}.',
  'signed.absent': 'Llaves que no están aquí y que pueden dejar de funcionar: {names}.',
  'signed.received': 'He recibido el vehículo y estas llaves: {keys}.',
  'signed.not-here': 'Llaves que no estaban aquí y puede que ya no arranquen el vehículo: {names}.',
  'signed.price': 'Precio acordado: {amount}.',
  'signed.key': 'Llave {key}, {colour}',
}
