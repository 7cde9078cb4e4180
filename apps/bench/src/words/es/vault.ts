import type { SameCodes } from '@shearline/jobfile'
import type { vaultWords as english } from '../en/vault.ts'

/** The vault: who can open vehicle secrets, sealing two reads, opening with a reason. */
export const vaultWords: SameCodes<typeof english> = {
  'vault.recipients': 'Quién puede abrir los secretos del vehículo',
  'vault.recipients.about':
    'Las copias de seguridad de datos del vehículo se sellan en este dispositivo antes de guardarse o enviarse. Solo pueden abrirlas quienes tengan estas claves.',
  'vault.recipients.none':
    'Todavía nadie: mientras no haya alguien, aquí no se puede sellar ninguna copia de seguridad.',
  'vault.recipients.office': 'La oficina sella también para estas claves',
  'vault.recipients.office.about':
    'Adoptar una solo si se sabe de quién es: quien la tenga podrá abrir todo lo que se selle aquí desde ahora.',
  'vault.recipients.take': 'Adoptar',
  'vault.recipients.take-named': 'Adoptar la clave de {name}',
  'vault.recipients.key': 'Clave pública',
  'vault.recipients.key.hint': 'Empieza por age1. No introducir nunca aquí una clave privada.',
  'vault.recipients.name': 'De quién es la clave',
  'vault.recipients.add': 'Añadir esta clave',
  'vault.recipients.remove': 'Quitar',
  'vault.recipients.remove-named': 'Quitar {name}',
  'vault.seal.no-recipient':
    'No se ha indicado ninguna clave que pueda abrir una copia de seguridad sellada.',
  'vault.seal.to-device': 'Indicar una en la página del dispositivo',
  'vault.seal.about':
    'Los dos archivos se comparan y uno se sella en este dispositivo; solo se guarda y se envía la forma sellada. La puede abrir: {names}.',
  'vault.seal.first': 'Elegir la primera lectura',
  'vault.seal.second': 'Elegir la segunda lectura',
  'vault.seal.none': 'aún sin elegir',
  'vault.seal.picked': '{name}, {count, plural, one {# byte} other {# bytes}}',
  'vault.seal.same-file': 'Es el mismo archivo dos veces. Leer la memoria una segunda vez, en otro archivo.',
  'vault.seal.do': 'Comparar y sellar',
  'vault.seal.busy': 'Comparando y sellando…',
  'vault.digest.first': 'Primera lectura (resumen con clave)',
  'vault.digest.second': 'Segunda lectura (resumen con clave)',
  'vault.sealed-file': 'copia de seguridad sellada',
  'vault.secrets': 'Sellado en este trabajo',
  'vault.secret': '{what}, {count, plural, one {# byte} other {# bytes}}, sellado {when}',
  'vault.secret.opened': 'Abierto {when} por {by}: {reason}',
  'vault.open': 'Abrirlo',
  'vault.open.reason': 'Por qué se abre',
  'vault.open.reason.hint': 'Queda en el registro antes de que se abra nada.',
  'vault.open.identity': 'Clave privada',
  'vault.open.identity.hint': 'El archivo tal como se imprimió o se guardó. No se conserva.',
  'vault.open.identity.file': 'Tomarla de su archivo',
  'vault.open.identity.show': 'Mostrar la clave',
  'vault.open.identity.hide': 'Ocultar la clave',
  'vault.open.identity.no-key': '«{name}» es demasiado grande para ser una clave privada.',
  'vault.open.passphrase': 'Frase de paso de esa clave, si la tiene',
  'vault.open.do': 'Registrar el motivo y abrir',
  'vault.open.save': 'Guardar el archivo abierto',
  'vault.open.right':
    'Es el mismo que se registró al sellarlo. Borrar el archivo guardado en cuanto haya servido.',
  'vault.open.wrong': 'NO es el mismo que se registró al sellarlo.',
  'vault.open.not-here': 'El archivo sellado no está ni aquí ni en el servidor.',
}
