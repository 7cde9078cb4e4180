/** What a customer signs, said in the language of the customer. */
export const signedWords = {
  'signed.vehicle': 'Vehicle: {vehicle}',
  'signed.vin': 'VIN: {vin}',
  'signed.consent': 'I agree: {what}.',
  'signed.absent': 'Keys that are not here and may stop working: {names}.',
  'signed.received': 'I have received the vehicle and these keys: {keys}.',
  'signed.not-here': 'Keys that were not here and may no longer start the vehicle: {names}.',
  'signed.price': 'Agreed price: {amount}.',
  'signed.key': 'Key {key}, {colour}',
} as const
