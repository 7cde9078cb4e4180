import type { SameCodes } from '../catalogues.ts'
import type {
  differenceWords as englishDifferences,
  keyWords as englishKeys,
  statementWords as englishStatements,
} from '../en/keys.ts'

/** Keys: what they are and what each can do. */
export const keyWords: SameCodes<typeof englishKeys> = {
  'function.start': 'Arranque',
  'function.emergency-start': 'Posición de arranque de emergencia',
  'function.passive-start': 'Arranque pasivo',
  'function.passive-entry': 'Acceso pasivo',
  'function.lock': 'Botón de cierre',
  'function.unlock': 'Botón de apertura',
  'function.boot': 'Botón del maletero',
  'function.panic': 'Botón de alarma',
  'function.blade-door': 'Espadín en el bombín de puerta',
  'function.blade-ignition': 'Espadín en el bombín de contacto',
  'function.blade-boot': 'Espadín en el bombín del maletero',
  'form.blade': 'Espadín sencillo',
  'form.transponder': 'Llave con transpondedor',
  'form.remote-head': 'Llave con mando integrado',
  'form.flip': 'Llave plegable',
  'form.proximity': 'Llave de proximidad',
  'form.card': 'Llave tarjeta',
  'outcome.works': 'funciona',
  'outcome.fails': 'falla',
  'outcome.not-applicable': 'no la tiene',
  'outcome.not-tested': 'no probado',
  'outcome.open': 'sin respuesta',
  'origin.existing': 'ya estaba aquí',
  'origin.new': 'nueva',
  'make.genuine': 'original',
  'make.aftermarket': 'de otro fabricante',
  'make.renewed': 'reacondicionada',
  'make.unknown': 'origen desconocido',
  'colour.brass': 'latón',
  'colour.slate': 'pizarra',
  'colour.moss': 'musgo',
  'colour.rust': 'óxido',
  'colour.sky': 'cielo',
  'colour.plum': 'ciruela',
  'colour.sand': 'arena',
  'colour.ink': 'tinta',
}

/** Disagreements between the numbers, short enough to stand in a need. */
export const differenceWords: SameCodes<typeof englishDifferences> = {
  'difference.said-more-than-bench':
    '{count, plural, one {# llave que se dijo que existe no está aquí} other {# llaves que se dijo que existen no están aquí}}',
  'difference.said-fewer-than-bench':
    '{count, plural, one {hay aquí # llave más de las que conocía el cliente} other {hay aquí # llaves más de las que conocía el cliente}}',
  'difference.stored-more-than-bench':
    '{count, plural, one {el coche guardaba # entrada que ninguna llave de aquí explica} other {el coche guardaba # entradas que ninguna llave de aquí explica}}',
  'difference.stored-fewer-than-bench':
    '{count, plural, one {# llave de aquí no tenía entrada en el coche} other {# llaves de aquí no tenían entrada en el coche}}',
  'difference.after-more-than-keys':
    '{count, plural, one {el coche guarda # entrada más de las que explican las llaves} other {el coche guarda # entradas más de las que explican las llaves}}',
  'difference.after-fewer-than-keys':
    '{count, plural, one {el coche guarda # entrada menos que llaves hay} other {el coche guarda # entradas menos que llaves hay}}',
  'difference.stored-key-does-not-start':
    '{count, plural, one {# llave del banco no arranca el coche} other {# llaves del banco no arrancan el coche}}',
}

/** What the tally means, for customer and insurer. */
export const statementWords: SameCodes<typeof englishStatements> = {
  'statement.stored-before':
    'Antes de la intervención, este coche guardaba {count, plural, =0 {ninguna entrada} one {# entrada} other {# entradas}}.',
  'statement.stored-after':
    'Después de la intervención guarda {count, plural, =0 {ninguna entrada} one {# entrada} other {# entradas}}.',
  'statement.keys-somewhere-start':
    '{count, plural, one {En algún lugar hay una llave que todavía arranca este coche.} other {En algún lugar hay hasta # llaves que todavía arrancan este coche.}}',
  'statement.absent-keys-stopped':
    'Las llaves que no estaban aquí han dejado de arrancar este coche. El espadín puede seguir abriendo la puerta.',
  'statement.absent-keys-will-stop':
    'Las llaves que no están aquí dejarán de arrancar este coche cuando se reescriba la lista. El espadín puede seguir abriendo la puerta.',
  'statement.absent-keys-still-start': 'Las llaves que no están aquí no se eliminan con esta intervención.',
  'statement.absent-keys-not-proven-stopped':
    'La lista se reescribió, pero el coche guarda más de lo que explican las llaves. No está probado que las llaves que no estaban aquí hayan dejado de arrancar este coche.',
  'statement.absent-keys-unknown':
    'No se sabe si esta intervención elimina las llaves que no están aquí. Cuente con que dejen de arrancar este coche, pero no confíe en ello.',
  'statement.absent-clone-still-starts':
    '{count, plural, one {# llave} other {# llaves}} ({keys}) {count, plural, one {no está aquí pero repite la identidad de una llave que sí está: arranca este coche mientras lo haga esa llave} other {no están aquí pero repiten identidades de llaves que sí están: arrancan este coche mientras lo hagan esas llaves}}.',
  'statement.entries-are-not-keys':
    'Las entradas no son llaves: en algunos sistemas una llave ocupa dos puestos, de modo que {count, plural, one {esta entrada puede} other {algunas de estas # entradas pueden}} ser un segundo puesto de una llave del banco.',
  'statement.clones-count-once':
    '{count, plural, one {# llave} other {# llaves}} ({keys}) {count, plural, one {es un clon} other {son clones}}: para el coche, un clon y su original son una sola llave, y borrar uno borra los dos.',
  'statement.keys-start-now':
    '{count, plural, one {Se vio # llave de aquí} other {Se vieron # llaves de aquí}} arrancar este coche después de la intervención ({keys}).',
  'statement.key-no-longer-starts':
    'La llave {keys} arrancaba este coche antes de la intervención y ahora no lo arranca.',
  'statement.keys-never-tested':
    '{count, plural, one {# llave de aquí no se probó nunca} other {# llaves de aquí no se probaron nunca}} ({keys}).',
}
