import type { SameCodes } from '@shearline/jobfile'
import type { manyScansWords as english } from '../en/many-scans.ts'

/** فحوص كثيرة في صورة واحدة، وتقرير شورك إلى المنصة. */
export const manyScansWords: SameCodes<typeof english> = {
  'faults.columns': 'الأعمدة',
  'faults.columns.moments':
    '{count, plural, zero {لا لحظات} one {لحظة واحدة} two {لحظتان} few {# لحظات} many {# لحظة} other {# لحظة}}',
  'faults.columns.scans':
    '{count, plural, zero {لا فحص} one {الفحص} two {كل من الفحصين} few {كل من # فحوص} many {كل من # فحصًا} other {كل من # فحص}}',
  'faults.scan-head': '{phase}، {day} {time}',
  'faults.filter.changed': 'ما تغيّر ({count, number})',
  'report.was-kept': 'ما حُفظ',

  'title.shared': 'تقرير مُشارَك · Shearline',
  'shared.title': 'شورك تقرير',
  'shared.title.none': 'لا تقرير مُشارَك',
  'shared.which': 'لأي مهمة هو؟ لا يُحفظ شيء قبل أن تنظر فيما فُهم منه.',
  'shared.none': 'لا شيء ينتظر هنا. التقرير الذي يشاركه تطبيق آخر ينتظر هنا حتى تقول لأي مهمة هو.',
  'shared.text': 'نص مُشارَك',
  'shared.discard': 'التخلص من {name}',
  'shared.no-job': 'لا مهمة بعد. افتح واحدة، ثم شارك مرة أخرى أو عد إلى هذه الصفحة.',
  'shared.waiting': 'شورك تقرير إلى هذه المهمة: {name}.',
  'shared.read': 'قراءته الآن',
  'shared.failed':
    'تعذر أخذ أي شيء: ما شورك فارغ، أو أكبر من {most}، أو لا يتسع له هذا الجهاز. شارك ملفًا أصغر، أو افتحه في مهمته.',
}
