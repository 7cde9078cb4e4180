import type { SameCodes } from '@shearline/jobfile'
import type { verifyPageWords as english } from '../en/verify-page.ts'

/** French: The page a customer can prove a document with. */
export const verifyPageWords: SameCodes<typeof english> = {
  'verify-page.save': 'Enregistrer la page qui prouve les documents',
  'verify-page.about':
    'Un fichier pour la clientèle ou une assurance : il prouve le document dans n’importe quel navigateur, sans connexion et sans Shearline.',
}
