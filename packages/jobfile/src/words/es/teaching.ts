import type { SameCodes } from '../catalogues.ts'
import type { teachingWords as english } from '../en/teaching.ts'

/** The rehearsal: what can go otherwise, the way back, why the order is as it is, what must be settled first. */
export const teachingWords: SameCodes<typeof english> = {
  'cause.supply-lost': 'Se perdió la alimentación',
  'cause.link-lost': 'Se perdió la conexión',
  'cause.time-out': 'Se agotó el tiempo',
  'cause.closed-early': 'La sesión se cerró antes de tiempo',
  'cause.wrong-code': 'Se introdujo un código erróneo',
  'cause.wrong-key': 'Se presentó una llave de otro coche',
  'cause.repeated-key': 'Se presentó otra vez la misma llave',
  'cause.key-refused': 'Se rechazó una llave',
  'cause.key-forgotten': 'Una llave al final no está aquí',
  'cause.flat-cell': 'Una llave tiene la pila agotada',

  'recovery.start-with': 'Arrancar el coche con la llave {key}',
  'recovery.emergency-start-with':
    'Arrancar con la llave {key} en la posición de arranque de emergencia, su pila está agotada',
  'recovery.wait': 'Esperar',
  'recovery.wait-ignition-on': 'Esperar con el contacto dado',
  'recovery.change-cell': 'Poner una pila nueva en la llave {key}',
  'recovery.fetch': 'Traer la llave {key}',
  'recovery.enter-code': 'Introducir el código otra vez',
  'recovery.open': 'Abrir una sesión nueva',
  'recovery.show': 'Presentar la llave {key}',
  'recovery.close': 'Cerrar la sesión',
  'recovery.restore': 'Restaurar la copia de seguridad',
  'recovery-way.use-key': 'Una llave de aquí arranca el coche',
  'recovery-way.reopen': 'Abrir una sesión nueva',
  'recovery-way.fetch': 'Traer una llave',
  'recovery-way.restore': 'Restaurar la copia de seguridad',
  'recovery-way.none': 'No hay vuelta atrás con lo que hay aquí',

  'order-reason.other-strands-more': 'El orden {other} deja el coche sin arranque en más puntos: {at}.',
  'order-reason.other-strands-longer':
    'El orden {other} deja el coche sin arranque durante más tiempo: {at}.',
  'order-reason.other-loses-more': 'El orden {other} arriesga más llaves que ahora arrancan el coche: {at}.',
  'order-reason.other-spoils-more': 'El orden {other} puede dejar inservibles más llaves nuevas: {at}.',
  'order-reason.other-shows-starting-keys-later':
    'El orden {other} no cuesta más, pero presenta más tarde una llave que arranca el coche.',
  'order-reason.other-leaves-given-order':
    'El orden {other} es igual de bueno; se mantuvo el que estaba dado.',
  'order-reason.only-order': 'Solo hay un orden.',

  'guard.opens': 'La sesión se abre con lo que hay aquí',
  'guard.code': 'El código está a mano',
  'guard.backup-proven': 'La copia de seguridad está probada',
  'guard.consent': 'El cliente está conforme con que las llaves ausentes puedan dejar de funcionar',
  'guard.supply': 'La alimentación está por encima de su umbral',
  'guard.all-keys-here': 'Están aquí todas las llaves del coche',
  'guard.idle-time': 'Cada paso es más rápido que la espera de la sesión',
  'guard-meet.opens': 'Traer lo que la abre: otra llave aceptada o un equipo que pueda.',
  'guard-meet.code': 'Conseguir el código por una vía legal antes de abrir. Aquí no se escribe nunca.',
  'guard-meet.backup-proven': 'Leer los datos dos veces y comparar, en el capítulo Copia de seguridad.',
  'guard-meet.consent': 'Nombrar las llaves ausentes y hacer firmar al cliente, abajo.',
  'guard-meet.supply': 'Conectar una fuente de apoyo, fijar el umbral y anotar una lectura.',
  'guard-meet.all-keys-here': 'Pedir todas las llaves; lo que quede fuera puede dejar de funcionar.',
  'guard-meet.idle-time': 'Averiguar cuánto espera la sesión y dejar las llaves preparadas.',
  'guard-state.met': 'resuelto',
  'guard-state.not-met': 'sin resolver',
  'guard-state.not-said': 'no se sabe',

  'archetype.replace-all-at-close': 'Reescribe la lista, guarda al final',
  'archetype.replace-all-each-key': 'Reescribe la lista con la primera llave',
  'archetype.replace-all-erased-at-open': 'Vacía la lista al abrirse',
  'archetype.replace-all-list-lost': 'Reescribe al final; una interrupción pierde la lista',
  'archetype.append': 'Añade llaves hasta llenar la lista',
  'archetype.append-drop-oldest': 'Añade llaves; una lista llena da de baja la más antigua',
  'archetype.append-same-key-twice': 'Añade entradas; una llave puede ocupar dos puestos',
  'archetype.self-add-two-keys': 'Dos llaves que funcionan admiten otra más',
  'archetype.code-gated-hour': 'La abre un código; los intentos erróneos cuestan una hora',
  'archetype.code-gated-ignition-on':
    'La abre un código; los intentos erróneos cuestan 20 minutos de contacto',
  'archetype.timed-wait': 'Contacto dado y esperar, sin equipo',
  'archetype.all-keys-lost': 'Ya no funciona ninguna llave',
  'archetype.numbered-slots': 'Cada llave tiene un puesto numerado',
  'archetype.declared-count': 'Se le dice cuántas llaves habrá',
  'archetype.pre-coded-key': 'Admite llaves suministradas listas para este coche',
  'archetype.nothing-known': 'No se sabe nada',
  'archetype-absent.replace-all-at-close':
    'Las llaves que no están aquí dejan de funcionar, pero solo cuando se cierra la sesión.',
  'archetype-absent.replace-all-each-key':
    'Las llaves que no están aquí dejan de funcionar en cuanto se admite la primera llave.',
  'archetype-absent.replace-all-erased-at-open':
    'Todas las llaves dejan de funcionar en cuanto se abre la sesión; solo las admitidas vuelven a arrancar.',
  'archetype-absent.replace-all-list-lost':
    'Las llaves que no están aquí dejan de funcionar; si la sesión se interrumpe, todas.',
  'archetype-absent.append': 'Las llaves que no están aquí siguen funcionando.',
  'archetype-absent.append-drop-oldest':
    'Las llaves que no están aquí siguen funcionando hasta que se llena la lista; entonces la más antigua deja de hacerlo sin avisar.',
  'archetype-absent.append-same-key-twice':
    'Las llaves que no están aquí siguen funcionando; los puestos se llenan antes de que haya tantas llaves.',
  'archetype-absent.self-add-two-keys': 'Las llaves que no están aquí siguen funcionando.',
  'archetype-absent.code-gated-hour':
    'Las llaves que no están aquí dejan de funcionar cuando se cierra la sesión.',
  'archetype-absent.code-gated-ignition-on':
    'Las llaves que no están aquí dejan de funcionar cuando se cierra la sesión.',
  'archetype-absent.timed-wait':
    'Las llaves que no están aquí dejan de funcionar en cuanto se admite la primera llave.',
  'archetype-absent.all-keys-lost': 'Las llaves que aparezcan después no arrancarán el coche.',
  'archetype-absent.numbered-slots':
    'Las llaves que no están aquí siguen funcionando, salvo que se ponga una llave nueva en su puesto.',
  'archetype-absent.declared-count':
    'Las llaves que no están aquí dejan de funcionar cuando se cierra la sesión.',
  'archetype-absent.pre-coded-key': 'Las llaves que no están aquí siguen funcionando.',
  'archetype-absent.nothing-known': 'Contar con que las llaves que no están aquí dejan de funcionar.',

  'disturbed.list-rewritten': 'la lista de llaves aceptadas estuvo abierta',
  'disturbed.remote-list-rewritten': 'la lista de mandos estuvo abierta',
  'disturbed.supply-interrupted': 'la alimentación se interrumpió o se apoyó',
  'disturbed.cell-changed': 'se cambió su pila',
  'disturbed.case-opened': 'su carcasa estuvo abierta',
  'disturbed.blade-cut': 'se cortó su espadín',
  'disturbed.lock-changed': 'se cambió una cerradura',
  'disturbed.key-new': 'es nueva',
}
