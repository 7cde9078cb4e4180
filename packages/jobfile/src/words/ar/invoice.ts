import type { SameCodes } from '../catalogues.ts'
import type { invoiceWords as english } from '../en/invoice.ts'

/** الفاتورة في الوثيقة. */
export const invoiceWords: SameCodes<typeof english> = {
  'doc.invoice': 'الفاتورة {number}',
  'doc.invoice-issued': 'صدرت',
  'doc.invoice-delivered': 'أُنجز العمل',
  'doc.invoice-seller': 'من',
  'doc.invoice-buyer': 'إلى',
  'doc.invoice-by': 'تُدفع حتى',
  'doc.invoice-terms': 'الشروط',
  'doc.invoice-account': 'الحساب',
  'doc.invoice-tax': 'الضريبة',
  'doc.invoice-net': 'المبلغ (البنود بلا ضريبة)',
  'doc.invoice-sum': 'المجموع بلا ضريبة',
  'doc.invoice-tax-on': '{tax} على {basis}',
  'doc.invoice-gross': 'المجموع مع الضريبة',
  'doc.invoice-rounding': 'التقريب',
  'doc.invoice-paid': 'دُفع سابقًا',
  'doc.invoice-due': 'المستحق',
  'doc.invoice-vat': 'رقم ضريبة القيمة المضافة {id}',
  'doc.invoice-tax-number': 'الرقم الضريبي {id}',
  'doc.invoice-register': 'رقم السجل {id}',
  'doc.invoice-category.S': 'ضريبة القيمة المضافة {percent} %',
  'doc.invoice-category.Z': 'ضريبة القيمة المضافة 0 %',
  'doc.invoice-category.E': 'معفى من ضريبة القيمة المضافة',
  'doc.invoice-category.AE': 'العميل مدين بضريبة القيمة المضافة',
  'doc.invoice-category.O': 'خارج نطاق ضريبة القيمة المضافة',
  'doc.invoice-reason': 'لماذا لا تُحتسب ضريبة: {reason}',
  'doc.invoice-attached':
    'الفاتورة نفسها مرفقة بهذا الملف بيانات للبرامج: invoice.xml، وفق EN 16931 بصيغة UN/CEFACT Cross Industry Invoice.',
}
