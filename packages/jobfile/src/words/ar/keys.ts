import type { SameCodes } from '../catalogues.ts'
import type {
  differenceWords as englishDifferences,
  keyWords as englishKeys,
  statementWords as englishStatements,
} from '../en/keys.ts'

/** المفاتيح: ما هي وما يستطيعه كل منها. */
export const keyWords: SameCodes<typeof englishKeys> = {
  'function.start': 'تشغيل',
  'function.emergency-start': 'موضع التشغيل الطارئ',
  'function.passive-start': 'تشغيل بالقرب',
  'function.passive-entry': 'دخول بالقرب',
  'function.lock': 'زر القفل',
  'function.unlock': 'زر الفتح',
  'function.boot': 'زر الصندوق',
  'function.panic': 'زر الإنذار',
  'function.blade-door': 'النصل في قفل الباب',
  'function.blade-ignition': 'النصل في قفل الإشعال',
  'function.blade-boot': 'النصل في قفل الصندوق',
  'form.blade': 'نصل بسيط',
  'form.transponder': 'مفتاح بشريحة',
  'form.remote-head': 'مفتاح رأسه جهاز تحكم',
  'form.flip': 'مفتاح قابل للطي',
  'form.proximity': 'مفتاح قرب',
  'form.card': 'مفتاح بطاقة',
  'outcome.works': 'يعمل',
  'outcome.fails': 'يخفق',
  'outcome.not-applicable': 'لا يوجد',
  'outcome.not-tested': 'لم يُختبر',
  'outcome.open': 'لا جواب',
  'origin.existing': 'كان هنا من قبل',
  'origin.new': 'جديد',
  'make.genuine': 'أصلي',
  'make.aftermarket': 'بديل',
  'make.renewed': 'مجدَّد',
  'make.unknown': 'مصدره غير معروف',
  'colour.brass': 'نحاسي',
  'colour.slate': 'أردوازي',
  'colour.moss': 'طحلبي',
  'colour.rust': 'صدئي',
  'colour.sky': 'سماوي',
  'colour.plum': 'برقوقي',
  'colour.sand': 'رملي',
  'colour.ink': 'حبري',
}

/** اختلافات بين الأرقام، قصيرة بما يكفي لتقف في مطلب. */
export const differenceWords: SameCodes<typeof englishDifferences> = {
  'difference.said-more-than-bench':
    '{count, plural, zero {لا مفتاح غائب مما قيل إنه موجود} one {مفتاح واحد قيل إنه موجود ليس هنا} two {مفتاحان قيل إنهما موجودان ليسا هنا} few {# مفاتيح قيل إنها موجودة ليست هنا} many {# مفتاحًا قيل إنها موجودة ليست هنا} other {# مفتاح قيل إنها موجودة ليست هنا}}',
  'difference.said-fewer-than-bench':
    '{count, plural, zero {لا مفتاح زائد هنا على ما عرفه العميل} one {هنا مفتاح واحد أكثر مما عرفه العميل} two {هنا مفتاحان أكثر مما عرفه العميل} few {هنا # مفاتيح أكثر مما عرفه العميل} many {هنا # مفتاحًا أكثر مما عرفه العميل} other {هنا # مفتاح أكثر مما عرفه العميل}}',
  'difference.stored-more-than-bench':
    '{count, plural, zero {لا موضع مخزن بلا تفسير} one {خزنت السيارة موضعًا واحدًا لا يفسره أي مفتاح هنا} two {خزنت السيارة موضعين لا يفسرهما أي مفتاح هنا} few {خزنت السيارة # مواضع لا يفسرها أي مفتاح هنا} many {خزنت السيارة # موضعًا لا يفسرها أي مفتاح هنا} other {خزنت السيارة # موضع لا يفسرها أي مفتاح هنا}}',
  'difference.stored-fewer-than-bench':
    '{count, plural, zero {لا مفتاح هنا بلا موضع في السيارة} one {مفتاح واحد هنا لم يكن له موضع في السيارة} two {مفتاحان هنا لم يكن لهما موضع في السيارة} few {# مفاتيح هنا لم يكن لها موضع في السيارة} many {# مفتاحًا هنا لم يكن لها موضع في السيارة} other {# مفتاح هنا لم يكن لها موضع في السيارة}}',
  'difference.after-more-than-keys':
    '{count, plural, zero {لا تخزن السيارة أكثر مما تفسره المفاتيح} one {تخزن السيارة موضعًا واحدًا أكثر مما تفسره المفاتيح} two {تخزن السيارة موضعين أكثر مما تفسره المفاتيح} few {تخزن السيارة # مواضع أكثر مما تفسره المفاتيح} many {تخزن السيارة # موضعًا أكثر مما تفسره المفاتيح} other {تخزن السيارة # موضع أكثر مما تفسره المفاتيح}}',
  'difference.after-fewer-than-keys':
    '{count, plural, zero {لا تخزن السيارة أقل من عدد المفاتيح} one {تخزن السيارة موضعًا واحدًا أقل من عدد المفاتيح} two {تخزن السيارة موضعين أقل من عدد المفاتيح} few {تخزن السيارة # مواضع أقل من عدد المفاتيح} many {تخزن السيارة # موضعًا أقل من عدد المفاتيح} other {تخزن السيارة # موضع أقل من عدد المفاتيح}}',
  'difference.stored-key-does-not-start':
    '{count, plural, zero {كل مفتاح على الطاولة يشغّل السيارة} one {مفتاح واحد على الطاولة لا يشغّل السيارة} two {مفتاحان على الطاولة لا يشغّلان السيارة} few {# مفاتيح على الطاولة لا تشغّل السيارة} many {# مفتاحًا على الطاولة لا تشغّل السيارة} other {# مفتاح على الطاولة لا تشغّل السيارة}}',
}

