import type { SameCodes } from '@shearline/jobfile'
import type { sheetWords as english } from '../en/sheets.ts'

/** أوراق بجانب وثيقة التسليم، وسطر السجل. */
export const sheetWords: SameCodes<typeof english> = {
  'sheets.title': 'الأوراق',
  'sheets.show': 'موافقات وإشعارات وبيانات للتسليم',
  'sheets.looking': 'النظر فيما هو مسجل ...',
  'sheets.about': 'تُصنع كل منها على هذا الجهاز مما هو مسجل، بلا اتصال.',
  'sheets.language': 'لغة من يقرؤها',
  'sheets.make': 'صنعها',
  'sheets.make-named': 'صنع: {sheet}',
  'sheets.busy': 'تُصنع الورقة ...',
  'sheets.others': 'أوراق ليس لها شيء في السجل',
  'sheets.open': 'فتح',
  'sheets.open-named': 'فتح: {sheet}',
  'sheets.save': 'حفظ',
  'sheets.save-named': 'حفظ: {sheet}',
  'sheets.message': 'رسالةً',
  'sheets.copy': 'نسخ الرسالة',
  'sheets.copied': 'نُسخت. ضعها في رسالة إلى العميل.',
  'sheets.not-copied': 'لا يسمح هذا المتصفح بنسخها. حدّد الكلمات وانسخها باليد.',
  'sheets.register': 'سطر لسجل',
  'sheets.register-about':
    'ما يمكن أن يحويه سجل أعمال المفاتيح عن هذه المهمة. الحقول التي يريدها النظام حزمة يختارها المكتب.',
  'sheets.register-csv': 'جدولًا (CSV)',
  'sheets.register-json': 'بياناتٍ (JSON)',
}
