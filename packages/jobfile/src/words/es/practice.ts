import type { SameCodes } from '../catalogues.ts'
import type { practiceWords as english } from '../en/practice.ts'

/** Training at the practice car: exercises, what came of an action, and why points were lost. */
export const practiceWords: SameCodes<typeof english> = {
  'practice.one-more-key': 'Una llave más',
  'practice.one-more-key.story':
    'Funcionan dos llaves y el cliente quiere una tercera. El coche añade una llave y conserva las demás. Comprobar después todas las llaves.',
  'practice.forgotten-at-home': 'Una llave se quedó en casa',
  'practice.forgotten-at-home.story':
    'El coche reescribe su lista al cerrarse la sesión. La segunda llave está en casa, a media hora. Hay guardada una tercera llave que nadie tiene.',
  'practice.dies-after-second-key': 'La sesión se cae después de la segunda llave',
  'practice.dies-after-second-key.story':
    'Una mañana fría, una batería débil, sin copia de seguridad. La lista se reescribe con cada llave. Conseguir que vuelvan a casa.',
  'practice.erased-and-cut': 'Se borra la lista y luego se corta la conexión',
  'practice.erased-and-cut.story':
    'El coche abre una sesión solo con una llave que funcione, y en ese momento olvida todas las llaves. Hay a mano una copia de seguridad probada de la lista, y un mando tiene la pila agotada.',
  'practice.clone-on-the-ring': 'Dos llaves que son una',
  'practice.clone-on-the-ring.story':
    'El coche quiere dos llaves distintas que funcionen antes de admitir una tercera. En el llavero hay dos llaves; una de ellas es un clon.',
  'practice.list-is-full': 'La lista está llena',
  'practice.list-is-full.story':
    'Cuatro puestos, cuatro llaves guardadas, dos de ellas perdidas hace tiempo. El coche da de baja la más antigua sin avisar cuando admite otra.',

  'practice.misread-code': 'El código se leyó mal',
  'practice.misread-code.story':
    'La sesión solo se abre con un código, y alguien tomó un 1 por un 7. Cada intento erróneo cuesta veinte minutos. La batería no es la mejor.',

  'practice.did.supply-on': 'Fuente ajustada a {amperes}\u00a0A: {volts}\u00a0V.',
  'practice.did.scanned':
    '{faults, plural, =0 {Ninguna avería guardada} one {# avería guardada} other {# averías guardadas}}; {units, plural, one {respondió # unidad} other {respondieron # unidades}}.',
  'practice.did.cleared': 'Memorias de averías borradas; la unidad del airbag no se tocó.',
  'practice.did.cycled': 'Contacto quitado y dado otra vez.',
  'practice.did.session-opened': 'La sesión está abierta.',
  'practice.did.session-refused': 'El coche no abre la sesión.',
  'practice.did.session-wants-code': 'El coche pide antes el código.',
  'practice.did.code-accepted': 'El coche acepta el código.',
  'practice.did.code-refused':
    'El coche rechaza el código{minutes, plural, =0 {.} one { y no acepta otro durante # minuto.} other { y no acepta otro durante # minutos.}}',
  'practice.did.code-wait':
    'El coche sigue esperando: acepta un código dentro de {minutes, plural, one {# minuto} other {# minutos}}.',
  'practice.did.code-not-wanted': 'Este coche no pide ningún código.',
  'practice.did.stopped': 'La sesión se detuvo.',
  'practice.did.no-session': 'No hay ninguna sesión abierta.',
  'practice.did.session-closed':
    'La sesión está cerrada; {stored, plural, one {hay # llave guardada} other {hay # llaves guardadas}}.',
  'practice.did.session-too-few':
    'Se dieron de alta muy pocas llaves: la sesión terminó sin cerrarse; {stored, plural, one {hay # llave guardada} other {hay # llaves guardadas}}.',
  'practice.did.no-backup': 'No hay copia de seguridad.',
  'practice.did.restored':
    'La lista guardada está de vuelta; {stored, plural, one {hay # llave guardada} other {hay # llaves guardadas}}.',
  'practice.did.waited': '{minutes, plural, one {# minuto} other {# minutos}} después: {volts}\u00a0V.',
  'practice.did.no-such-key': 'Aquí no hay ninguna llave {key}.',
  'practice.did.show-taken': 'La llave {key} fue admitida: {taught} de alta en esta sesión.',
  'practice.did.show-no-session': 'Se presentó la llave {key}, pero no hay ninguna sesión abierta.',
  'practice.did.show-not-accepted': 'La llave {key} no fue admitida.',
  'practice.did.show-same-key': 'Esta sesión ya conoce la llave {key}.',
  'practice.did.show-list-full': 'La llave {key} no fue admitida: la lista está llena.',
  'practice.did.start-started': 'La llave {key} arranca el coche.',
  'practice.did.start-key-not-accepted':
    'La llave {key} no es aceptada. El coche guarda un código de avería por ello.',
  'practice.did.start-battery-too-weak':
    'La llave {key} es aceptada, pero la batería está demasiado débil para girar el motor: {volts}\u00a0V.',
  'practice.did.start-not-on-the-bench': 'La llave {key} no está aquí.',
  'practice.did.button-works': 'Los botones de la llave {key} funcionan.',
  'practice.did.button-dead': 'Los botones de la llave {key} no hacen nada.',
  'practice.did.fetched': 'Se trajo la llave {key}. Eso llevó media hora.',
  'practice.did.cell-new': 'La llave {key} tiene pila nueva.',
  'practice.did.incident-supply-lost': '¡Se perdió la alimentación! La sesión terminó; ahora {volts}\u00a0V.',
  'practice.did.incident-link-lost': '¡Se perdió la conexión con el coche! La sesión terminó.',

  'practice.mark.stranded': 'Ninguna llave de aquí arranca el coche: el cliente se queda tirado.',
  'practice.mark.session-open': 'La sesión se dejó abierta.',
  'practice.mark.key-does-not-start': 'La llave {key} no arranca el coche.',
  'practice.mark.start-not-proven': 'Nadie intentó arrancar el coche con la llave {key}.',
  'practice.mark.buttons-not-proven': 'Nadie probó los botones de la llave {key}.',
  'practice.mark.no-scan-before': 'Sin escaneo de averías antes de la intervención.',
  'practice.mark.no-scan-after': 'Sin escaneo de averías después de la intervención.',
  'practice.mark.no-supply': 'Una batería débil, y sin fuente antes de la sesión.',
}
