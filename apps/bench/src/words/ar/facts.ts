import type { SameCodes } from '@shearline/jobfile'
import type { factWords as english } from '../en/facts.ts'

/** كل نوع من القيود في جملة واحدة، كما يقف في السجل. */
export const factWords: SameCodes<typeof english> = {
  'fact.job-opened': 'فُتحت المهمة: {title}، {place} ({zone})',
  'fact.keys-said':
    '{count, plural, =0 {قيل إنه لا مفتاح موجود} zero {قيل إنه لا مفتاح موجود} one {قيل إن مفتاحًا واحدًا موجود} two {قيل إن مفتاحين موجودان} few {قيل إن # مفاتيح موجودة} many {قيل إن # مفتاحًا موجودًا} other {قيل إن # مفتاح موجود}}؛ ليست هنا: {absent}',
  'fact.note-written': 'ملاحظة: {text}',
  'fact.authority-seen': '{role}: {document}، {issuer}، تنتهي بـ {last}؛ أصل: {original}؛ مطابقة: {matched}',
  'fact.authority-decided': '{decision}: {reason}',
  'fact.consent-given': '{what}. وافق {signer}',
  'fact.vin-read':
    'VIN {vin}، {source}{picture, select, letters {؛ قُرئ من حروف صورة} code {؛ قُرئ من رمز في صورة} other {}}',
  'fact.recording-attached':
    'التسجيل {name}: {format}، {size}، {messages, plural, zero {بلا رسائل} one {رسالة واحدة} two {رسالتان} few {# رسائل} many {# رسالة} other {# رسالة}}',
  'fact.scan-attached':
    'فحص {phase}: {units, plural, zero {لا وحدة} one {وحدة واحدة} two {وحدتان} few {# وحدات} many {# وحدة} other {# وحدة}}، {faults, plural, =0 {لا أعطال} zero {لا أعطال} one {عطل واحد} two {عطلان} few {# أعطال} many {# عطلًا} other {# عطل}}',
  'fact.unit-named': 'وحدة التحكم {unit} مخصصة لـ: {role}',
  'fact.fault-acknowledged': 'أقرّ {signer} بالعطل {code} في الوحدة {unit}: {words}',
  'fact.clear-requested': 'مُسحت الأعطال في {units}',
  'fact.supply-set': 'الحد الأدنى للتغذية {volts} ({source})، {battery}',
  'fact.supply-read': 'التغذية {volts}، {during}',
  'fact.key-labelled': 'المفتاح {key}، {colour}: {form}، {origin}',
  'fact.key-count-read':
    'تخزن السيارة {count, plural, zero {لا شيء} one {موضعًا واحدًا} two {موضعين} few {# مواضع} many {# موضعًا} other {# موضع}} {when, select, before {قبل العمل} other {بعد العمل}}',
  'fact.key-count-none':
    'لا تُظهر السيارة عددًا {when, select, before {قبل العمل} other {بعد العمل}}: {because}',
  'fact.function-tested':
    'المفتاح {key}، {function}: {outcome} {phase, select, before {قبل العمل} other {بعد العمل}}',
  'fact.difference-explained': 'فُسِّر: {reason}',
  'fact.blank-chosen':
    'المفتاح الخام {item}: {fits, select, true {قورن، يناسب} false {قورن، لا يناسب} other {لم يُقارن}}',
  'fact.blank-used':
    'المفتاح الخام {item}: {outcome, select, used {استُعمل} spoiled {تلف} other {عاد إلى الشاحنة}}',
  'fact.rule-chosen': '{kind}. المصدر: {source}',
  'fact.rehearsal-read': 'قُرئت المحاكاة، الترتيب {order}. {wayBack}',
  'fact.backup-proven':
    'نسخة احتياطية من {what}: {same, select, true {قراءتان متطابقتان، {first}…} other {القراءتان مختلفتان، {first}… و{second}…}}',
  'fact.backup-waived': 'لا نسخة احتياطية: {because}',
  'fact.session-opened': 'فُتحت الجلسة، {rehearsed, select, true {بعد محاكاة} other {بلا محاكاة}}',
  'fact.key-taught': 'عُرِّف المفتاح {key}؛ عدد السيارة: {count}؛ التغذية: {volts}',
  'fact.session-closed': 'أُغلقت الجلسة؛ عدد السيارة: {count}',
  'fact.broke-off': 'توقف بعد {after}: {why}',
  'fact.break-off-mended': 'عولج الانقطاع: {how}',
  'fact.caution-read': 'قُرئ التنبيه: {caution}',
  'fact.price-agreed': 'اتُّفق على السعر: {amount}',
  'fact.warranty-given':
    'الضمان: {months, plural, zero {بلا أشهر} one {شهر واحد} two {شهران} few {# أشهر} many {# شهرًا} other {# شهر}}',
  'fact.retention-set':
    'حُدِّد الحذف لـ{count, plural, zero { لا صنف} one { صنف واحد} two { صنفين} few { # أصناف} many { # صنفًا} other { # صنف}} ({pack})',
  'fact.corrected': '{action, select, withdrawn {سُحب} other {استُبدل}}: {reason}',
  'fact.document-sealed':
    'خُتمت الوثيقة على {count, plural, zero {لا قيود} one {قيد واحد} two {قيدين} few {# قيود} many {# قيدًا} other {# قيد}}، {root}…',
  'fact.unknown': 'سجّل إصدار أحدث «{kind}». هو محفوظ وغير مفهوم؛ حدِّث Shearline.',
  'fact.erased': 'حُذف محتوى «{kind}» حين انتهت مدته. يبقى موضعه في السجل.',
  'fact.unreadable': 'محتوى «{kind}» لا يناسب نوعه. هو محفوظ ولا يُحسب.',
}
