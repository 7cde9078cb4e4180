import type { SameCodes } from '@shearline/jobfile'
import type { policyWords as english } from '../en/policy.ts'

/** قواعد المكان والمنشأة (حزم القواعد)، والسيارة ومكانها، والتنبيهات حيث تهم، والحفظ. */
export const policyWords: SameCodes<typeof english> = {
  'title.rules': 'القواعد · Shearline',
  'title.keeping': 'المستحق للحذف · Shearline',
  'board.find': 'البحث عن مهمة',
  'board.find.hint': 'كلمات من اسمها أو مكانها أو سيارتها، أو نهاية رقم VIN.',
  'board.found':
    '{count, plural, =0 {لا مهمة تطابق} zero {لا مهمة تطابق} one {مهمة واحدة تطابق} two {مهمتان تطابقان} few {# مهام تطابق} many {# مهمة تطابق} other {# مهمة تطابق}}',
  'board.more':
    '{count, plural, zero {لا مهام أخرى} one {مهمة أخرى} two {مهمتان أخريان} few {# مهام أخرى} many {# مهمة أخرى} other {# مهمة أخرى}}',
  'rules.title': 'قواعد المكان والمنشأة',
  'rules.law': 'القواعد بيانات لا مشورة. راجع قانونك المحلي؛ وحيث يقول غير ذلك فهو المقدَّم.',
  'rules.by': 'تعمل هذه المهمة وفق: {pack}.',
  'rules.which': 'القواعد التي يُعمل بها',
  'rules.choose': 'العمل بهذه القواعد',
  'rules.other': 'العمل بقواعد أخرى',
  'rules.not-here': 'القواعد «{pack}» ليست على هذا الجهاز. ما تطلبه مسجل ومذكور في الأسفل.',
  'rules.identity-any': 'الهوية، واحدة من: {documents}.',
  'rules.entitlement-any': 'الأحقية، واحدة من: {documents}.',
  'rules.or': '؛ ',
  'rules.label': '{name}، {region}، {dated}',
  'rules.source': 'المصدر: {source} ({basis}).',
  'rules.why-not': 'لماذا لا',
  'rules.because': 'أُجيب بلا: {why}',
  'rules.record-no': 'تسجيل «لا» بهذا السبب',
  'rules.link': 'القواعد',
  'rules.page': 'قواعد المكان والمنشأة',
  'rules.page.what':
    'تقول الحزمة ما الذي يُظهر أن لأحدهم أن يأخذ مفتاحًا، وما يُحفظ وكم، وما يجب أن يُقال للعميل على جانب الطريق، وأي نطاقات راديو معتادة. خذ نسخة من إحداها، وغيّرها إلى قانونك، واعمل بها.',
  'rules.usual': 'تبدأ بها المهام الجديدة',
  'rules.make-usual': 'بدء المهام الجديدة بها',
  'rules.make-usual-named': 'بدء المهام الجديدة بها: {name}',
  'rules.copy': 'تغيير نسخة',
  'rules.copy-named': 'تغيير نسخة: {name}',
  'rules.edit': 'تغيير',
  'rules.edit-named': 'تغيير: {name}',
  'rules.save': 'حفظها ملفًا',
  'rules.save-named': 'حفظها ملفًا: {name}',
  'rules.forget': 'نسيانها',
  'rules.forget-named': 'نسيانها: {name}',
  'rules.where': '{region}؛ روجعت {dated}',
  'rules.read-file': 'قراءة حزمة من ملف',
  'rules.read-file.hint': 'ملف JSON كما يكتبه «حفظها ملفًا».',
  'rules.read': 'قُرئت: {name}. حُفظت على هذا الجهاز.',
  'rules.not-json': 'الملف ليس JSON، فلم يُقرأ شيء: {what}',
  'rules.troubles':
    '{count, plural, zero {لا موضع خطأ} one {موضع واحد خطأ} two {موضعان خطأ} few {# مواضع خطأ} many {# موضعًا خطأ} other {# موضع خطأ}}، فلم يُقرأ شيء:',
  'rules.trouble': '{what}. {doNext}',
  'rules.form.name': 'اسم القواعد',
  'rules.form.region': 'أين تنطبق',
  'rules.form.dated': 'يوم قوبلت بالقانون',
  'rules.form.dated.hint': 'مثل 2026-11-28.',
  'rules.form.authority': 'ما يُظهر أن لأحدهم أن يأخذ مفتاحًا',
  'rules.form.identity': 'الهوية، أي واحدة من',
  'rules.form.entitlement': 'الأحقية، أي واحدة من',
  'rules.form.checks': 'ويُسأل أيضًا',
  'rules.form.own': 'أسئلة خاصة بك',
  'rules.form.own.hint': 'يُراد لكل منها «نعم»، أو «لا» مع سبب.',
  'rules.form.source': 'من أين جاء هذا',
  'rules.form.retention': 'ما يُحفظ وكم',
  'rules.form.days': '{name}: أيام',
  'rules.form.stalled': 'الأيام التي تُعد بعدها المهمة التي لا تنتهي منتهية',
  'rules.form.contract': 'ما يُقال للعميل الخاص قبل العمل',
  'rules.form.radio': 'نطاقات الراديو في',
  'rules.form.radio.none': 'لا منطقة',
  'rules.form.keep': 'حفظ هذه القواعد',
  'rules.own-suffix': '{name} (خاصة بنا)',

  'site.title': 'السيارة ومكانها',
  'site.why': 'هذه الأجوبة الأربعة تحدد أي التنبيهات يهم هنا.',

  'cautions.here':
    '{count, plural, zero {لا شيء يُقرأ} one {اقرأ هذا قبل أن تتابع} two {اقرأ هذين قبل أن تتابع} few {اقرأ هذه التنبيهات (#) قبل أن تتابع} many {اقرأ هذه التنبيهات (#) قبل أن تتابع} other {اقرأ هذه التنبيهات (#) قبل أن تتابع}}',

  'keeping.title': 'المستحق للحذف',
  'keeping.link': 'المستحق للحذف',
  'keeping.what':
    'ما يعرفه هذا الجهاز عن كل مهمة، مقابلًا بمددها. الحذف مع إثباته يُجرى على الحاسوب الذي يحفظ السجل: «shearline retention delete».',
  'keeping.reading':
    'النظر في {count, plural, zero {لا مهمة} one {مهمة واحدة} two {مهمتين} few {# مهام} many {# مهمة} other {# مهمة}} ...',
  'keeping.none': 'لا شيء مستحق اليوم.',
  'keeping.since': 'منذ {day}',
  'keeping.items':
    '{count, plural, zero {لا شيء} one {شيء واحد} two {شيئان} few {# أشياء} many {# شيئًا} other {# شيء}}',
  'keeping.rule':
    '{days, plural, zero {بلا أيام} one {يوم واحد} two {يومان} few {# أيام} many {# يومًا} other {# يوم}} من {trigger, select, sealed {الختم} handed_over {التسليم} warranty_ended {انتهاء الضمان} purpose_ended {انتهاء الغرض} other {التسجيل}}؛ {source}',
  'keeping.held': 'موقوف الحذف، فيبقى: {reason}',
  'keeping.stalled': 'لم تنته المهمة قط؛ حُسبت من آخر قيد فيها.',

  'custody.title': 'ما يُحفظ، وإلى متى',
  'custody.pack': 'المدد: {pack}.',
  'custody.class':
    '{count, plural, =0 {لا شيء محفوظ} zero {لا شيء محفوظ} one {شيء واحد محفوظ} two {شيئان محفوظان} few {# أشياء محفوظة} many {# شيئًا محفوظًا} other {# شيء محفوظ}}',
  'custody.not-running': 'لم تبدأ مدته',
  'custody.until': 'حتى {day}',
  'custody.due': 'مستحق منذ {day}',
  'custody.deleted':
    '{count, plural, zero {لا محذوف} one {حُذف واحد} two {حُذف اثنان} few {حُذف #} many {حُذف #} other {حُذف #}}',
  'custody.hold': 'منع حذف أي شيء',
  'custody.hold.why': 'لماذا، وبطلب مَن',
  'custody.hold.place': 'إيقاف حذف كل ما في هذه المهمة',
  'custody.hold.stands': 'لا يجوز حذف شيء من هذه المهمة: {reason} ({by}، {day}).',
  'custody.hold.lift': 'إنهاء هذا المنع',
  'custody.deletion':
    '{what}: {count, plural, zero {لا شيء} one {شيء واحد} two {شيئان} few {# أشياء} many {# شيئًا} other {# شيء}}، {day}، {by}. {why}{keys, select, true { أُتلفت مفاتيحه.} other {}}',

  'doubts.title': 'ما لا يتفق في هذا السجل',
  'doubts.clock.before-its-predecessor': 'قيد من الجهاز {device} وقته أبكر من الذي قبله.',
  'doubts.clock.before-what-it-names': 'قيد من الجهاز {device} وقته أبكر مما يسميه.',
  'doubts.clock.written-after-receipt': 'قيد من الجهاز {device} وقته متأخر عن وصوله.',
  'doubts.clock.in-the-future': 'قيد من الجهاز {device} وقته في المستقبل.',
  'doubts.clock.other': 'ساعة الجهاز {device} لا تتفق مع السجل.',
  'doubts.device-revoked':
    '{count, plural, zero {لا قيود} one {قيد واحد} two {قيدان} few {# قيود} many {# قيدًا} other {# قيد}} من جهاز لم يعد موثوقًا ({devices}). سجّل الصحيح من جديد على جهاز موثوق.',
  'doubts.not-witnessed':
    '{count, plural, zero {لا قيود} one {قيد واحد} two {قيدان} few {# قيود} many {# قيدًا} other {# قيد}} من جهاز قد يكون مفتاحه في يد غيره ({devices}). لا يُظهر وقت كتابتها إلا ذلك المفتاح.',
  'doubts.own-revoked':
    'لم تعد المنشأة تثق بهذا الجهاز ({because, select, retired {أُخرج من الخدمة} replaced {استُبدل} lost {أُبلغ عن فقده} stolen {أُبلغ عن سرقته} other {قد يكون مفتاحه في يد غيره}}). ما يسجله الآن لا يُقبل. اعمل على جهاز آخر.',

  'handed.title': 'التسليم',
  'handed.to': 'إلى مَن',
  'handed.to.hint': 'اسم من تسلّم السيارة ومفاتيحها أو صفته.',
  'handed.keys': 'المفاتيح التي ذهبت مع السيارة',
  'handed.first': 'اختم الوثيقة أولًا؛ يأتي هذا بعدها.',
  'handed.record': 'سُلِّمت',
  'handed.again': 'تسجيل تسليم آخر',
  'handed.done':
    'إلى {to}، {day}، {time}؛ {count, plural, =0 {لم يُذكر مفتاح} zero {لم يُذكر مفتاح} one {المفتاح {keys}} two {المفتاحان {keys}} few {المفاتيح {keys}} many {المفاتيح {keys}} other {المفاتيح {keys}}}.',

  'hand.title': 'تسليم هذه المهمة إلى زميل',
  'hand.how':
    'الزميل الذي تستعمل منصته الخادم نفسه يفتح هذا العنوان أو يمسحه بالكاميرا: تُفتح المهمة هناك بكل ما أُرسل حتى الآن.',
  'hand.here-only':
    'فُتحت هذه المنصة بعنوان لا يفهمه إلا هذا الجهاز ({address}). أعط الملف أدناه، أو افتح المنصة أولًا بعنوان من شبكتك.',
  'hand.qr': 'عنوان هذه المهمة رمزَ QR',
  'hand.unsent':
    '{count, plural, zero {لا قيود} one {قيد واحد} two {قيدان} few {# قيود} many {# قيدًا} other {# قيد}} على هذا الجهاز فقط حتى الآن. أرسل أولًا، أو أعط الملف أيضًا.',
  'hand.all-sent': 'أُرسل كل ما في هذه المهمة.',
  'hand.bundle': 'حفظ المهمة كلها ملفًا',
  'hand.bundle.how':
    'بلا شبكة: يحوي الملف كل قيد وكل ملف من المهمة على هذا الجهاز. يستطيع أي أحد إثباته بـ «shearline verify» ولو بعد سنين؛ وهو للقراءة، أما العمل فيستمر بالعنوان أعلاه.',
  'hand.bundle.unsealed':
    'لم تُختم المهمة بعد: كل قيد في الملف موقّع، لكن لا شيء فيه يبيّن أنه لا ينقص أي قيد. اختم الوثيقة أولًا لإثبات الكل.',
}
