import type { SameCodes } from '@shearline/jobfile'
import type { jobWords as english } from '../en/job.ts'

/** صفحة المهمة: الأسطوانة والفصول والخطوة التالية وما يحدث إن توقف العمل والتصحيحات والمكالمة والأحقية وVIN. */
export const jobWords: SameCodes<typeof english> = {
  'job.page': 'المهمة؛ يمكن إفلات التسجيلات في أي موضع هنا',
  'job.reading': 'قراءة المهمة ...',
  'job.unknown': 'هذه المهمة ليست هنا',
  'job.unknown.what':
    'لا يعرف هذا الجهاز ولا الخادم مهمة باسم {job}. إن فُتحت على جهاز آخر فليُرسل ذلك الجهاز أولًا.',
  'job.to-board': 'إلى المهام',
  'job.since': 'منذ {when}',

  'cylinder.title': 'أين وصلت المهمة',
  'cylinder.turned': 'الدبابيس السبعة على الخط: الأسطوانة تدور.',
  'cylinder.glance': '{count} من {of} دبابيس على الخط',
  'standing.in-line': 'على الخط',
  'standing.low': 'أدنى، {done} من {of}',
  'standing.high': 'تعارض',

  'next.title': 'الخطوة التالية',
  'chapter.wanted': 'مطلوب {count}',
  'chapter.nothing': 'تم',
  'wanted.tapped': '{name}: {standing}',
  'wanted.here':
    '{count, plural, zero {لا شيء مطلوب في هذا الفصل} one {أمر واحد ما زال مطلوبًا في هذا الفصل} two {أمران ما زالا مطلوبين في هذا الفصل} few {# أمور ما زالت مطلوبة في هذا الفصل} many {# أمرًا ما زال مطلوبًا في هذا الفصل} other {# أمر ما زال مطلوبًا في هذا الفصل}}',
  'wanted.nothing': 'لا ينقص هذا الدبوس شيء.',
  'wanted.elsewhere': '{name}، في: {chapter}',
  'part.more': 'تسجيل مرة أخرى',

  'record.count':
    '{count, plural, zero {لا قيود في السجل} one {قيد واحد في السجل} two {قيدان في السجل} few {# قيود في السجل} many {# قيدًا في السجل} other {# قيد في السجل}}',
  'record.withdraw': 'سحب',
  'record.withdraw-named': 'سحب: {what}',
  'record.corrected': '{action, select, withdrawn {سحبه} other {استبدله}} {by}: {reason}',
  'withdraw.title': 'أتسحب هذا؟',
  'withdraw.reason': 'لماذا هو غير صحيح',
  'withdraw.hint': 'يبقى في السجل مشطوبًا، مع اسمك والسبب. لا يُمحى شيء في صمت.',

  'stops.title': 'إذا توقف العمل هنا',
  'stops.title-stopped': 'توقف العمل. ما يصح الآن',
  'stops.untouched': 'لم يتغير شيء: كل مفتاح كان يشغّل السيارة ما زال يشغّلها.',
  'stops.closed': 'أُغلقت الجلسة: ما عُرِّف محفوظ في السيارة.',
  'stops.same':
    '{count, plural, zero {لا مفتاح يشغّل} one {المفتاح {starts} يشغّل} two {المفتاحان {starts} يشغّلان} few {المفاتيح {starts} تشغّل} many {المفاتيح {starts} تشغّل} other {المفاتيح {starts} تشغّل}} السيارة كما كان{absent, plural, =0 {؛ لم يُسقَط شيء.} zero {؛ لم يُسقَط شيء.} one {؛ ومفتاح واحد غائب لم يعد يشغّلها.} two {؛ ومفتاحان غائبان لم يعودا يشغّلانها.} few {؛ و# مفاتيح غائبة لم تعد تشغّلها.} many {؛ و# مفتاحًا غائبًا لم تعد تشغّلها.} other {؛ و# مفتاح غائب لم تعد تشغّلها.}}',
  'stops.more':
    '{count, plural, zero {لا مفتاح يشغّل} one {المفتاح {starts} يشغّل} two {المفتاحان {starts} يشغّلان} few {المفاتيح {starts} تشغّل} many {المفاتيح {starts} تشغّل} other {المفاتيح {starts} تشغّل}} السيارة{absent, plural, =0 {؛ لم يُسقَط شيء.} zero {؛ لم يُسقَط شيء.} one {؛ ومفتاح واحد غائب لم يعد يشغّلها.} two {؛ ومفتاحان غائبان لم يعودا يشغّلانها.} few {؛ و# مفاتيح غائبة لم تعد تشغّلها.} many {؛ و# مفتاحًا غائبًا لم تعد تشغّلها.} other {؛ و# مفتاح غائب لم تعد تشغّلها.}}',
  'stops.dropped':
    'المؤكد أنها تشغّل السيارة هي {starts} فقط؛ أما {lost} فقد لا تشغّلها{absent, plural, =0 {.} zero {.} one {، ولا مفتاح واحد غائب.} two {، ولا مفتاحان غائبان.} few {، ولا # مفاتيح غائبة.} many {، ولا # مفتاحًا غائبًا.} other {، ولا # مفتاح غائب.}}',
  'stops.stranded': 'لا مفتاح هنا مؤكد أنه يشغّل السيارة.',
  'stops.not-rehearsed':
    'قاعدة التعريف أو محاكاتها ليست في السجل، لذا تُعامل هذه السيارة على أنها تستبدل القائمة كلها: المفاتيح الغائبة قد تتوقف عن العمل.',
  'way-back.not-needed': 'لا حاجة إلى طريق عودة.',
  'way-back.reopen': 'طريق العودة: فتح جلسة جديدة.',
  'way-back.restore': 'طريق العودة: استرجاع النسخة الاحتياطية.',
  'way-back.none': 'لا يُعرف طريق عودة.',

  'line.said':
    '{count, plural, =0 {قيل إنه لا مفتاح موجود} zero {قيل إنه لا مفتاح موجود} one {قيل إن مفتاحًا واحدًا موجود} two {قيل إن مفتاحين موجودان} few {قيل إن # مفاتيح موجودة} many {قيل إن # مفتاحًا موجودًا} other {قيل إن # مفتاح موجود}}',
  'line.absent': 'ليست هنا: {names}',
  'line.seen': '{document} …{last}',
  'line.vin':
    'VIN …{tail}، {count, plural, zero {بلا قراءة} one {قراءة واحدة} two {قراءتان} few {# قراءات} many {# قراءة} other {# قراءة}}',
  'line.vin-differs': 'قراءات VIN مختلفة',
  'line.keys':
    '{count, plural, zero {لا مفتاح مُسمّى} one {مفتاح واحد مُسمّى} two {مفتاحان مُسمّيان} few {# مفاتيح مُسمّاة} many {# مفتاحًا مُسمّى} other {# مفتاح مُسمّى}}',
  'line.rest': '{volts} في السكون',
  'line.scanned': 'فُحصت قبل العمل',
  'line.rehearsed': 'قُرئت المحاكاة',
  'line.floor': 'الحد الأدنى {volts}',
  'line.backup': 'قراءتان متطابقتان، {hash}…',
  'line.backup-differs': 'القراءتان مختلفتان',
  'line.no-backup': 'لا نسخة احتياطية: {reason}',
  'line.new-keys':
    '{count, plural, zero {لا مفتاح جديد} one {مفتاح جديد {keys}} two {مفتاحان جديدان {keys}} few {مفاتيح جديدة {keys}} many {مفاتيح جديدة {keys}} other {مفاتيح جديدة {keys}}}',
  'line.taught': 'عُرِّفت: {keys}',
  'line.count': 'السيارة تعدّ {count}',
  'line.minimum': 'الأدنى {volts}',
  'line.broke': 'توقف بعد {after}',
  'line.closed': 'أُغلقت الجلسة',
  'line.proven': 'كل وظيفة أجابت',
  'line.open':
    '{count, plural, zero {لا وظيفة معلّقة} one {وظيفة واحدة معلّقة} two {وظيفتان معلّقتان} few {# وظائف معلّقة} many {# وظيفة معلّقة} other {# وظيفة معلّقة}}',
  'line.failing':
    '{count, plural, zero {لا إخفاق} one {إخفاق واحد} two {إخفاقان} few {# إخفاقات} many {# إخفاقًا} other {# إخفاق}}',
  'line.faults':
    '{count, plural, =0 {لا أعطال} zero {لا أعطال} one {عطل واحد} two {عطلان} few {# أعطال} many {# عطلًا} other {# عطل}}',
  'line.attention': 'بقي {count} للحسم',
  'line.price': 'اتُّفق على السعر',
  'line.sealed': 'ختمها {by} في {time}',
  'line.corrections':
    '{count, plural, zero {لا تصحيح} one {تصحيح واحد} two {تصحيحان} few {# تصحيحات} many {# تصحيحًا} other {# تصحيح}}',

  'call.keys': 'المفاتيح الموجودة',
  'call.keys.again': 'العميل يقول الآن غير ذلك',
  'call.count': 'عدد المفاتيح بحسب قول العميل',
  'call.count.hint': 'كلها، أينما كانت.',
  'call.absent': 'المفاتيح التي لن تكون هنا، بكلمات العميل نفسه',
  'call.absent.hint': 'واحدًا واحدًا: «الاحتياطي في البيت»، «ضاع على الشاطئ».',
  'call.notes': 'ملاحظات',
  'call.note.add': 'كتابة ملاحظة',
  'call.note': 'ملاحظة',

  'authority.identity': 'هوية الشخص',
  'authority.entitlement': 'الحق في طلب مفتاح',
  'authority.identity.usual': 'جواز سفر|رخصة قيادة|بطاقة هوية',
  'authority.entitlement.usual': 'وثيقة تسجيل السيارة|أمر عمل|خطاب جهة التمويل|خطاب شركة التأمين|عقد إيجار',
  'authority.again': 'عُوينت وثيقة أخرى',
  'authority.document': 'نوع الوثيقة',
  'authority.issuer': 'الجهة التي أصدرتها',
  'authority.last': 'الخانات الأخيرة من رقمها',
  'authority.last.hint': 'ست على الأكثر. لا يُحفظ الرقم كاملًا ولا الصور.',
  'authority.original': 'هل عُوينت أصلًا لا صورة؟',
  'authority.matched': 'هل هي مطابقة؟',
  'authority.matched.identity': 'الصورة والاسم يطابقان الشخص الحاضر.',
  'authority.matched.entitlement': 'تذكر هذه السيارة وهذا الشخص أو هذه المنشأة.',
  'authority.by': 'تحقق منها',
  'authority.seen': '{document}، {issuer}، تنتهي بـ {last}، تحقق منها {by}.',
  'authority.how':
    '{original, select, true {أصل} other {ليست أصلًا}}، {matched, select, true {مطابقة} other {غير مطابقة}}.',
  'authority.decision': 'الرفض أو التعليق',
  'authority.stop': 'هناك ما ليس سليمًا',
  'authority.decide': 'القرار',
  'authority.decide.held': 'تعليق العمل',
  'authority.decide.refused': 'رفض العمل',
  'authority.decide.released': 'متابعة العمل',

  'consent-title.absent-keys-stop': 'المفاتيح الغائبة قد تتوقف عن العمل',
  'consent-title.no-check-before': 'لم يكن الفحص ممكنًا قبل العمل',
  'consent-title.clear-faults': 'مسح الأعطال',
  'consent.again': 'التوقيع مرة أخرى',
  'consent.given': 'وافق {signer}. المفاتيح المذكورة: {keys}.',
  'consent.absent': 'المفاتيح التي قد تتوقف، بكلمات العميل نفسه',
  'consent.absent.hint': 'اقرأها بصوت مسموع قبل أن يوافق العميل.',
  'consent.signer': 'اسم من يوافق',
  'consent.signer.hint': 'الشخص الحاضر، لا المنشأة.',
  'consent.record': 'موافقة: تسجيلها',

  'vin.title': 'رقم تعريف المركبة (VIN)',
  'vin.again': 'قراءته من مصدر آخر',
  'vin.source': 'قُرئ من',
  'vin.from':
    '{source}{picture, select, letters { (حروف صورة)} code { (رمز في صورة)} other {}}{count, plural, zero {} one {} two {، مرتين} few {، # مرات} many {، # مرة} other {، # مرة}}',
  'vin.text': 'VIN',
  'vin.text.hint': '17 خانة؛ لا تُستعمل الحروف I وO وQ أبدًا.',
  'vin.length': '{count} من 17 خانة',
  'vin.well-formed': 'سليم التركيب.',
  'vin.not-well-formed': 'غير سليم التركيب.',
  'vin.check.ok': 'خانة التحقق صحيحة.',
  'vin.check.other': 'يُفترض أن تكون خانة التحقق {expected}؛ وهي إلزامية في أمريكا الشمالية وحدها.',
  'vin.repairs': 'قراءات قريبة تصلح. انظر مرة أخرى قبل أن تأخذ إحداها:',
  'vin.agree': 'كل المصادر متفقة.',
  'vin.malformed':
    'إحدى القراءات أعلاه غير سليمة التركيب: VIN من 17 خانة ولا يحوي أبدًا I أو O أو Q. انظر مرة أخرى ثم اسحب القراءة الخاطئة في الأسفل.',
  'vin.conflict':
    'تختلف المصادر في {count, plural, zero {لا شيء} one {خانة واحدة} two {خانتين} few {# خانات} many {# خانة} other {# خانة}}، محاطة بإطار في الأعلى. انظر مرة أخرى ثم اسحب القراءة الخاطئة في الأسفل.',
  'vin.too-few': 'مصدر واحد فقط: لا بد أن يوافقه مصدر ثانٍ.',
}
