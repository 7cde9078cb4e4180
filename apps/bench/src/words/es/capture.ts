import type { SameCodes } from '@shearline/jobfile'
import type { captureWords as english } from '../en/capture.ts'

/** Taking facts in: camera, codes, letters of a picture, speech, and taking back what was just recorded. */
export const captureWords: SameCodes<typeof english> = {
  'camera.picture': 'La imagen de la cámara',
  'camera.lamp': 'Linterna',
  'camera.starting': 'Esperando a la cámara …',
  'camera.refused':
    'No se permite usar la cámara. Permitirla para esta página en los ajustes del navegador, o elegir una foto.',
  'camera.none': 'Este dispositivo no tiene cámara. Elegir una foto en su lugar.',
  'camera.busy':
    'La cámara no responde: puede que la esté usando otro programa. Cerrarlo, o elegir una foto.',
  'camera.insecure':
    'El navegador no da cámara a una página sin conexión segura. Elegir una foto en su lugar.',

  'scan.photo': 'Elegir una foto',
  'scan.photo.looking': 'Buscando en la foto …',
  'scan.photo.none':
    'No se encontró ningún código en esta foto. Sostener el código plano, cerca y bien iluminado, e intentarlo otra vez.',
  'scan.no-reader':
    'No se pudo iniciar el lector de códigos. Cargar esta página otra vez, o teclear lo que se ve.',

  'vin.scan': 'Leerlo con la cámara',
  'vin.scan.title': 'Leer el VIN con la cámara',
  'vin.scan.how': 'Poner dentro del marco el código de la placa, del marco de la puerta o del documento.',
  'vin.scan.found':
    'Leído de {format, select, qr {un código QR} matrix {un código Data Matrix} other {una etiqueta Code 39}}. Cotejarlo con el coche antes de tomarlo.',
  'vin.scan.other': 'El código de la imagen dice «{text}». Eso no es un VIN; se sigue buscando.',
  'vin.scan.again': 'Mirar otra vez',
  'vin.take': 'Tomar este VIN',
  'vin.letters.camera': 'No hay código: usar las letras',
  'vin.letters.picture': 'La imagen de la placa',
  'vin.letters.offer':
    'En esta imagen no hay ningún código. En su lugar se pueden leer sus letras, en este dispositivo. Las letras leídas de una imagen son a menudo erróneas.',
  'vin.letters.read': 'Leer las letras',
  'vin.letters.reading': 'Leyendo las letras …',
  'vin.letters.stop': 'Dejar de leer',
  'vin.letters.none':
    'No se encontró ninguna fila de 17 letras y cifras. Tomar la imagen de frente, de cerca y sin reflejos, o teclearlo.',
  'vin.letters.failed': 'No se pudieron leer las letras: {why}',
  'vin.letters.mark': 'Leído de una imagen: comprobar cada signo.',
  'vin.letters.doubtful':
    '{count, plural, =0 {El lector dice estar seguro de los 17; aun así puede equivocarse.} one {El lector no está seguro de # signo; lleva un marco discontinuo.} other {El lector no está seguro de # signos; llevan un marco discontinuo.}}',
  'vin.letters.signs': 'Los 17 signos: {vin}',
  'vin.letters.next': 'Mostrar otra lectura',
  'vin.letters.compared': 'He cotejado con la placa cada uno de los 17 signos',

  'speech.start': 'Decirlo hablando',
  'speech.start-named': 'Decirlo hablando: {label}',
  'speech.stop': 'Dejar de escuchar',
  'speech.stop-named': 'Dejar de escuchar: {label}',
  'speech.hearing': 'Escuchando …',
  'speech.agree.title': 'Las palabras saldrían de este dispositivo',
  'speech.agree':
    'Este navegador no puede convertir el habla en palabras dentro del dispositivo. Enviaría lo que se dice a su fabricante, que puede conservarlo. No decir nombres, direcciones ni números de clientes.',
  'speech.agree.no': 'Prefiero teclearlo',
  'speech.agree.yes': 'Enviar mi voz esta vez',
  'speech.failed': 'No se entendió nada. Hablar otra vez, o teclearlo.',
  'speech.refused':
    'No se permite usar el micrófono. Permitirlo para esta página en los ajustes del navegador, o teclearlo.',

  'undo.done': 'Registrado: {what}',
  'undo.do': 'Deshacerlo',
  'undo.close': 'Cerrar este aviso',
  'undo.reason': 'Deshecho justo después de registrarlo.',
}
