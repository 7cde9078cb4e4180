import type { SameCodes } from '@shearline/jobfile'
import type { teachingWords as english } from '../en/teaching.ts'

/** Power, backup and blank. */
export const teachingWords: SameCodes<typeof english> = {
  'plan.power.set': '{volts} ({source}), {battery}.',
  'plan.floor': 'Umbral',
  'plan.floor.hint': 'Por debajo, la sesión está en peligro. El valor del fabricante está por delante.',
  'plan.floor.source': 'De dónde sale el valor',
  'plan.floor.usual': 'práctica común',
  'plan.battery': 'Batería del coche',

  'backup.title': 'Copia de seguridad de los datos del inmovilizador',
  'backup.again': 'Leer otra vez',
  'backup.way': '¿Hay copia de seguridad?',
  'backup.way.seal': 'Leer dos veces y sellar',
  'backup.way.reads': 'Leer dos veces, solo los hash',
  'backup.way.none': 'Ninguna',
  'backup.stays': 'Los archivos se quedan donde están. Solo se registran sus hash.',
  'backup.what': 'Qué se leyó',
  'backup.what.hint': 'Unidad y tipo de memoria, en palabras propias.',
  'backup.first': 'Primera lectura (SHA-256)',
  'backup.second': 'Segunda lectura (SHA-256)',
  'backup.same': 'Las dos lecturas son iguales.',
  'backup.differ': 'Las dos lecturas difieren. Leer otra vez hasta que dos coincidan.',
  'backup.because': 'Por qué no hay ninguna',
  'hash.pick': 'Calcular el hash de un archivo de este dispositivo',
  'hash.pick-named': '{label}: calcular el hash de un archivo de este dispositivo',
  'hash.working': 'Calculando el hash de {name} ...',
  'hash.done': 'Hash de {name} calculado; el archivo se queda donde está.',
  'hash.form': '64 signos, 0-9 y a-f',

  'blank.title': 'Llave en bruto para la llave nueva',
  'blank.again': 'Elegir otra llave en bruto',
  'blank.item': 'Llave en bruto',
  'blank.item.hint': 'Número de almacén propio o descripción.',
  'blank.carrier': 'Frecuencia portadora',
  'blank.transponder': 'Transpondedor',
  'blank.transponder.hint': 'Familia, según lo impreso.',
  'blank.profile': 'Perfil del espadín',
  'blank.fits': '¿Comparada con el coche y su llave actual?',
  'blank.fits.hint':
    'En muchos coches, una llave en bruto equivocada queda gastada para siempre: comparar antes de darla de alta.',
  'blank.fits.yes': 'Comparada, sirve',
  'blank.fits.no': 'Comparada, no sirve',
  'blank.fits.open': 'Aún sin comparar',
}
