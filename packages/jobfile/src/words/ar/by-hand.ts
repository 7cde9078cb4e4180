import type { SameCodes } from '../catalogues.ts'
import type { byHandWords as english } from '../en/by-hand.ts'

/** كيف يتحقق غريب من الوثيقة من دوننا. */
export const byHandWords: SameCodes<typeof english> = {
  'doc.by-hand': 'بواسطة openssl وحده',
  'doc.by-hand-how':
    'احفظ هذا الملف باسم document.pdf في مجلد فارغ، وافتح سطر أوامر فيه (على Linux، أو على macOS مع أدوات GNU الأساسية) وأدخل هذه الأسطر. تحتاج إلى openssl 3 ولا تحتاج إلى شبكة.',
  'doc.by-hand-commands': 'الأوامر',
  'doc.by-hand-answer':
    'لا تصح إلا إذا طُبعت العبارة «It holds»؛ قارن بعدها البصمة التي تحتها بالبصمة التي حصلت عليها من المنشأة. كل ما عدا ذلك يعني أن الملف غُيّر أو أنه غير كامل.',
  'doc.by-hand-limits':
    'يثبت هذا الختم وكل بايت في الملف. أما أن الصفحات تقول ما يقوله السجل فيبيّنه «shearline verify» وصفحة التحقق، وهي ملف HTML تستطيع المنشأة أن تعطيك إياه.',
}
