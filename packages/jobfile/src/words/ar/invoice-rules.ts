import type { SameCodes } from '../catalogues.ts'
import type { invoiceRuleWords as english } from '../en/invoice-rules.ts'

/** Arabic: What an invoice breaks, and where. */
export const invoiceRuleWords: SameCodes<typeof english> = {
  'invoice-rule.currency-not-hundredths': 'لا تُحسب {currency} بأجزاء من مئة كما يطلب المعيار.',
  'invoice-rule.due-not-said': 'هناك مبلغ يُدفع، ولا يقول يوم ولا شروط متى.',
  'invoice-rule.account-missing': 'يُدفع المبلغ بتحويل، ولم يُذكر حساب.',
  'invoice-rule.outside-beside-others': 'لا تقف بنود خارج نطاق الضريبة بجانب غيرها في فاتورة واحدة.',
  'invoice-rule.seller-unknown': 'ليس للبائع رقم ضريبة قيمة مضافة ولا رقم في سجل.',
  'invoice-rule.vat-country-unknown': 'ليس {country} رمز بلد.',
  'invoice-rule.country-unknown': 'ليس {country} رمز بلد (ISO 3166-1).',
  'invoice-rule.standard-rate-zero': 'النسبة العادية نسبة أعلى من الصفر.',
  'invoice-rule.kind-without-rate': 'ليس لهذا النوع من الضريبة نسبة.',
  'invoice-rule.outside-with-vat': 'خارج نطاق الضريبة لا يُذكر رقم ضريبة قيمة مضافة.',
  'invoice-rule.seller-without-tax-number': 'ليس للبائع رقم ضريبة قيمة مضافة ولا رقم ضريبي.',
  'invoice-rule.buyer-vat-missing': 'حين تكون الضريبة على المشتري يجب ذكر رقم ضريبته للقيمة المضافة.',
  'invoice-rule.reason-missing': 'لم يُذكر لماذا لا تُحسب ضريبة.',
  'invoice-do.complete': 'أكمِله وحاول من جديد.',
  'invoice-do.currency': 'أصدر الفاتورة بعملة ذات منزلتين عشريتين، أو اكتب هذه الفاتورة بطريقة أخرى.',
  'invoice-do.seller': 'اذكر رقم ضريبة القيمة المضافة، أو الرقم الذي سُجّلت به المنشأة.',
  'invoice-do.outside': 'احذف أرقام ضريبة القيمة المضافة، أو اختر نوعًا آخر من الضريبة.',
  'invoice-part.seller': 'البائع',
  'invoice-part.buyer': 'المشتري',
  'invoice-part.due': 'يوم الدفع',
  'invoice-part.account': 'الحساب',
  'invoice-part.currency': 'العملة',
  'invoice-part.lines': 'البنود',
  'invoice-part.reasons': 'سبب عدم الضريبة',
  'invoice-part.line': 'البند {number}',
}
