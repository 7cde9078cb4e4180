import type { SameCodes } from '@shearline/jobfile'
import type { verifyPageWords as english } from '../en/verify-page.ts'

/** الصفحة التي يثبت بها العميل وثيقة. */
export const verifyPageWords: SameCodes<typeof english> = {
  'verify-page.save': 'حفظ الصفحة التي تثبت الوثائق',
  'verify-page.about': 'ملف للعميل أو شركة التأمين: يثبت الوثيقة في أي متصفح، بلا اتصال وبلا Shearline.',
}
