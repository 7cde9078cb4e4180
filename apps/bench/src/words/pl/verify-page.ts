import type { SameCodes } from '@shearline/jobfile'
import type { verifyPageWords as english } from '../en/verify-page.ts'

/** The page a customer can prove a document with. */
export const verifyPageWords: SameCodes<typeof english> = {
  'verify-page.save': 'Zapisać stronę, która dowodzi dokumentów',
  'verify-page.about':
    'Plik dla klienta lub ubezpieczyciela: dowodzi dokumentu w dowolnej przeglądarce, bez połączenia i bez Shearline.',
}
