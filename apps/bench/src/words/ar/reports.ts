import type { SameCodes } from '@shearline/jobfile'
import type { reportWords as english } from '../en/reports.ts'

/** تقارير تُحفظ بجانب ما فُهم منها، وما أُكد قبل المسح. */
export const reportWords: SameCodes<typeof english> = {
  'report.kept-beside':
    'يُحفظ التقرير نصًا بجانب هذه القائمة. تُطمس أولًا رموز الفتح وأرقام الهاتف وعناوين البريد التي فيه.',
  'report.kept.title': 'تقارير في السجل',
  'report.kept.one': 'فحص {phase}، {day} {time}: {name}',
  'report.kept.pasted': 'نص ملصق',
  'report.kept.loading': 'يُجلب التقرير.',
  'report.kept.gone': 'التقرير ليس هنا: حُذف حين انتهت مدته، أو لا اتصال لهذا الجهاز.',
  'clear.airbag':
    'تبقى رموز الوسائد الهوائية التي كانت قبل العمل، وكذلك كل ما سواها في وحدتها. لا يمسحها أحد كي ينطفئ مصباح.',
  'fact.clear-acknowledged.scan-saved': 'أُكد: كل رمز مسجل أولًا.',
  'fact.clear-acknowledged.airbag': 'أُكد: تبقى رموز الوسائد الهوائية التي كانت قبل العمل.',
  'fact.clear-acknowledged.emissions': 'أُكد: تبدأ جاهزية الانبعاثات من جديد.',
  'fact.clear-acknowledged.permanent': 'أُكد: تبقى الرموز الدائمة حتى تمسحها السيارة.',
}
