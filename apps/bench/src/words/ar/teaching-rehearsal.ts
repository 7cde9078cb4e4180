import type { SameCodes } from '@shearline/jobfile'
import type { teachingRehearsalWords as english } from '../en/teaching-rehearsal.ts'

/** المحاكاة: الترتيب والشروط وخط الخطوات وما يتركه التوقف وطريق العودة. */
export const teachingRehearsalWords: SameCodes<typeof english> = {
  'rehearsal.title': 'المحاكاة: خطوة خطوة، وما يصح إذا توقفت',
  'rehearsal.again': 'قراءتها مرة أخرى',
  'rehearsal.read': 'قُرئت بالترتيب {order}. {wayBack}',
  'rehearsal.no-keys': 'لا مفتاح يُعرَّف بعد: سمِّ المفاتيح على الطاولة والمفتاح الجديد أولًا.',
  'rehearsal.label-new': 'تسمية المفتاح الجديد',
  'rehearsal.missing':
    '{count, plural, zero {لا مفتاح {keys} خارجها} one {المفتاح {keys} ليس فيها} two {المفتاحان {keys} ليسا فيها} few {المفاتيح {keys} ليست فيها} many {المفاتيح {keys} ليست فيها} other {المفاتيح {keys} ليست فيها}}: اقرأها مرة أخرى.',
  'rehearsal.no-new': 'لم يُسمَّ مفتاح جديد بعد. سمِّه أعلاه أولًا كي تشمله المحاكاة.',
  'rehearsal.working': 'المرور على كل ما قد توقفها به ...',
  'rehearsal.too-much-unknown':
    'ما ليس معروفًا أكثر من أن يسمح بجواب. اذكر نوع الجلسة أو مواضع القائمة أو ما يفتحها.',
  'rehearsal.open': 'فتح الجلسة',
  'rehearsal.opened': 'فُتحت',
  'rehearsal.closed': 'إغلاق الجلسة',
  'rehearsal.closed-short': 'أُغلقت',
  'rehearsal.cannot-open': 'بحسب هذه القاعدة لا يمكن فتح الجلسة بما هو هنا.',
  'rehearsal.better': 'ترتيب آمن أكثر: {order}.',
  'rehearsal.take-better': 'أخذه',
  'rehearsal.key': 'المفتاح {key}',
  'rehearsal.earlier': 'أبكر',
  'rehearsal.length': 'طول الجلسة: {time}.',
  'rehearsal.stranded':
    '{count, plural, =0 {أينما توقفت يظل مفتاح هنا يشغّل السيارة.} zero {أينما توقفت يظل مفتاح هنا يشغّل السيارة.} one {عند خطوة واحدة قد لا يبقى للسيارة مفتاح يشغّلها.} two {عند خطوتين قد لا يبقى للسيارة مفتاح يشغّلها.} few {عند # خطوات قد لا يبقى للسيارة مفتاح يشغّلها.} many {عند # خطوة قد لا يبقى للسيارة مفتاح يشغّلها.} other {عند # خطوة قد لا يبقى للسيارة مفتاح يشغّلها.}}',
  'rehearsal.sure': 'اقرأ كل سطر. أسوأ طريق عودة أعلاه هو ما تعد به العميل.',
  'rehearsal.record': 'قرأتها',

  'order.title': 'ترتيب عرض المفاتيح',
  'order.earlier': 'عرض المفتاح {key} أبكر',
  'why.proven': 'لماذا هذا الترتيب: استُبعد كل ما سواه',
  'why.best-found': 'لماذا هذا الترتيب: هو أفضل ما وُجد',
  'why.at-open': 'بعد الفتح',
  'why.at-key': 'بعد المفتاح {key}',

  'guards.title': 'قبل أن تُفتح',
  'guards.all': 'قبل أن تُفتح: كل شيء محسوم',
  'guards.open':
    '{count, plural, zero {قبل أن تُفتح: لا شيء يُحسم} one {قبل أن تُفتح: أمر واحد يُحسم} two {قبل أن تُفتح: أمران يُحسمان} few {قبل أن تُفتح: # أمور تُحسم} many {قبل أن تُفتح: # أمرًا يُحسم} other {قبل أن تُفتح: # أمر يُحسم}}',
  'guards.met': 'محسوم: {guards}.',

  'line-of-steps': 'الجلسة في خط من الخطوات',
  'mark.safe': 'كما كان',
  'mark.loses': 'تفقد {keys}',
  'mark.stranded': 'عالقة',
  'end-mark.safe': 'كلها تشغّل',
  'end-mark.loses': 'بعضها يتوقف',
  'end-mark.stranded': 'لا شيء يشغّل',
  'stop-here.title': '{step}: إذا حدث شيء الآن',
  'stop-here.goes-on': 'تستمر الجلسة؛ وفي نهايتها:',
  'stop-here.spoiled': 'تلف: {keys}.',
  'cause.of-key': '{cause} ({key})',
  'list-or': ' / ',

  'way.going': 'للانطلاق بالسيارة:',
  'way.finished': 'لإتمام العمل:',
  'way.goes': 'يمكن قيادة السيارة بـ {keys}.',
  'way.in': '{way}، {time}.',
  'way.not-proven': 'قد يوجد طريق أقصر.',
  'lasting.none': 'بلا رقم',
  'lasting.seconds':
    '{count, plural, zero {{figure} ثانية} one {{figure} ثانية} two {{figure} ثانية} few {{figure} ثوانٍ} many {{figure} ثانية} other {{figure} ثانية}}',
  'lasting.minutes':
    '{count, plural, zero {{figure} دقيقة} one {{figure} دقيقة} two {{figure} دقيقة} few {{figure} دقائق} many {{figure} دقيقة} other {{figure} دقيقة}}',
}
