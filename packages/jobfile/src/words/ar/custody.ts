import type { SameCodes } from '../catalogues.ts'
import type { custodyWords as english } from '../en/custody.ts'

/** ما يبدأ به حساب مدة الحذف، وكم تطول. */
export const custodyWords: SameCodes<typeof english> = {
  'trigger.sealed':
    '{count, plural, zero {يوم الختم} one {بعد يوم واحد من الختم} two {بعد يومين من الختم} few {بعد # أيام من الختم} many {بعد # يومًا من الختم} other {بعد # يوم من الختم}}',
  'trigger.handed-over':
    '{count, plural, zero {يوم التسليم} one {بعد يوم واحد من التسليم} two {بعد يومين من التسليم} few {بعد # أيام من التسليم} many {بعد # يومًا من التسليم} other {بعد # يوم من التسليم}}',
  'trigger.warranty-ended':
    '{count, plural, zero {يوم} one {بعد يوم واحد من} two {بعد يومين من} few {بعد # أيام من} many {بعد # يومًا من} other {بعد # يوم من}} انتهاء الضمان',
  'trigger.purpose-ended':
    '{count, plural, =0 {حالما تنتهي الحاجة إليه} zero {حالما تنتهي الحاجة إليه} one {بعد يوم واحد من انتهاء الحاجة إليه} two {بعد يومين من انتهاء الحاجة إليه} few {بعد # أيام من انتهاء الحاجة إليه} many {بعد # يومًا من انتهاء الحاجة إليه} other {بعد # يوم من انتهاء الحاجة إليه}}',
  'trigger.recorded':
    '{count, plural, zero {يوم تسجيله} one {بعد يوم واحد من تسجيله} two {بعد يومين من تسجيله} few {بعد # أيام من تسجيله} many {بعد # يومًا من تسجيله} other {بعد # يوم من تسجيله}}',
}
