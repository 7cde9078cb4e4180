import type { SameCodes } from '@shearline/jobfile'
import type { teachingGuideWords as english } from '../en/teaching-guide.ts'

/** The session guide, "it stopped", the way back, the tests after it, and the four numbers. */
export const teachingGuideWords: SameCodes<typeof english> = {
  'teach.open': 'Abrir la sesión',
  'teach.open.again': 'Abrir otra sesión',
  'teach.open.record': 'La sesión está abierta',
  'teach.is-closed': 'La sesión está cerrada.',
  'teach.is-stopped': 'La sesión no está abierta.',
  'teach.rehearsed':
    'Orden ensayado: {order}. Fuente de apoyo conectada; las llaves que no se están dando de alta, lejos del coche.',
  'teach.not-rehearsed':
    'No se ha leído el ensayo. Abrir la sesión solo si se sabe qué vale cuando se detiene.',
  'teach.key': 'Presentar la llave {key} al coche',
  'teach.key.record': 'La llave {key} está admitida',
  'teach.taught': 'La llave {key} está dada de alta',
  'teach.count': 'Recuento que muestra el coche',
  'teach.count.hint': 'Dejarlo vacío si no muestra ninguno.',
  'teach.not-all': 'Aún no están dadas de alta todas las llaves previstas.',
  'teach.close': 'Cerrar la sesión',
  'teach.close.early': 'Cerrarla antes de dar de alta todas las llaves',
  'teach.close.record': 'La sesión está cerrada',

  'guide.title': 'La sesión, paso a paso',
  'guide.count': 'Paso {step} de {of}',
  'guide.keys': '{count} de {of} llaves admitidas',
  'guide.other': '¿Esta llave no está a mano, o se rechaza?',
  'guide.first': 'Primero la llave {key}',
  'guide.say.open':
    'Decir: «Ahora abro la lista de llaves del coche. Por favor, no toque las puertas ni ninguna otra llave hasta que yo lo diga.»',
  'guide.say.show':
    'Decir: «Ahora la llave {key}. {left, plural, =0 {Es la última.} one {Después viene una más.} other {Después vienen # más.}} Por favor, mantenga las demás lejos del coche.»',
  'guide.say.close':
    'Decir: «Todas las llaves están admitidas. Cierro la lista; después verá funcionar cada llave antes de firmar.»',
  'meter.time': 'En la sesión',
  'meter.supply': 'Alimentación',
  'meter.count': 'El coche cuenta',
  'meter.none': 'sin leer',
  'meter.above': 'por encima de {floor}',
  'meter.below': '¡por debajo de {floor}!',
  'meter.no-floor': 'sin umbral fijado',
  'meter.ago': 'hace {time}',
  'take-back': 'Deshacer',

  'stopped.button': 'se paró',
  'stopped.title': 'Se detuvo después de {after}',
  'stopped.after-opening': 'la apertura',
  'stopped.after-key': 'la llave {key}',
  'stopped.why': 'Ha terminado porque',
  'stopped.goes-on': 'O es otra cosa, y la sesión sigue abierta',
  'stopped.leave-out': 'Dejarla fuera y seguir, o intentarlo otra vez.',
  'stopped.went-on': 'La sesión siguió.',
  'stopped.record': 'Registrar que se detuvo',
  'stopped.record-other': 'Registrarlo',
  'stopped.not': 'No se detuvo',

  'mend.title': 'Se detuvo después de {after}',
  'mend.why': 'Lo que la detuvo: {why}.',
  'mend.first': 'Probar antes todas las llaves: lo que el coche acepta ahora solo se sabe probando.',
  'mend.how': 'Cómo se resolvió',
  'mend.how.hint': 'Qué hizo cada llave y qué se hizo al respecto.',
  'recover.by-rule': 'Según la regla:',
  'recover.not-known':
    'La regla no dice qué deja aquí una detención. Probar todas las llaves y decir abajo cómo se resolvió.',
  'recover.goal': '¿Qué hace falta ahora?',
  'recover.none':
    'No hay ninguna con lo que hay aquí. Hace falta otra llave, la copia de seguridad u otro equipo.',
  'recover.count': 'Vuelta atrás, paso {step} de {of}',
  'recover.done': 'Hecho',
  'recover.step-done': '(hecho)',
  'recover.failed': 'No funcionó',
  'recover.failed.because': 'No funcionó.',
  'recover.starts': 'Arranca',
  'recover.starts-not': 'No arranca',
  'recover.reopen': 'Abrir una sesión nueva',
  'recover.reopen.then':
    'La guía sigue entonces, llave por llave. Al final se prueban otra vez todas las llaves.',
  'recover.try-all': 'Probar todas las llaves',
  'recover.mended': 'Está resuelto',
  'recover.how.reopened': 'Después de {after}: se abrió una sesión nueva como pide la regla.',
  'recover.how.tried':
    'Después de {after}: se siguió la vuelta atrás y se probaron otra vez todas las llaves.',
  'recover.otherwise': 'Resuelto de otro modo',
  'recover.otherwise.more': 'Decir por escrito cómo se resolvió',
  'recover.mistake': '¿No se había detenido?',
  'way.step': 'Vuelta atrás {place}: {step}',

  'wait.not-begun': 'La espera no ha empezado: {time}.',
  'wait.left': 'quedan de {time}. Sigue contando aunque se cierre esta página.',
  'wait.over': 'El tiempo ha terminado.',
  'wait.no-figure': 'desde entonces; no se sabe cuánto dura',
  'wait.begin': 'El contacto está dado: contar desde ahora',
  'wait.begin-again': 'Se quitó el contacto: contar otra vez desde ahora',
  'wait.ignition-on': 'Contacto dado, empieza la espera',
  'wait.ignition.runs': 'El tiempo sigue corriendo con el contacto quitado.',
  'wait.ignition.pauses': 'El tiempo se para con el contacto quitado.',
  'wait.ignition.restarts': 'El tiempo empieza de nuevo si se quitó el contacto.',
  'wait.ignition.unknown': 'Dejar dado el contacto: de otro modo puede que el tiempo no cuente.',
  'code.refused': 'El código fue rechazado',
  'code.because': 'El coche lo rechazó.',
  'code.tries':
    '{count, plural, =0 {Aún ningún intento erróneo.} one {# intento erróneo.} other {# intentos erróneos.}}',
  'code.most':
    'Hace esperar después de {count, plural, one {# intento erróneo} other {# intentos erróneos}}.',
  'code.most-unknown': 'No se sabe después de cuántos hace esperar: tomar el siguiente como el último.',

  'retest.title': 'Todas las llaves otra vez',
  'retest.count': 'Todas las llaves otra vez: {done} de {of}',
  'retest.why': 'La sesión se había detenido. Lo que el coche acepta ahora solo se sabe probando cada llave.',
  'retest.starts': 'arranca',
  'retest.not': 'no arranca',
  'retest.starts-named': 'La llave {key} arranca el coche',
  'retest.not-named': 'La llave {key} no arranca el coche',
  'least.title':
    '{count, plural, one {Esta prueba basta} other {Estas # pruebas bastan}} para probar el trabajo; hechas {done}',
  'least.why':
    'El menor número de pruebas que cubre todo lo que la intervención puede haber alterado. Anotarlas en la tabla.',
  'least.open': 'por hacer',
  'tally.title': 'Llaves y entradas',
  'tally.said': 'Se dice que existen',
  'tally.bench': 'En el banco',
  'tally.before': 'Guardadas antes',
  'tally.after': 'Guardadas después',
  'tally.identities':
    '{keys, plural, one {# llave} other {# llaves}} en el banco: para el coche, {identities, plural, one {# identidad} other {# identidades}}.',
  'tally.unaccounted':
    '{count, plural, =0 {Cada entrada de antes está explicada.} one {# entrada de antes no es ninguna llave de aquí.} other {# entradas de antes no son ninguna llave de aquí.}}',
  'tally.expected':
    'Se espera después de la intervención: {count, plural, one {# entrada} other {# entradas}}.',
}