/** ما يعنيه الإحصاء للعميل وشركة التأمين. */
export const statementWords: SameCodes<typeof englishStatements> = {
  'statement.stored-before':
    'قبل العمل كانت هذه السيارة تخزن {count, plural, =0 {لا شيء} zero {لا شيء} one {موضعًا واحدًا} two {موضعين} few {# مواضع} many {# موضعًا} other {# موضع}}.',
  'statement.stored-after':
    'بعد العمل تخزن {count, plural, =0 {لا شيء} zero {لا شيء} one {موضعًا واحدًا} two {موضعين} few {# مواضع} many {# موضعًا} other {# موضع}}.',
  'statement.keys-somewhere-start':
    '{count, plural, zero {لا مفتاح في مكان ما يشغّل هذه السيارة.} one {هناك مفتاح واحد في مكان ما ما زال يشغّل هذه السيارة.} two {قد يكون هناك مفتاحان في مكان ما ما زالا يشغّلان هذه السيارة.} few {قد يكون هناك حتى # مفاتيح في مكان ما ما زالت تشغّل هذه السيارة.} many {قد يكون هناك حتى # مفتاحًا في مكان ما ما زالت تشغّل هذه السيارة.} other {قد يكون هناك حتى # مفتاح في مكان ما ما زالت تشغّل هذه السيارة.}}',
  'statement.absent-keys-stopped':
    'المفاتيح التي لم تكن هنا توقفت عن تشغيل هذه السيارة. قد يظل النصل يفتح الباب.',
  'statement.absent-keys-will-stop':
    'المفاتيح التي ليست هنا ستتوقف عن تشغيل هذه السيارة حين تُكتب القائمة من جديد. قد يظل النصل يفتح الباب.',
  'statement.absent-keys-still-start': 'المفاتيح التي ليست هنا لا يزيلها هذا العمل.',
  'statement.absent-keys-not-proven-stopped':
    'كُتبت القائمة من جديد، لكن السيارة تخزن أكثر مما تفسره المفاتيح. لم يثبت أن المفاتيح التي لم تكن هنا توقفت عن تشغيل هذه السيارة.',
  'statement.absent-keys-unknown':
    'لا يُعرف هل يزيل هذا العمل المفاتيح التي ليست هنا. توقّع أن تتوقف عن تشغيل هذه السيارة، ولا تعوّل على ذلك.',
  'statement.absent-clone-still-starts':
    '{count, plural, zero {لا مفتاح} one {مفتاح واحد} two {مفتاحان} few {# مفاتيح} many {# مفتاحًا} other {# مفتاح}} ({keys}) {count, plural, zero {غائب} one {ليس هنا لكنه يكرر هوية مفتاح موجود هنا: يشغّل هذه السيارة ما دام ذلك المفتاح يشغّلها} two {ليسا هنا لكنهما يكرران هوية مفتاحين موجودين هنا: يشغّلان هذه السيارة ما دام ذانك المفتاحان يشغّلانها} few {ليست هنا لكنها تكرر هويات مفاتيح موجودة هنا: تشغّل هذه السيارة ما دامت تلك المفاتيح تشغّلها} many {ليست هنا لكنها تكرر هويات مفاتيح موجودة هنا: تشغّل هذه السيارة ما دامت تلك المفاتيح تشغّلها} other {ليست هنا لكنها تكرر هويات مفاتيح موجودة هنا: تشغّل هذه السيارة ما دامت تلك المفاتيح تشغّلها}}.',
  'statement.entries-are-not-keys':
    'المواضع ليست مفاتيح: في بعض الأنظمة يأخذ المفتاح الواحد موضعين، لذا {count, plural, zero {قد لا يكون هنا موضع ثانٍ} one {قد يكون هذا الموضع موضعًا ثانيًا} two {قد يكون أحد هذين الموضعين موضعًا ثانيًا} few {قد يكون بعض هذه المواضع (#) موضعًا ثانيًا} many {قد يكون بعض هذه المواضع (#) موضعًا ثانيًا} other {قد يكون بعض هذه المواضع (#) موضعًا ثانيًا}} لمفتاح على الطاولة.',
  'statement.clones-count-once':
    '{count, plural, zero {لا مفتاح} one {مفتاح واحد} two {مفتاحان} few {# مفاتيح} many {# مفتاحًا} other {# مفتاح}} ({keys}) {count, plural, zero {نسخة} one {نسخة} two {نسختان} few {نُسخ} many {نُسخ} other {نُسخ}}: النسخة وأصلها مفتاح واحد عند السيارة، ومحو أحدهما يمحو الاثنين.',
  'statement.keys-start-now':
    '{count, plural, zero {لم يُرَ أي مفتاح هنا} one {رُئي مفتاح واحد هنا} two {رُئي مفتاحان هنا} few {رُئيت # مفاتيح هنا} many {رُئي # مفتاحًا هنا} other {رُئي # مفتاح هنا}} وهي تشغّل هذه السيارة بعد العمل ({keys}).',
  'statement.key-no-longer-starts': 'كان المفتاح {keys} يشغّل هذه السيارة قبل العمل ولا يشغّلها الآن.',
  'statement.keys-never-tested':
    '{count, plural, zero {لا مفتاح هنا بلا اختبار} one {مفتاح واحد هنا لم يُختبر قط} two {مفتاحان هنا لم يُختبرا قط} few {# مفاتيح هنا لم تُختبر قط} many {# مفتاحًا هنا لم تُختبر قط} other {# مفتاح هنا لم تُختبر قط}} ({keys}).',
}
