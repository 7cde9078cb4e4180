import type { SameCodes } from '../catalogues.ts'
import type { signedWords as english } from '../en/signed.ts'

/** ما يوقّعه العميل، بلغة العميل. */
export const signedWords: SameCodes<typeof english> = {
  'signed.vehicle': 'المركبة: {vehicle}',
  'signed.vin': 'VIN: {vin}',
  'signed.consent': 'أوافق: {what}.',
  'signed.absent': 'مفاتيح ليست هنا وقد تتوقف عن العمل: {names}.',
  'signed.received': 'تسلّمت المركبة وهذه المفاتيح: {keys}.',
  'signed.not-here': 'مفاتيح لم تكن هنا وقد لا تشغّل المركبة بعد الآن: {names}.',
  'signed.price': 'السعر المتفق عليه: {amount}.',
  'signed.key': 'المفتاح {key}، {colour}',
}
