import type { SameCodes } from '@shearline/jobfile'
import type { policyWords as english } from '../en/policy.ts'

/** Rules of place and firm (policy packs), the car and its place, cautions where they matter, custody. */
export const policyWords: SameCodes<typeof english> = {
  'title.rules': 'Reglas · Shearline',
  'title.keeping': 'Pendiente de borrar · Shearline',
  'board.find': 'Buscar un trabajo',
  'board.find.hint': 'Palabras de su nombre, lugar o coche, o el final de su VIN.',
  'board.found':
    '{count, plural, =0 {Ningún trabajo encaja} one {# trabajo encaja} other {# trabajos encajan}}',
  'board.more': '{count, plural, one {# trabajo más} other {# trabajos más}}',
  'rules.title': 'Reglas del lugar y de la empresa',
  'rules.law':
    'Las reglas son datos, no asesoramiento. Consultar la ley local; donde diga otra cosa, está por delante.',
  'rules.by': 'Este trabajo se rige por: {pack}.',
  'rules.which': 'Reglas con las que trabajar',
  'rules.choose': 'Trabajar con estas reglas',
  'rules.other': 'Trabajar con otras reglas',
  'rules.not-here':
    'Las reglas «{pack}» no están en este dispositivo. Lo que piden consta en el registro y figura abajo.',
  'rules.identity-any': 'Identidad, uno de: {documents}.',
  'rules.entitlement-any': 'Derecho a encargar la llave, uno de: {documents}.',
  'rules.or': '; ',
  'rules.label': '{name}, {region}, {dated}',
  'rules.source': 'Fuente: {source} ({basis}).',
  'rules.why-not': 'Por qué no',
  'rules.because': 'Respondido que no: {why}',
  'rules.record-no': 'Registrar que no, con este motivo',
  'rules.link': 'Reglas',
  'rules.page': 'Reglas del lugar y de la empresa',
  'rules.page.what':
    'Un paquete dice qué muestra que alguien puede tener una llave, qué se conserva y cuánto tiempo, qué hay que decir al cliente junto a la carretera y qué bandas de radio son habituales. Tomar una copia de uno, adaptarla a la ley propia y trabajar con ella.',
  'rules.usual': 'los trabajos nuevos empiezan con él',
  'rules.make-usual': 'Empezar con él los trabajos nuevos',
  'rules.make-usual-named': 'Empezar los trabajos nuevos con {name}',
  'rules.copy': 'Cambiar una copia',
  'rules.copy-named': 'Cambiar una copia de {name}',
  'rules.edit': 'Cambiar',
  'rules.edit-named': 'Cambiar {name}',
  'rules.save': 'Guardar como archivo',
  'rules.save-named': 'Guardar {name} como archivo',
  'rules.forget': 'Olvidar',
  'rules.forget-named': 'Olvidar {name}',
  'rules.where': '{region}; comprobado el {dated}',
  'rules.read-file': 'Leer un paquete de un archivo',
  'rules.read-file.hint': 'Un archivo JSON, como lo escribe «Guardar como archivo».',
  'rules.read': 'Leído: {name}. Se conserva en este dispositivo.',
  'rules.not-json': 'El archivo no es JSON, así que no se leyó nada: {what}',
  'rules.troubles':
    '{count, plural, one {Hay un lugar erróneo} other {Hay # lugares erróneos}}, así que no se leyó nada:',
  'rules.trouble': '{what}. {doNext}',
  'rules.form.name': 'Nombre de las reglas',
  'rules.form.region': 'Dónde se aplican',
  'rules.form.dated': 'Día en que se cotejaron con la ley',
  'rules.form.dated.hint': 'Como 2026-11-28.',
  'rules.form.authority': 'Qué muestra que alguien puede tener una llave',
  'rules.form.identity': 'Identidad, uno cualquiera de',
  'rules.form.entitlement': 'Derecho a encargar la llave, uno cualquiera de',
  'rules.form.checks': 'También se pregunta',
  'rules.form.own': 'Preguntas propias',
  'rules.form.own.hint': 'Cada una pide un sí, o un no con un motivo.',
  'rules.form.source': 'De dónde sale esto',
  'rules.form.retention': 'Qué se conserva y cuánto tiempo',
  'rules.form.days': '{name}: días',
  'rules.form.stalled': 'Días tras los que un trabajo que no termina se da por terminado',
  'rules.form.contract': 'Qué se dice a un cliente particular antes de la intervención',
  'rules.form.radio': 'Bandas de radio de',
  'rules.form.radio.none': 'ninguna región',
  'rules.form.keep': 'Guardar estas reglas',
  'rules.own-suffix': '{name} (propias)',

  'site.title': 'El coche y su lugar',
  'site.why': 'Estas cuatro respuestas deciden qué precauciones importan aquí.',

  'cautions.here': '{count, plural, one {Leer esto antes de seguir} other {Leer estas # antes de seguir}}',

  'keeping.title': 'Pendiente de borrar',
  'keeping.link': 'Pendiente de borrar',
  'keeping.what':
    'Lo que este dispositivo sabe de cada trabajo, cotejado con sus plazos. El borrado, con su prueba, se hace en el ordenador que tiene el registro: «shearline retention delete».',
  'keeping.reading': 'Repasando {count, plural, one {# trabajo} other {# trabajos}} ...',
  'keeping.none': 'Hoy no toca borrar nada.',
  'keeping.since': 'desde {day}',
  'keeping.items': '{count, plural, one {# elemento} other {# elementos}}',
  'keeping.rule':
    '{days, plural, one {# día} other {# días}} desde {trigger, select, sealed {el sellado} handed_over {la entrega} warranty_ended {el fin de la garantía} purpose_ended {el fin de su finalidad} other {el registro}}; {source}',
  'keeping.held': 'Retenido, así que se queda: {reason}',
  'keeping.stalled': 'El trabajo no terminó nunca; se cuenta desde su última anotación.',

  'custody.title': 'Qué se conserva y hasta cuándo',
  'custody.pack': 'Plazos: {pack}.',
  'custody.class':
    '{count, plural, =0 {nada conservado} one {# elemento conservado} other {# elementos conservados}}',
  'custody.not-running': 'su plazo no ha empezado',
  'custody.until': 'hasta {day}',
  'custody.due': 'pendiente desde {day}',
  'custody.deleted': '{count, plural, one {# borrado} other {# borrados}}',
  'custody.hold': 'Impedir todo borrado',
  'custody.hold.why': 'Por qué, y a petición de quién',
  'custody.hold.place': 'Retener todo lo de este trabajo',
  'custody.hold.stands': 'No se puede borrar nada de este trabajo: {reason} ({by}, {day}).',
  'custody.hold.lift': 'Terminar esta retención',
  'custody.deletion':
    '{what}: {count, plural, one {# elemento} other {# elementos}}, {day}, por {by}. {why}{keys, select, true { Sus claves están destruidas.} other {}}',

  'doubts.title': 'Qué no concuerda en este registro',
  'doubts.clock.before-its-predecessor':
    'Una anotación del dispositivo {device} lleva una hora anterior a la que la precede.',
  'doubts.clock.before-what-it-names':
    'Una anotación del dispositivo {device} lleva una hora anterior a lo que nombra.',
  'doubts.clock.written-after-receipt':
    'Una anotación del dispositivo {device} lleva una hora posterior a su llegada.',
  'doubts.clock.in-the-future': 'Una anotación del dispositivo {device} lleva una hora del futuro.',
  'doubts.clock.other': 'El reloj del dispositivo {device} no concuerda con el registro.',
  'doubts.device-revoked':
    '{count, plural, one {Una anotación es} other {# anotaciones son}} de un dispositivo que ya no es de confianza ({devices}). Registrar otra vez, en un dispositivo de confianza, lo que sea cierto.',
  'doubts.not-witnessed':
    '{count, plural, one {Una anotación es} other {# anotaciones son}} de un dispositivo cuya clave puede estar en otras manos ({devices}). Nada más que esa clave muestra cuándo se escribió.',
  'doubts.own-revoked':
    'La empresa ya no confía en este dispositivo ({because, select, retired {retirado} replaced {sustituido} lost {comunicado como perdido} stolen {comunicado como robado} other {su clave puede estar en otras manos}}). Lo que registre ahora no se acepta. Trabajar en otro dispositivo.',

  'handed.title': 'Entregado',
  'handed.to': 'A quién',
  'handed.to.hint': 'Nombre o función de la persona que se llevó el coche y sus llaves.',
  'handed.keys': 'Llaves que se fueron con el coche',
  'handed.first': 'Sellar antes el documento; esto viene después.',
  'handed.record': 'Entregado',
  'handed.again': 'Registrar otra entrega',
  'handed.done':
    'A {to}, {day}, {time}; {count, plural, =0 {ninguna llave nombrada} one {llave {keys}} other {llaves {keys}}}.',

  'hand.title': 'Pasar este trabajo a otra persona del equipo',
  'hand.how':
    'Quien tenga un banco con el mismo servidor abre esta dirección o la escanea con la cámara: el trabajo se abre allí con todo lo enviado hasta ahora.',
  'hand.here-only':
    'Este banco se abrió en una dirección que solo entiende este dispositivo ({address}). Dar el archivo de abajo, o abrir antes el banco en una dirección de la red propia.',
  'hand.qr': 'Dirección de este trabajo como código QR',
  'hand.unsent':
    '{count, plural, one {# anotación está} other {# anotaciones están}} aún solo en este dispositivo. Enviar antes, o dar también el archivo.',
  'hand.all-sent': 'Todo lo de este trabajo está enviado.',
  'hand.bundle': 'Guardar el trabajo entero como archivo',
  'hand.bundle.how':
    'Sin red: el archivo contiene todas las anotaciones y todos los archivos del trabajo que hay en este dispositivo. Cualquiera puede probarlo con «shearline verify», también años después; sirve para leer, el trabajo continúa por la dirección de arriba.',
  'hand.bundle.unsealed':
    'El trabajo aún no está sellado: cada anotación del archivo está firmada, pero nada en él muestra que no falte ninguna. Selle antes el documento para probar el conjunto.',
}
