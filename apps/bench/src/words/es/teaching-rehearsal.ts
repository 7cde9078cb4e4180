import type { SameCodes } from '@shearline/jobfile'
import type { teachingRehearsalWords as english } from '../en/teaching-rehearsal.ts'

/** The rehearsal: order, guards, the line of steps, what a stop leaves and the way back. */
export const teachingRehearsalWords: SameCodes<typeof english> = {
  'rehearsal.title': 'Ensayo: paso a paso, y qué vale si se detiene',
  'rehearsal.again': 'Leerlo otra vez',
  'rehearsal.read': 'Leído en el orden {order}. {wayBack}',
  'rehearsal.no-keys':
    'Aún no hay ninguna llave que dar de alta: etiquetar primero las llaves del banco y la nueva.',
  'rehearsal.label-new': 'Etiquetar la llave nueva',
  'rehearsal.missing':
    '{count, plural, one {La llave {keys} no está} other {Las llaves {keys} no están}} en él: leerlo otra vez.',
  'rehearsal.no-new':
    'Aún no hay ninguna llave nueva etiquetada. Etiquetarla antes arriba, para que también se ensaye.',
  'rehearsal.working': 'Recorriendo todas las formas en que puede detenerse ...',
  'rehearsal.too-much-unknown':
    'No se sabe lo suficiente para responder. Indicar la clase de sesión, los puestos de la lista o lo que la abre.',
  'rehearsal.open': 'Sesión abierta',
  'rehearsal.opened': 'abierta',
  'rehearsal.closed': 'Sesión cerrada',
  'rehearsal.closed-short': 'cerrada',
  'rehearsal.cannot-open': 'Según esta regla, la sesión no se puede abrir con lo que hay aquí.',
  'rehearsal.better': 'Un orden más seguro: {order}.',
  'rehearsal.take-better': 'Tomarlo',
  'rehearsal.key': 'Llave {key}',
  'rehearsal.earlier': 'Antes',
  'rehearsal.length': 'Duración de la sesión: {time}.',
  'rehearsal.stranded':
    '{count, plural, =0 {Se detenga donde se detenga, una llave de aquí sigue arrancando el coche.} one {En # paso el coche puede quedarse sin ninguna llave que lo arranque.} other {En # pasos el coche puede quedarse sin ninguna llave que lo arranque.}}',
  'rehearsal.sure': 'Leer cada línea. La peor vuelta atrás de arriba es lo que se promete al cliente.',
  'rehearsal.record': 'Lo he leído',

  'order.title': 'Orden en que se presentan las llaves',
  'order.earlier': 'Presentar antes la llave {key}',
  'why.proven': 'Por qué este orden: todos los demás quedaron descartados',
  'why.best-found': 'Por qué este orden: el mejor que se encontró',
  'why.at-open': 'después de la apertura',
  'why.at-key': 'después de la llave {key}',

  'guards.title': 'Antes de abrirla',
  'guards.all': 'Antes de abrirla: todo está resuelto',
  'guards.open':
    '{count, plural, one {Antes de abrirla: # cosa por resolver} other {Antes de abrirla: # cosas por resolver}}',
  'guards.met': 'Resuelto: {guards}.',

  'line-of-steps': 'La sesión como línea de pasos',
  'mark.safe': 'como antes',
  'mark.loses': 'pierde {keys}',
  'mark.stranded': 'sin arranque',
  'end-mark.safe': 'todas arrancan',
  'end-mark.loses': 'algunas ya no',
  'end-mark.stranded': 'ninguna arranca',
  'stop-here.title': '{step}: si pasa algo ahora',
  'stop-here.goes-on': 'La sesión sigue; a su final:',
  'stop-here.spoiled': 'Inservibles: {keys}.',
  'cause.of-key': '{cause} ({key})',
  'list-or': ' / ',

  'way.going': 'Para poder irse con el coche:',
  'way.finished': 'Para terminar el trabajo:',
  'way.goes': 'El coche se puede conducir con {keys}.',
  'way.in': '{way}, {time}.',
  'way.not-proven': 'Puede haber un camino más corto.',
  'lasting.none': 'sin valor',
  'lasting.seconds': '{count, plural, one {{figure} segundo} other {{figure} segundos}}',
  'lasting.minutes': '{count, plural, one {{figure} minuto} other {{figure} minutos}}',
}
