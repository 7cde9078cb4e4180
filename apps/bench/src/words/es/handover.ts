import type { SameCodes } from '@shearline/jobfile'
import type { handoverWords as english } from '../en/handover.ts'

/** Cautions, price, warranty, retention, seal and close. */
export const handoverWords: SameCodes<typeof english> = {
  'handover.open': 'Abrir el documento',
  'cautions.title': 'Precauciones para este coche',
  'cautions.read': 'leída',
  'cautions.acknowledge': 'Leída',
  'cautions.acknowledge-named': 'Leída: {caution}',
  'price.title': 'Precio',
  'price.again': 'Acordar otro precio',
  'price.currency': 'Moneda',
  'price.line': 'Línea {number}: concepto',
  'price.amount': 'Línea {number}: importe',
  'price.usual': 'Llave, cortada y dada de alta',
  'price.another': 'Otra línea',
  'price.sum': 'Suma',
  'warranty.title': 'Garantía',
  'warranty.none': 'No consta ninguna en el registro.',
  'warranty.add': 'Dar una garantía',
  'warranty.again': 'Dar otra garantía',
  'warranty.given': '{months, plural, one {# mes} other {# meses}}. No cubierto: {excludes}.',
  'warranty.months': 'Meses',
  'warranty.excludes': 'No cubierto',
  'warranty.usual': 'pila de la llave|agua|caídas',
  'retention.title': 'Qué se borra y cuándo',
  'retention.again': 'Fijar otros plazos',
  'retention.law':
    'Estos plazos vienen de las reglas nombradas aquí. Consultar la ley local y cambiar lo que diga de otro modo.',
  'retention.class': '{name}: días de conservación',
  'retention.days': '{days, plural, one {# día} other {# días}}',
  'retention.changed': 'cambiado para este trabajo',
  'seal.title': 'Documento',
  'seal.open': '{count, plural, one {Queda una cosa pendiente} other {Quedan # cosas pendientes}}:',
  'seal.anyway': 'Sellar de todos modos. El documento dirá entonces qué quedaba pendiente.',
  'seal.unsent':
    '{count, plural, one {Hay # anotación guardada aquí y aún sin enviar} other {Hay # anotaciones guardadas aquí y aún sin enviar}}. Para sellar no hace falta conexión: el documento se crea en este dispositivo y se envía después.',
  'seal.busy': 'Creando y comprobando el documento ...',
  'seal.not-in-line': 'Entretanto se registró algo que sigue pendiente. Mirar la lista y sellar otra vez.',
  'seal.not-proven':
    'El documento no se pudo probar después de crearlo, así que no se selló nada. Intentarlo otra vez.',
  'seal.go': 'Sellar el documento',
  'seal.again': 'Sellar otra vez',
  'seal.sealed':
    'Sellado {day}, {time}, por {by}, sobre {count, plural, one {# anotación} other {# anotaciones}}.',
  'seal.changed':
    '{count, plural, one {Se registró # anotación} other {Se registraron # anotaciones}} desde entonces: sellar otra vez.',
  'document.here': 'El documento está guardado en este dispositivo y aún no se ha enviado.',
  'document.sent': 'El documento está guardado en este dispositivo y enviado.',
  'document.save': 'Guardar el documento como archivo',
  'document.check': 'Comprobarlo en este dispositivo',
  'document.proven':
    'Comprobado aquí: es válido. {facts, plural, one {# anotación} other {# anotaciones}}, {signatures, plural, one {# firma} other {# firmas}}, {hashes, plural, one {# hash} other {# hashes}}.',
  'document.not-proven': 'No es válido: {what}',
  'close.blank': 'Qué fue de la llave en bruto',
  'close.blank.again': 'Otra llave en bruto',
  'close.key': 'Pasó a ser la llave',
  'close.no-key': 'ninguna',
  'close.outcome': 'Resultado',
  'close.outcome.used': 'usada',
  'close.outcome.spoiled': 'inservible',
  'close.outcome.returned': 'de vuelta a la furgoneta',
}
