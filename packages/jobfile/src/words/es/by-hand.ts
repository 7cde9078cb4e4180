import type { SameCodes } from '../catalogues.ts'
import type { byHandWords as english } from '../en/by-hand.ts'

/** How a stranger checks a document without us. */
export const byHandWords: SameCodes<typeof english> = {
  'doc.by-hand': 'Solo con openssl',
  'doc.by-hand-how':
    'Guarde este archivo como document.pdf en una carpeta vacía, abra en ella una consola (en Linux, o en macOS con las utilidades básicas de GNU) e introduzca estas líneas. Necesitan openssl 3 y ninguna red.',
  'doc.by-hand-commands': 'Órdenes',
  'doc.by-hand-answer':
    'Solo es válido cuando se imprime «It holds» (es válido); compare entonces la huella que aparece debajo con la que recibió de la empresa. Cualquier otra cosa significa que el archivo se cambió o no está completo.',
  'doc.by-hand-limits':
    'Esto prueba el sello y todos los bytes del archivo. Que las páginas digan lo que dice el registro lo muestran «shearline verify» y la página de verificación, un archivo HTML que la empresa puede darle.',
}
