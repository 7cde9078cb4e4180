import type { SameCodes } from '@shearline/jobfile'
import type { handoverWords as english } from '../en/handover.ts'

/** التنبيهات والسعر والضمان ومدد الحفظ والختم والإغلاق. */
export const handoverWords: SameCodes<typeof english> = {
  'handover.open': 'فتح الوثيقة',
  'cautions.title': 'تنبيهات لهذه السيارة',
  'cautions.read': 'قُرئ',
  'cautions.acknowledge': 'قرأته',
  'cautions.acknowledge-named': 'قرأته: {caution}',
  'price.title': 'السعر',
  'price.again': 'الاتفاق على سعر آخر',
  'price.currency': 'العملة',
  'price.line': 'البند {number}: مقابل ماذا',
  'price.amount': 'البند {number}: المبلغ',
  'price.usual': 'مفتاح، قصًا وتعريفًا',
  'price.another': 'بند آخر',
  'price.sum': 'المجموع',
  'warranty.title': 'الضمان',
  'warranty.none': 'لا شيء في السجل.',
  'warranty.add': 'منح ضمان',
  'warranty.again': 'منح ضمان آخر',
  'warranty.given':
    '{months, plural, zero {بلا أشهر} one {شهر واحد} two {شهران} few {# أشهر} many {# شهرًا} other {# شهر}}. لا يشمل: {excludes}.',
  'warranty.months': 'الأشهر',
  'warranty.excludes': 'لا يشمل',
  'warranty.usual': 'خلية المفتاح|الماء|السقوط',
  'retention.title': 'ما يُحذف ومتى',
  'retention.again': 'ضبط مدد أخرى',
  'retention.law': 'تأتي هذه المدد من القواعد المسماة هنا. راجع قانونك المحلي وغيّر ما يخالفه.',
  'retention.class': '{name}: أيام الحفظ',
  'retention.days':
    '{days, plural, zero {بلا أيام} one {يوم واحد} two {يومان} few {# أيام} many {# يومًا} other {# يوم}}',
  'retention.changed': 'غُيّر لهذه المهمة',
  'seal.title': 'الوثيقة',
  'seal.open':
    '{count, plural, zero {لا شيء معلّق} one {أمر واحد ما زال معلّقًا} two {أمران ما زالا معلّقين} few {# أمور ما زالت معلّقة} many {# أمرًا ما زال معلّقًا} other {# أمر ما زال معلّقًا}}:',
  'seal.anyway': 'الختم مع ذلك. تقول الوثيقة عندئذ ما كان معلّقًا.',
  'seal.unsent':
    '{count, plural, zero {لا قيود محفوظة هنا} one {قيد واحد محفوظ هنا} two {قيدان محفوظان هنا} few {# قيود محفوظة هنا} many {# قيدًا محفوظًا هنا} other {# قيد محفوظ هنا}} من دون إرسال بعد. لا يحتاج الختم إلى اتصال: تُصنع الوثيقة على هذا الجهاز وتُرسل لاحقًا.',
  'seal.busy': 'تُصنع الوثيقة ويُتحقق منها ...',
  'seal.not-in-line': 'سُجِّل في هذه الأثناء ما زال معلّقًا. انظر في القائمة واختم مرة أخرى.',
  'seal.not-proven': 'تعذر إثبات الوثيقة بعد صنعها، فلم يُختم شيء. حاول مرة أخرى.',
  'seal.go': 'ختم الوثيقة',
  'seal.again': 'الختم مرة أخرى',
  'seal.sealed':
    'ختمها {by} في {day}، {time}، على {count, plural, zero {لا قيود} one {قيد واحد} two {قيدين} few {# قيود} many {# قيدًا} other {# قيد}}.',
  'seal.changed':
    '{count, plural, zero {لم يُسجَّل شيء} one {سُجِّل قيد واحد} two {سُجِّل قيدان} few {سُجِّلت # قيود} many {سُجِّل # قيدًا} other {سُجِّل # قيد}} منذ ذلك: اختم مرة أخرى.',
  'document.here': 'الوثيقة محفوظة على هذا الجهاز ولم تُرسل بعد.',
  'document.sent': 'الوثيقة محفوظة على هذا الجهاز وأُرسلت.',
  'document.save': 'حفظ الوثيقة ملفًا',
  'document.check': 'التحقق منها على هذا الجهاز',
  'document.proven':
    'جرى التحقق هنا: تصح. {facts, plural, zero {لا قيود} one {قيد واحد} two {قيدان} few {# قيود} many {# قيدًا} other {# قيد}}، {signatures, plural, zero {لا تواقيع} one {توقيع واحد} two {توقيعان} few {# تواقيع} many {# توقيعًا} other {# توقيع}}، {hashes, plural, zero {لا بصمات} one {بصمة واحدة} two {بصمتان} few {# بصمات} many {# بصمة} other {# بصمة}}.',
  'document.not-proven': 'لا تصح: {what}',
  'close.blank': 'ما آل إليه المفتاح الخام',
  'close.blank.again': 'مفتاح خام آخر',
  'close.key': 'صار المفتاح',
  'close.no-key': 'لا شيء',
  'close.outcome': 'النتيجة',
  'close.outcome.used': 'استُعمل',
  'close.outcome.spoiled': 'تلف',
  'close.outcome.returned': 'عاد إلى الشاحنة',
}
