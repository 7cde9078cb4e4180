import type { SameCodes } from '../catalogues.ts'
import type { practiceWords as english } from '../en/practice.ts'

/** التدريب على سيارة التمرين: تمارين، وما نتج عن كل فعل، ولماذا ضاعت نقاط. */
export const practiceWords: SameCodes<typeof english> = {
  'practice.one-more-key': 'مفتاح آخر',
  'practice.one-more-key.story':
    'مفتاحان يعملان ويريد العميل ثالثًا. تضيف السيارة مفتاحًا وتُبقي الأخرى. أثبت كل مفتاح بعد ذلك.',
  'practice.forgotten-at-home': 'نُسي مفتاح في البيت',
  'practice.forgotten-at-home.story':
    'تكتب السيارة قائمتها من جديد عند إغلاق الجلسة. المفتاح الثاني في البيت على بعد نصف ساعة. وهناك مفتاح ثالث مخزن ليس عند أحد.',
  'practice.dies-after-second-key': 'تموت الجلسة بعد المفتاح الثاني',
  'practice.dies-after-second-key.story':
    'صباح بارد، وبطارية ضعيفة، ولا نسخة احتياطية. تُكتب القائمة من جديد مع كل مفتاح. أوصلهم إلى بيتهم.',
  'practice.erased-and-cut': 'مُحيت القائمة ثم انقطعت الوصلة',
  'practice.erased-and-cut.story':
    'لا تفتح السيارة جلسة إلا بمفتاح يعمل، وتنسى كل مفتاح في تلك اللحظة. هناك نسخة احتياطية مثبتة للقائمة، وخلية أحد أجهزة التحكم فارغة.',
  'practice.clone-on-the-ring': 'مفتاحان هما واحد',
  'practice.clone-on-the-ring.story':
    'تريد السيارة مفتاحين مختلفين يعملان قبل أن تقبل ثالثًا. على الحلقة مفتاحان؛ أحدهما نسخة.',
  'practice.list-is-full': 'القائمة ممتلئة',
  'practice.list-is-full.story':
    'أربعة مواضع، وأربعة مفاتيح مخزنة، ضاع منها اثنان منذ زمن. تُسقط السيارة الأقدم بلا كلمة حين تأخذ آخر.',

  'practice.misread-code': 'قُرئ الرمز خطأ',
  'practice.misread-code.story':
    'لا تُفتح الجلسة إلا برمز، وظن أحدهم الواحد سبعة. كل محاولة خاطئة تكلف عشرين دقيقة. والبطارية ليست الأفضل.',

  'practice.did.supply-on': 'ضُبط المصدر على {amperes} A: {volts} V.',
  'practice.did.scanned':
    '{faults, plural, =0 {لا عطل مخزن} zero {لا عطل مخزن} one {عطل واحد مخزن} two {عطلان مخزنان} few {# أعطال مخزنة} many {# عطلًا مخزنًا} other {# عطل مخزن}}؛ {units, plural, zero {لم تجب أي وحدة} one {أجابت وحدة واحدة} two {أجابت وحدتان} few {أجابت # وحدات} many {أجابت # وحدة} other {أجابت # وحدة}}.',
  'practice.did.cleared': 'مُسحت ذاكرات الأعطال؛ وتُركت وحدة الوسائد الهوائية كما هي.',
  'practice.did.cycled': 'أُغلق الإشعال ثم فُتح.',
  'practice.did.session-opened': 'الجلسة مفتوحة.',
  'practice.did.session-refused': 'السيارة لا تفتح الجلسة.',
  'practice.did.session-wants-code': 'تريد السيارة الرمز أولًا.',
  'practice.did.code-accepted': 'قبلت السيارة الرمز.',
  'practice.did.code-refused':
    'رفضت السيارة الرمز{minutes, plural, =0 {.} zero {.} one { ولا تقبل غيره مدة دقيقة واحدة.} two { ولا تقبل غيره مدة دقيقتين.} few { ولا تقبل غيره مدة # دقائق.} many { ولا تقبل غيره مدة # دقيقة.} other { ولا تقبل غيره مدة # دقيقة.}}',
  'practice.did.code-wait':
    'ما زالت السيارة تنتظر: تقبل رمزًا بعد {minutes, plural, zero {أقل من دقيقة} one {دقيقة واحدة} two {دقيقتين} few {# دقائق} many {# دقيقة} other {# دقيقة}}.',
  'practice.did.code-not-wanted': 'هذه السيارة لا تطلب رمزًا.',
  'practice.did.stopped': 'أُوقفت الجلسة.',
  'practice.did.no-session': 'لا جلسة مفتوحة.',
  'practice.did.session-closed':
    'أُغلقت الجلسة؛ {stored, plural, zero {لا مفتاح مخزن} one {مفتاح واحد مخزن} two {مفتاحان مخزنان} few {# مفاتيح مخزنة} many {# مفتاحًا مخزنًا} other {# مفتاح مخزن}}.',
  'practice.did.session-too-few':
    'عُرِّفت مفاتيح أقل مما يجب: انتهت الجلسة من دون إغلاق؛ {stored, plural, zero {لا مفتاح مخزن} one {مفتاح واحد مخزن} two {مفتاحان مخزنان} few {# مفاتيح مخزنة} many {# مفتاحًا مخزنًا} other {# مفتاح مخزن}}.',
  'practice.did.no-backup': 'لا توجد نسخة احتياطية.',
  'practice.did.restored':
    'عادت القائمة المحفوظة؛ {stored, plural, zero {لا مفتاح مخزن} one {مفتاح واحد مخزن} two {مفتاحان مخزنان} few {# مفاتيح مخزنة} many {# مفتاحًا مخزنًا} other {# مفتاح مخزن}}.',
  'practice.did.waited':
    'بعد {minutes, plural, zero {لحظات} one {دقيقة واحدة} two {دقيقتين} few {# دقائق} many {# دقيقة} other {# دقيقة}}: {volts} V.',
  'practice.did.no-such-key': 'لا مفتاح {key} هنا.',
  'practice.did.show-taken': 'أُخذ المفتاح {key}: عُرِّف {taught} في هذه الجلسة.',
  'practice.did.show-no-session': 'عُرض المفتاح {key}، لكن لا جلسة مفتوحة.',
  'practice.did.show-not-accepted': 'لم يُؤخذ المفتاح {key}.',
  'practice.did.show-same-key': 'المفتاح {key} معروف في هذه الجلسة من قبل.',
  'practice.did.show-list-full': 'لم يُؤخذ المفتاح {key}: القائمة ممتلئة.',
  'practice.did.start-started': 'المفتاح {key} يشغّل السيارة.',
  'practice.did.start-key-not-accepted': 'المفتاح {key} غير مقبول. تحفظ السيارة رمز عطل بذلك.',
  'practice.did.start-battery-too-weak':
    'المفتاح {key} مقبول، لكن البطارية أضعف من أن تدير المحرك: {volts} V.',
  'practice.did.start-not-on-the-bench': 'المفتاح {key} ليس هنا.',
  'practice.did.button-works': 'أزرار المفتاح {key} تعمل.',
  'practice.did.button-dead': 'أزرار المفتاح {key} لا تفعل شيئًا.',
  'practice.did.fetched': 'جُلب المفتاح {key}. استغرق ذلك نصف ساعة.',
  'practice.did.cell-new': 'في المفتاح {key} خلية جديدة.',
  'practice.did.incident-supply-lost': 'ضاعت التغذية! انتهت الجلسة؛ الآن {volts} V.',
  'practice.did.incident-link-lost': 'ضاعت الوصلة إلى السيارة! انتهت الجلسة.',

  'practice.mark.stranded': 'لا مفتاح هنا يشغّل السيارة: العميل عالق.',
  'practice.mark.session-open': 'تُركت الجلسة مفتوحة.',
  'practice.mark.key-does-not-start': 'المفتاح {key} لا يشغّل السيارة.',
  'practice.mark.start-not-proven': 'لم يحاول أحد تشغيل السيارة بالمفتاح {key}.',
  'practice.mark.buttons-not-proven': 'لم يجرب أحد أزرار المفتاح {key}.',
  'practice.mark.no-scan-before': 'لا فحص أعطال قبل العمل.',
  'practice.mark.no-scan-after': 'لا فحص أعطال بعد العمل.',
  'practice.mark.no-supply': 'بطارية ضعيفة، ولا مصدر تغذية قبل الجلسة.',
}
