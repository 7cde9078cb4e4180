import type { SameCodes } from '@shearline/jobfile'
import type { tagWords as english } from '../en/tags.ts'

/** بطاقات تميّز المفاتيح: طباعتها وإيجاد مفتاح ببطاقته. */
export const tagWords: SameCodes<typeof english> = {
  'tags.find': 'إيجاد مفتاح ببطاقته',
  'tags.find.how': 'ضع بطاقة المفتاح داخل الإطار.',
  'tags.find.other': 'هذا رمز، لكنه ليس بطاقة مفتاح. البحث مستمر.',
  'tags.find.code': 'أو اكتب الخانات الأربع على البطاقة',
  'tags.find.code.hint': 'تقع تحت الرمز المربع.',
  'tags.find.do': 'إيجاده',
  'tags.find.unknown': 'لا مفتاح في هذه المهمة رمزه {code}. اقرأه مرة أخرى؛ لا تُطبع 0 و1 وI وL وO وU أبدًا.',
  'tags.chosen': 'الذي في يدك',
  'tags.found': 'في يدك: {key}',
  'tags.found.is':
    '{origin, select, new {{taught, select, true {مفتاح جديد، عُرِّف في هذه المهمة.} other {مفتاح جديد، لم يُعرَّف بعد.}}} other {{taught, select, true {مفتاح للعميل، عُرِّف في هذه المهمة.} other {مفتاح للعميل.}}}}',
  'tags.found.go': 'عرض بطاقته',
  'tags.elsewhere': 'ليس مفتاحًا من هذه الطاولة',
  'tags.elsewhere.job': 'هذا هو المفتاح {key} من مهمة أخرى. أبعده عن مفاتيح هذه المهمة.',
  'tags.elsewhere.gone': 'تقول البطاقة إنه المفتاح {key} من هذه المهمة، ولا مفتاح كهذا في السجل الآن.',
  'tags.elsewhere.open': 'فتح تلك المهمة',
  'tags.print': 'طباعة البطاقات',
  'tags.print.what':
    'بطاقة لكل مفتاح: حرفه ولونه، ورقم المهمة، ورمز تجده به الكاميرا. لا سيارة ولا اسم ولا عنوان عليها: البطاقة الضائعة لا تخبر أحدًا أين يصلح المفتاح.',
  'tags.print.keys': 'لأي المفاتيح؟',
  'tags.print.used': 'مواضع مستعملة من الورقة',
  'tags.print.used.hint': 'في الورقة {count} موضعًا، تُعد صفًا بعد صف.',
  'tags.print.make': 'صنع الورقة',
  'tags.print.busy': 'تُصنع الورقة …',
  'tags.print.ready': 'الورقة جاهزة: احفظها واطبعها بالحجم الكامل.',
  'tags.print.save': 'حفظ الورقة',
  'tags.sheet.title': 'بطاقات مفاتيح، المهمة {job}',
}
