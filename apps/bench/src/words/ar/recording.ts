import type { SameCodes } from '@shearline/jobfile'
import type { recordingWords as english } from '../en/recording.ts'
import { recordingServiceWords } from './recording-services.ts'
import { recordingViewWords } from './recording-view.ts'

/** التسجيلات والأعطال. */
export const recordingWords: SameCodes<typeof english> = {
  ...recordingViewWords,
  ...recordingServiceWords,

  'recording.pick': 'استيراد تسجيل',
  'recording.pick.hint': 'أو أفلته في أي موضع من هذه الصفحة. يُقرأ على هذا الجهاز.',
  'recording.drop': 'أفلت التسجيل',
  'recording.title': 'التسجيل {name}',
  'recording.reading': 'قراءة التسجيل',
  'recording.looking': 'النظر في نوع هذا التسجيل.',
  'recording.read-so-far': 'قُرئ {read} من {whole}',
  'recording.frames-so-far':
    '{count, plural, =0 {لا إطار بعد} zero {لا إطار بعد} one {إطار واحد} two {إطاران} few {# إطارات} many {# إطارًا} other {# إطار}}',
  'recording.messages-so-far':
    '{count, plural, =0 {لا رسالة بعد} zero {لا رسالة بعد} one {رسالة واحدة} two {رسالتان} few {# رسائل} many {# رسالة} other {# رسالة}}',
  'recording.read-percent': 'قُرئ {percent} بالمئة',
  'recording.cancel.hint': 'لا يُحفظ شيء قبل أن تأمر بذلك.',
  'recording.failed': 'توقفت القراءة: {problem} لم يُسجَّل شيء.',
  'recording.unknown': 'لا يمكن قراءة هذا الملف على أنه تسجيل: {reason}. لم يُسجَّل شيء.',
  'recording.format': 'الصيغة: {format}، لأن {reason}.',
  'recording.size': 'الحجم',
  'recording.frames': 'الإطارات',
  'recording.messages': 'الرسائل',
  'recording.messages.of':
    '{count, number}{incomplete, plural, =0 {} zero {} one {، وواحدة ناقصة} two {، واثنتان ناقصتان} few {، و# ناقصة} many {، و# ناقصة} other {، و# ناقصة}}',
  'recording.units': 'الوحدات التي أجابت',
  'recording.faults': 'الأعطال المُبلَّغ عنها',
  'recording.faults.of':
    '{units, plural, =0 {لا قائمة أعطال فيه} zero {لا قائمة أعطال فيه} one {{faults} من وحدة واحدة} two {{faults} من وحدتين} few {{faults} من # وحدات} many {{faults} من # وحدة} other {{faults} من # وحدة}}',
  'recording.vin': 'رقم VIN المسموع:',
  'recording.vin.same': 'هو نفسه الذي في السجل.',
  'recording.vin.differs': 'ليس الذي في السجل ({vin}): تسجيله يجعله معارضًا له.',
  'recording.not-vin':
    'أجابت الوحدة {unit} بـ«{text}» حين سُئلت عن VIN. تركيبه غير سليم ولا يُسجَّل على أنه VIN.',
  'recording.clean': 'أمكنت قراءة كل سطر.',
  'recording.findings':
    '{count, plural, zero {لا شيء يستحق النظر} one {أمر واحد يستحق النظر} two {أمران يستحقان النظر} few {# أمور تستحق النظر} many {# أمرًا يستحق النظر} other {# أمر يستحق النظر}}',
  'recording.left-out':
    '{count, plural, zero {لم يُترك شيء.} one {تعذرت قراءة موضع واحد فتُرك.} two {تعذرت قراءة موضعين فتُركا.} few {تعذرت قراءة # مواضع فتُركت.} many {تعذرت قراءة # موضعًا فتُركت.} other {تعذرت قراءة # موضع فتُركت.}}',
  'recording.left-out.first': 'أولها عند {where}: {what}.',
  'recording.more-findings':
    '{count, plural, zero {ولا غير ذلك} one {وواحد آخر} two {واثنان آخران} few {و# أخرى} many {و# أخرى} other {و# أخرى}}',
  'recording.again': 'هذا التسجيل عينه موجود في سجل هذه المهمة.',
  'recording.which': 'أي فحص هذا؟',
  'recording.which.hint': 'القرار لك: لا شيء في الملف يقول هل كان العمل قد تم.',
  'recording.no-scan': 'ليست فيه قائمة أعطال، لذا يُحفظ تسجيلًا فقط.',
  'recording.which.before': 'قبل العمل',
  'recording.which.after': 'بعد العمل',
  'recording.which.cleared': 'بعد المسح',
  'recording.which.cycled': 'بعد دورة إشعال',
  'recording.which.keep': 'حفظه فقط',
  'recording.sealed': 'الملف نفسه',
  'recording.sealed.do': 'حفظه أيضًا مختومًا',
  'recording.sealed.hint': 'يستطيع عندئذ فتحه: {names}. فيه كل ما مر على السلك.',
  'recording.sealed.nobody': 'لحفظ الملف نفسه أيضًا، اذكر مفتاحًا يستطيع فتحه.',
  'recording.kept-as-is':
    'ما يُحفظ: رسائله، مع طمس محتوى خدمات الأمان، وبصمة الملف. أما الملف نفسه فيبقى حيث هو.',
  'recording.record': 'تسجيله',
  'recording.leave': 'تركه',
  'strip.what':
    '{length}، {messages, plural, zero {بلا رسائل} one {رسالة واحدة} two {رسالتان} few {# رسائل} many {# رسالة} other {# رسالة}}، {units, plural, zero {لا وحدة} one {وحدة واحدة} two {وحدتان} few {# وحدات} many {# وحدة} other {# وحدة}}',
  'strip.events':
    '{count, plural, =0 {لا حدث} zero {لا حدث} one {حدث واحد} two {حدثان} few {# أحداث} many {# حدثًا} other {# حدث}} على امتداد التسجيل',
  'event.session-opened':
    '{count, plural, zero {لم تُفتح جلسة} one {فُتحت جلسة واحدة} two {فُتحت جلستان} few {فُتحت # جلسات} many {فُتحت # جلسة} other {فُتحت # جلسة}}',
  'event.reset':
    '{count, plural, zero {لا إعادة تشغيل} one {إعادة تشغيل واحدة} two {إعادتا تشغيل} few {# إعادات تشغيل} many {# إعادة تشغيل} other {# إعادة تشغيل}}',
  'event.muted':
    '{count, plural, zero {لم تُسكت وحدة} one {أُسكتت وحدة واحدة} two {أُسكتت وحدتان} few {أُسكتت # وحدات} many {أُسكتت # وحدة} other {أُسكتت # وحدة}}',
  'event.faults-cleared':
    '{count, plural, zero {لا مسح} one {مسح واحد} two {مسحان} few {# عمليات مسح} many {# عملية مسح} other {# عملية مسح}}',
  'event.refused':
    '{count, plural, zero {لا رفض} one {رفض واحد} two {رفضان} few {# حالات رفض} many {# حالة رفض} other {# حالة رفض}}',
  'event.supply-low':
    '{count, plural, zero {لا انخفاض في التغذية} one {انخفاض واحد في التغذية} two {انخفاضان في التغذية} few {# انخفاضات في التغذية} many {# انخفاضًا في التغذية} other {# انخفاض في التغذية}}',
}
