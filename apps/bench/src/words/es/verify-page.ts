import type { SameCodes } from '@shearline/jobfile'
import type { verifyPageWords as english } from '../en/verify-page.ts'

/** The page a customer can prove a document with. */
export const verifyPageWords: SameCodes<typeof english> = {
  'verify-page.save': 'Guardar la página que prueba documentos',
  'verify-page.about':
    'Un archivo para el cliente o una aseguradora: prueba el documento en cualquier navegador, sin conexión y sin Shearline.',
}
