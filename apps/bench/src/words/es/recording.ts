import type { SameCodes } from '@shearline/jobfile'
import type { recordingWords as english } from '../en/recording.ts'
import { recordingServiceWords } from './recording-services.ts'
import { recordingViewWords } from './recording-view.ts'

/** Recordings and faults. */
export const recordingWords: SameCodes<typeof english> = {
  ...recordingViewWords,
  ...recordingServiceWords,

  'recording.pick': 'Importar una grabación',
  'recording.pick.hint': 'O soltarla en cualquier punto de esta página. Se lee en este dispositivo.',
  'recording.drop': 'Soltar la grabación',
  'recording.title': 'Grabación {name}',
  'recording.reading': 'Leyendo la grabación',
  'recording.looking': 'Mirando qué clase de grabación es.',
  'recording.read-so-far': '{read} de {whole} leídos',
  'recording.frames-so-far': '{count, plural, =0 {aún ninguna trama} one {# trama} other {# tramas}}',
  'recording.messages-so-far': '{count, plural, =0 {aún ningún mensaje} one {# mensaje} other {# mensajes}}',
  'recording.read-percent': '{percent} por ciento leído',
  'recording.cancel.hint': 'No se guarda nada hasta que se diga.',
  'recording.failed': 'La lectura se detuvo: {problem} No se registró nada.',
  'recording.unknown': 'Este archivo no se puede leer como grabación: {reason}. No se registró nada.',
  'recording.format': 'Formato: {format}, porque {reason}.',
  'recording.size': 'Tamaño',
  'recording.frames': 'Tramas',
  'recording.messages': 'Mensajes',
  'recording.messages.of':
    '{count, number}{incomplete, plural, =0 {} one {, # más incompleto} other {, # más incompletos}}',
  'recording.units': 'Unidades que respondieron',
  'recording.faults': 'Averías comunicadas',
  'recording.faults.of':
    '{units, plural, =0 {no contiene ninguna lista de averías} one {{faults} en # unidad} other {{faults} en # unidades}}',
  'recording.vin': 'VIN oído:',
  'recording.vin.same': 'el mismo que consta en el registro.',
  'recording.vin.differs': 'No es el que consta en el registro ({vin}): registrarlo lo contradirá.',
  'recording.not-vin':
    'La unidad {unit} respondió «{text}» al pedirle el VIN. No está bien formado y no se registra como tal.',
  'recording.clean': 'Se pudieron leer todas las líneas.',
  'recording.findings':
    '{count, plural, one {# cosa que merece una mirada} other {# cosas que merecen una mirada}}',
  'recording.left-out':
    '{count, plural, one {# lugar no se pudo leer y se omite.} other {# lugares no se pudieron leer y se omiten.}}',
  'recording.left-out.first': 'El primero en {where}: {what}.',
  'recording.more-findings': '{count, plural, one {y # más} other {y # más}}',
  'recording.again': 'Esta misma grabación ya consta en el registro de este trabajo.',
  'recording.which': '¿Qué escaneo es este?',
  'recording.which.hint':
    'La decisión es de quien trabaja: nada en el archivo dice si la intervención ya se había hecho.',
  'recording.no-scan': 'No contiene ninguna lista de averías, así que se guarda solo como grabación.',
  'recording.which.before': 'Antes de la intervención',
  'recording.which.after': 'Después de la intervención',
  'recording.which.cleared': 'Después del borrado',
  'recording.which.cycled': 'Después de quitar y dar el contacto',
  'recording.which.keep': 'Solo guardarla',
  'recording.sealed': 'El archivo en sí',
  'recording.sealed.do': 'Guardarlo también, sellado',
  'recording.sealed.hint': 'Después lo puede abrir: {names}. Contiene todo lo que pasó por el cable.',
  'recording.sealed.nobody': 'Para guardar también el archivo en sí, indicar una clave que pueda abrirlo.',
  'recording.kept-as-is':
    'Qué se guarda: sus mensajes, con el contenido de los servicios de seguridad tapado, y el hash del archivo. El archivo en sí se queda donde está.',
  'recording.record': 'Registrarla',
  'recording.leave': 'Dejarla',
  'strip.what':
    '{length}, {messages, plural, one {# mensaje} other {# mensajes}}, {units, plural, one {# unidad} other {# unidades}}',
  'strip.events':
    '{count, plural, =0 {Ningún suceso} one {# suceso} other {# sucesos}} a lo largo de la grabación',
  'event.session-opened': '{count, plural, one {# sesión abierta} other {# sesiones abiertas}}',
  'event.reset': '{count, plural, one {# reinicio} other {# reinicios}}',
  'event.muted': '{count, plural, one {# unidad callada} other {# unidades calladas}}',
  'event.faults-cleared': '{count, plural, one {# borrado} other {# borrados}}',
  'event.refused': '{count, plural, one {# rechazo} other {# rechazos}}',
  'event.supply-low': '{count, plural, one {# bajada de alimentación} other {# bajadas de alimentación}}',
}
