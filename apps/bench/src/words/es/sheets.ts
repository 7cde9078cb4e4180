import type { SameCodes } from '@shearline/jobfile'
import type { sheetWords as english } from '../en/sheets.ts'

/** Sheets beside the handover document, and the row of a register. */
export const sheetWords: SameCodes<typeof english> = {
  'sheets.title': 'Hojas',
  'sheets.show': 'Consentimientos, notas y declaraciones para entregar',
  'sheets.looking': 'Mirando qué consta en el registro ...',
  'sheets.about': 'Cada una se crea en este dispositivo con lo que consta en el registro, sin conexión.',
  'sheets.language': 'Idioma de quien la lee',
  'sheets.make': 'Crear',
  'sheets.make-named': 'Crear: {sheet}',
  'sheets.busy': 'Creando la hoja ...',
  'sheets.others': 'Hojas para las que el registro no contiene nada',
  'sheets.open': 'Abrir',
  'sheets.open-named': 'Abrir: {sheet}',
  'sheets.save': 'Guardar',
  'sheets.save-named': 'Guardar: {sheet}',
  'sheets.message': 'Como mensaje',
  'sheets.copy': 'Copiar el mensaje',
  'sheets.copied': 'Copiado. Ponerlo en un mensaje al cliente.',
  'sheets.not-copied': 'Este navegador no deja copiarlo. Marcar las palabras y copiarlas a mano.',
  'sheets.register': 'Fila para un libro de registro',
  'sheets.register-about':
    'Lo que un libro de registro de trabajos con llaves puede contener de este trabajo. Qué campos pide cada sistema lo dice un paquete que elige la oficina.',
  'sheets.register-csv': 'Como tabla (CSV)',
  'sheets.register-json': 'Como datos (JSON)',
}
