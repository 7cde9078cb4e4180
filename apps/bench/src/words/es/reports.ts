import type { SameCodes } from '@shearline/jobfile'
import type { reportWords as english } from '../en/reports.ts'

/** Reports kept beside what was understood, and what was confirmed before clearing. */
export const reportWords: SameCodes<typeof english> = {
  'report.kept-beside':
    'El informe se guarda junto a esta lista como texto. Antes se tachan en él los códigos de apertura, los números de teléfono y las direcciones de correo.',
  'report.kept.title': 'Informes en el registro',
  'report.kept.one': 'Escaneo {phase}, {day} {time}: {name}',
  'report.kept.pasted': 'texto pegado',
  'report.kept.loading': 'Trayendo el informe.',
  'report.kept.gone':
    'El informe no está aquí: se borró al cumplirse su plazo, o este dispositivo no tiene conexión.',
  'clear.airbag':
    'Los códigos de airbag anteriores a la intervención se quedan, y también todo lo demás de su unidad. Nadie los borra para que se apague un testigo.',
  'fact.clear-acknowledged.scan-saved': 'Confirmado: antes, cada código está en el registro.',
  'fact.clear-acknowledged.airbag':
    'Confirmado: los códigos de airbag anteriores a la intervención se quedan.',
  'fact.clear-acknowledged.emissions': 'Confirmado: las pruebas de emisiones empiezan de nuevo.',
  'fact.clear-acknowledged.permanent':
    'Confirmado: los códigos permanentes se quedan hasta que el coche los borre.',
}
