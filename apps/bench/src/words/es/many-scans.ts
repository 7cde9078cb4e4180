import type { SameCodes } from '@shearline/jobfile'
import type { manyScansWords as english } from '../en/many-scans.ts'

/** Many scans in one picture, and a report that was shared to the bench. */
export const manyScansWords: SameCodes<typeof english> = {
  'faults.columns': 'Columnas',
  'faults.columns.moments': '{count, plural, one {# momento} other {# momentos}}',
  'faults.columns.scans': '{count, plural, one {el escaneo} other {cada uno de # escaneos}}',
  'faults.scan-head': '{phase}, {day} {time}',
  'faults.filter.changed': 'Cambiadas ({count, number})',
  'report.was-kept': 'Lo que se guardó',

  'title.shared': 'Informe compartido · Shearline',
  'shared.title': 'Se compartió un informe',
  'shared.title.none': 'Ningún informe compartido',
  'shared.which': '¿Para qué trabajo es? No se guarda nada antes de haber mirado lo que se entendió.',
  'shared.none':
    'Aquí no hay nada esperando. Un informe que otra aplicación comparte con el banco espera aquí hasta que diga para qué trabajo es.',
  'shared.text': 'texto compartido',
  'shared.discard': 'Descartar {name}',
  'shared.no-job':
    'Aún no hay ningún trabajo. Abrir uno y después compartir otra vez o volver a esta página.',
  'shared.waiting': 'Se compartió un informe con este trabajo: {name}.',
  'shared.read': 'Leerlo ahora',
  'shared.failed':
    'No se pudo tomar nada: lo compartido está vacío, pasa de {most}, o en este dispositivo no hay sitio. Comparta un archivo más pequeño o ábralo en su trabajo.',
}
