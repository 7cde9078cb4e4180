import type { SameCodes } from '@shearline/jobfile'
import type { shellWords as english } from '../en/shell.ts'

/** Header, board, new job, this device, and what goes wrong. ICU message format. */
export const shellWords: SameCodes<typeof english> = {
  'app.name': 'Shearline',
  'app.device': 'Dispositivo',
  'app.skip': 'Saltar a la página',
  'app.loading': 'Un momento ...',
  'title.board': 'Trabajos · Shearline',
  'title.new': 'Trabajo nuevo · Shearline',
  'title.job': 'Trabajo · Shearline',
  'title.device': 'Este dispositivo · Shearline',
  yes: 'Sí',
  no: 'No',
  cancel: 'Cancelar',
  close: 'Cerrar',
  record: 'Registrar',
  reason: 'Motivo',
  'reason.writing': 'Motivo por escrito',
  'amount.more': 'Aumentar',
  'amount.less': 'Disminuir',
  'amount.unit': '{label} ({unit})',
  'names.add': 'Añadir',
  'names.remove': 'Quitar {name}',
  'saved.here': 'guardado aquí',
  'saved.sent': 'enviado',

  'sending.sent': 'Guardado, todo enviado',
  'sending.sending': 'Guardado, enviando {count}',
  'sending.waiting': 'Guardado, {count} por enviar',
  'sending.refused': 'Guardado, no aceptado',
  'sending.full.sent': 'Todo lo de este dispositivo está también en el servidor.',
  'sending.full.sending':
    'Todo está guardado en este dispositivo. Enviándose ahora: {facts, plural, one {# anotación} other {# anotaciones}}{blobs, plural, =0 {} one { y # grabación} other { y # grabaciones}}.',
  'sending.full.waiting':
    'Todo está guardado en este dispositivo. Queda por enviar: {facts, plural, one {# anotación} other {# anotaciones}}{blobs, plural, =0 {} one { y # grabación} other { y # grabaciones}}. El banco lo vuelve a intentar solo, también después de reiniciar.',
  'sending.full.refused':
    'Todo está guardado en este dispositivo y aquí se queda. El servidor no aceptó {facts, plural, one {# anotación} other {# anotaciones}}{blobs, plural, =0 {} one { y # grabación} other { y # grabaciones}}.',
  'sending.refusal': '{what} ({code})',
  'sending.try': 'Intentar enviar ahora',

  'board.day':
    '{open, plural, =0 {Nada abierto} one {# trabajo abierto} other {# trabajos abiertos}}{ready, plural, =0 {} one {, # en línea} other {, # en línea}}',
  'board.new': 'Trabajo nuevo',
  'board.earlier': 'Días anteriores',
  'board.invented': 'inventado',
  'board.where': '{place} · {when}',
  'board.empty.title': 'Aún no hay trabajos',
  'board.empty.what':
    'Abrir uno cuando entre la llamada. Cada trabajo se muestra aquí como su bombín, con lo único que toca hacer a continuación.',
  'board.empty.call': 'Trabajo nuevo: qué coche, dónde, para quién.',
  'board.empty.arrive': 'Junto al coche: leer el VIN, etiquetar cada llave, escanear antes de tocar nada.',
  'board.empty.seal': 'Cuando los siete pitones estén en línea: sellar el documento y entregar.',

  'new.title': 'Trabajo nuevo',
  'new.name': 'Nombre del trabajo',
  'new.name.hint': 'Para volver a encontrarlo: «Furgoneta pequeña, llave perdida».',
  'new.vehicle': 'Coche, como lo llama el cliente',
  'new.vehicle.hint': 'Bastan el tipo y el color. El VIN decide después.',
  'new.place': 'Dónde está',
  'new.place.hint': 'Las horas de este trabajo se muestran en {zone}, la zona de este dispositivo.',
  'new.work': 'Qué se pide',
  'new.customer': 'Quién encarga',
  'new.language': 'Idioma del cliente',
  'new.language.hint': 'En él se escriben las hojas de consentimiento y el documento de entrega.',
  'new.open': 'Abrir el trabajo',

  'device.title': 'Este dispositivo',
  'device.by': 'Nombre de quien trabaja',
  'device.by.hint': 'Figura en el registro junto a todo lo que escribe.',
  'device.name': 'Nombre de este dispositivo',
  'device.name.hint': 'Lo que leen los demás: «tableta de la furgoneta 2».',
  'device.keep': 'Guardar',
  'device.language': 'Idioma de este banco',
  'device.language.hint': 'Lo que recibe el cliente se escribe en el idioma fijado en cada trabajo.',
  'device.light': 'Luz',
  'device.light.hint':
    'Alto contraste es negro sobre blanco con bordes gruesos, para el sol y para la vista cansada.',
  'theme.auto': 'Como el dispositivo',
  'theme.light': 'Claro',
  'theme.dark': 'Oscuro',
  'theme.sun': 'Alto contraste',
  'device.sending': 'Guardado y enviado',
  'device.kept': 'Guardado aquí',
  'device.key':
    'Este navegador firma lo que registra con una clave que no puede salir de él. Los demás conocen el dispositivo por:',
  'device.facts':
    '{count, plural, =0 {Aún no hay nada registrado con este dispositivo.} one {Hay # anotación registrada con este dispositivo.} other {Hay # anotaciones registradas con este dispositivo.}}',
  'device.lasting': 'El navegador ha prometido conservar este almacén.',
  'device.not-lasting':
    'El navegador puede eliminar este almacén cuando el disco esté lleno. Pedirle que lo conserve; suele aceptar cuando el banco se usa a menudo o está instalado.',
  'device.ask-lasting': 'Pedir al navegador que lo conserve',

  'by.title': '¿Quién trabaja?',
  'by.go-on': 'Continuar',
  'by.needed': 'No se registró nada: el registro necesita el nombre de la persona que trabaja.',

  'mishap.title': 'Esta página ha fallado',
  'mishap.kept': 'Todo lo que aparecía como guardado sigue guardado en este dispositivo.',
  'mishap.reload': 'Cargar la página otra vez',
  'problem.fact': 'No registrado: el valor en «{path}» no es válido. {what}',
  'problem.cannot-sign':
    'Este navegador no puede firmar anotaciones. Usar una versión actual del navegador u otro distinto.',
  'problem.refused': '{what} {doNext}',
  'problem.unreachable':
    'Ahora no se puede llegar al servidor. Todo lo registrado sigue guardado aquí; volver a intentarlo cuando haya conexión.',
  'problem.full':
    'Este dispositivo está lleno, así que no se registró nada. Liberar espacio y registrarlo otra vez.',
  'problem.other': 'No ha funcionado: {what}',
}
