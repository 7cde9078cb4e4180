import type { SameCodes } from '@shearline/jobfile'
import type { photoWords as english } from '../en/photos.ts'

/** Photos: taking, what they show, seeing them whole, deletion. */
export const photoWords: SameCodes<typeof english> = {
  'photo.title': 'Fotos',
  'photo.identity.title': 'Imagen de un documento',
  'photo.take': 'Hacer una foto',
  'photo.take.of': 'Foto: {what}',
  'photo.take.key': 'Foto',
  'photo.shutter': 'Disparar la foto',
  'photo.again': 'Repetirla',
  'photo.keep': 'Guardar esta foto',
  'photo.preview': 'La foto tal como se guardará',
  'photo.kept-how':
    'Se queda en el banco, cifrada y fuera de la galería. El lugar, la hora y la cámara que puede llevar un archivo se descartan.',
  'photo.what': '¿Qué muestra?',
  'photo.which-key': '¿Qué llave?',
  'photo.shows.key': 'una llave',
  'photo.shows.key-named': 'la llave {key}',
  'photo.shows.vin': 'el VIN',
  'photo.shows.odometer': 'el cuentakilómetros',
  'photo.shows.lamps': 'testigos encendidos',
  'photo.shows.damage': 'daños',
  'photo.shows.equipment': 'equipo',
  'photo.shows.identity': 'un documento de identidad',
  'photo.shows.other': 'una pieza u otra cosa',
  'photo.shows.with': '{what}: {words}',
  'photo.words': 'En pocas palabras',
  'photo.words.hint': 'Qué pieza, qué lado, qué hay que ver.',
  'photo.identity':
    'Guardar la imagen de un documento solo donde lo pidan las reglas con las que se trabaja. Tiene su propia fecha de borrado.',
  'photo.unreadable':
    '«{name}» no se puede leer aquí como imagen. Elegir un archivo JPEG, PNG o WebP, o hacerla con la cámara.',
  'photo.file': 'foto',
  'photo.open': 'Mostrar la foto: {what}',
  'photo.close': 'Cerrar',
  'photo.about': 'Incorporada al registro {when} por {by}, {size}.',
  'photo.reading': 'Abriendo …',
  'photo.missing': 'No está aquí',
  'photo.missing.no-connection':
    'Esta foto no está en este dispositivo, y ahora no se puede llegar al servidor.',
  'photo.missing.not-there':
    'Esta foto aún no está en el servidor. Llegará cuando la envíe el dispositivo que la hizo.',
  'photo.missing.damaged': 'Los bytes de esta foto no concuerdan con el registro, así que no se muestran.',
  'photo.deleted': 'Borrada {when} al cumplirse su plazo. El registro sigue probando que estuvo ahí.',
  'photo.deleted.short': 'Borrada',
}
