import type { SameCodes } from '@shearline/jobfile'
import type { custodyWords as english } from '../en/custody.ts'

/** أنواع القيود عمّا اتُّفق عليه، وما يُحفظ وإلى متى، ومن رآه، والأجهزة. */
export const custodyWords: SameCodes<typeof english> = {
  'fact.call-taken':
    'وردت المكالمة {channel, select, phone {هاتفيًا} message {برسالة} visit {حضوريًا} other {عبر المكتب}}؛ السيارة {starts, select, true {تعمل} false {لا تعمل} other {قد تعمل وقد لا تعمل}}؛ المطلوب إحضاره: {bring}',
  'fact.appointment-made': 'موعد {day} عند {from} بالتوقيت العالمي، {place}',
  'fact.appointment-ended': 'الموعد {outcome, select, kept {تم في وقته} moved {نُقل} other {أُلغي}}: {because}',
  'fact.quote-given': 'قُدِّم عرض سعر: {amount}',
  'fact.policy-answered': 'القاعدة «{question}» أُجيب عنها: {answer} ({pack})',
  'fact.plan-accepted': 'قبل {signer} الخطة، الترتيب {order}، {plan}…',
  'fact.step-done': 'الخطوة {outcome, select, done {تمت} failed {أخفقت} other {تُركت}}: {step} ({because})',
  'fact.signature-drawn':
    'وقّع {signer} على {what, select, consent {الموافقة} plan {الخطة} quote {عرض السعر} handover {التسليم} other {الإقرار}}',
  'fact.photo-attached':
    'صورة {shows, select, key {مفتاح} vin {رقم VIN} odometer {عداد المسافة} lamps {المصابيح} damage {ضرر} equipment {معدات} identity {وثيقة هوية} other {شيء آخر}}: {words}',
  'fact.vehicle-handed-over': 'سُلِّمت المركبة إلى {to}؛ المفاتيح: {keys}',
  'fact.purpose-ended': '{what}: لم تعد هناك حاجة إليها. {because}',
  'fact.hold-placed': 'لا يجوز حذف شيء: {reason}',
  'fact.hold-lifted': 'صار الحذف جائزًا من جديد: {reason}',
  'fact.deletion-proven':
    '{what}: {count, plural, zero {لم يُحذف شيء} one {حُذف شيء واحد} two {حُذف شيئان} few {حُذفت # أشياء} many {حُذف # شيئًا} other {حُذف # شيء}}. {why}',
  'fact.secret-sealed':
    'خُتم: {what}، {count, plural, =0 {بعبارة مرور} zero {بعبارة مرور} one {يستطيع واحد فتحه} two {يستطيع اثنان فتحه} few {يستطيع # فتحه} many {يستطيع # فتحه} other {يستطيع # فتحه}}، {blob}…',
  'fact.secret-opened': 'فُتحت البيانات المختومة {blob}…: {reason}',
  'fact.device-enrolled': 'سُجِّل الجهاز {name} ({device}) بموافقة {by}',
  'fact.device-key-rotated': 'مفتاح جديد: هذا الجهاز هو الآن {name} ({device}). {because}',
  'fact.device-revoked':
    'لم يعد الجهاز {device} موثوقًا ({because, select, retired {أُخرج من الخدمة} replaced {استُبدل} lost {فُقد} stolen {سُرق} other {قد يكون مفتاحه في يد غيره}}): {reason}',
  'fact.newer-version':
    'سجّل إصدار أحدث «{kind}» بصيغة لا يستطيع هذا الإصدار قراءتها. هي محفوظة وغير مفهومة؛ حدِّث Shearline.',
}
