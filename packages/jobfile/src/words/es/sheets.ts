import type { SameCodes } from '../catalogues.ts'
import type { sheetWords as english } from '../en/sheets.ts'

/** Phrases of the sheets beside the handover document: consents, what to bring, refusal, statement of keys, return visit. */
export const sheetWords: SameCodes<typeof english> = {
  'sheet.absent-keys': 'Consentimiento: llaves que no están aquí',
  'sheet.no-check': 'Consentimiento: sin comprobación antes de la intervención',
  'sheet.bring-this': 'Qué traer',
  'sheet.refusal': 'Nota: trabajo no realizado',
  'sheet.insurer': 'Declaración de llaves',
  'sheet.return-visit': 'Segunda visita',
  'sheet-preview.absent-keys':
    '{count, plural, one {Se nombra una llave como ausente} other {Se nombran # llaves como ausentes}}: {names}.',
  'sheet-preview.absent-keys.nothing': 'No se nombra ninguna llave como ausente.',
  'sheet-preview.no-check':
    'De ninguna llave presente consta en el registro que arrancara el coche antes de la intervención.',
  'sheet-preview.no-check.nothing':
    'Una llave arrancó el coche antes de la intervención, así que se pudo comprobar.',
  'sheet-preview.bring-this': 'Cuándo y dónde: {when}, {place}.',
  'sheet-preview.bring-this.nothing': 'No consta ninguna cita en el registro.',
  'sheet-preview.refusal': '{decision}: {reason}',
  'sheet-preview.refusal.nothing': 'El trabajo no se rechazó ni se retuvo.',
  'sheet-preview.insurer':
    '{here, plural, one {Había aquí una llave} other {Había aquí # llaves}}, {absent, plural, =0 {ninguna se nombra como ausente} one {una se nombra como ausente} other {# se nombran como ausentes}}.',
  'sheet-preview.insurer.nothing': 'No consta ninguna llave en el registro.',
  'sheet-preview.return-visit':
    '{count, plural, =0 {No queda nada pendiente; la hoja dice qué se hizo.} one {Queda un punto pendiente.} other {Quedan # puntos pendientes.}}',
  'sheet-preview.return-visit.nothing': 'No consta en el registro ningún trabajo al que volver.',
  'sheet.running': '{sheet}, trabajo {job}',
  'sheet.made': '{at}, a partir del registro tal como estaba entonces',
  'sheet.record': 'SHA-256 de ese registro',
  'sheet.not-a-seal':
    'Esta hoja no lleva sello. Lo que dice consta en el registro firmado del trabajo, que la empresa conserva y entrega.',
  'sheet.car': 'Coche',
  'sheet.job': 'Trabajo',
  'sheet.law': 'Esta hoja deja intactos los derechos que da la ley.',
  'sheet.sign': 'Firma',
  'sheet.sign-name': 'Nombre',
  'sheet.sign-date': 'Lugar y fecha',
  'sheet.sign-by': 'Firma',
  'sheet.signed': 'Consta en el registro como firmado por {signer}, {how}.',
  'sheet.agreed':
    'Consta en el registro como acordado en nombre de {signer}; no consta ninguna firma para ello.',
  'sheet.absent-what': 'Qué les hace la intervención',
  'sheet.absent-replace-all':
    'La intervención reescribe la lista de llaves que este coche acepta. Después solo lo arrancarán las llaves que estén aquí y se vuelvan a dar de alta.',
  'sheet.absent-append':
    'La intervención añade llaves a la lista que este coche acepta. Las llaves que no están aquí deberían seguir arrancándolo; eso no se puede probar mientras no estén.',
  'sheet.absent-oldest':
    'La intervención añade llaves a una lista que está llena o puede estarlo. El coche puede dar de baja la más antigua, que puede ser una que no está aquí.',
  'sheet.absent-slots':
    'La intervención pone llaves en puestos numerados. Una llave que no está aquí y ocupa uno de esos puestos ya no arrancará este coche.',
  'sheet.absent-unknown':
    'No se sabe cómo lleva este coche su lista. Se trata como si la lista se reescribiera: las llaves que no están aquí pueden dejar de arrancarlo.',
  'sheet.absent-named': 'Llaves que no están aquí, con los nombres que usted les da:',
  'sheet.absent-others': 'Lo mismo vale para una llave que nadie haya nombrado aquí.',
  'sheet.absent-back':
    'Una llave que deja de funcionar se puede volver a dar de alta más tarde, cuando se traiga al coche. Eso es un trabajo nuevo con su propio precio.',
  'sheet.absent-agree': 'He entendido esto y doy mi conformidad a que el trabajo se haga sin estas llaves.',
  'sheet.nocheck-what': 'Qué no se puede saber',
  'sheet.nocheck-why':
    'Ninguna llave de las que están aquí arranca este coche. Por eso, antes de la intervención nadie puede ver qué funcionaba y qué no.',
  'sheet.nocheck-functions':
    'Cerraduras, botones, testigos y otras funciones solo se pueden probar después de la intervención. Si entonces falla algo, no se puede decir si antes funcionaba.',
  'sheet.nocheck-faults':
    'Las averías que se encuentren después de la intervención pueden haber estado antes. Cuando el coche se puede leer sin llave, eso se hace primero y se conserva.',
  'sheet.nocheck-damage': 'Lo que se ve desde fuera se anota y se fotografía antes de la intervención.',
  'sheet.nocheck-agree':
    'He entendido esto y doy mi conformidad a que el trabajo se haga sin comprobación previa.',
  'sheet.bring-hello': 'Tenga, por favor, estas cosas junto al coche:',
  'sheet.bring-keys':
    'Todas las llaves de este coche que tenga, también una que no funcione, esté rota o solo abra una puerta.',
  'sheet.bring-keys-why':
    'Una llave que no esté cuando se haga el trabajo puede dejar de arrancar el coche. No hace falta que sea una llave que usted use.',
  'sheet.bring-identity': 'Su documento de identidad con foto, el original.',
  'sheet.bring-private':
    'El documento que acredita que el coche está a su nombre o es de su propiedad, el original. Si el coche no es suyo: el consentimiento escrito de la persona propietaria y cómo contactar con ella.',
  'sheet.bring-trade':
    'El encargo de su empresa con un nombre y un número al que llamar, y el documento que muestra a quién pertenece el coche.',
  'sheet.bring-fleet':
    'El encargo de la oficina de la flota con un nombre y un número al que llamar, y el permiso de circulación del coche o su número.',
  'sheet.bring-other': 'Acordado además: {what}',
  'sheet.bring-when': 'Cuándo',
  'sheet.bring-where': 'Dónde',
  'sheet.bring-no-time': 'a una hora aún por acordar',
  'sheet.bring-place-car':
    'El coche está donde se pueda caminar a su alrededor y abrir sus puertas, a ser posible fuera de la carretera y con cobertura telefónica cerca.',
  'sheet.bring-not-sent':
    'No envíe por mensaje fotos de su documento de identidad ni de los cortes de una llave. Se miran en el lugar.',
  'sheet.bring-message':
    '{firm, select, none {} other {{firm}: }}trabajo con llaves en {vehicle}, {when}, {place}. Traiga, por favor: todas las llaves de este coche, funcionen o no; su documento de identidad; {entitlement} Una llave que no esté puede dejar de arrancar el coche. No envíe, por favor, fotos de documentos ni de cortes de llaves.',
  'sheet.bring-short-private':
    'el documento que acredita que el coche está a su nombre o es de su propiedad.',
  'sheet.bring-short-trade':
    'el encargo de su empresa y el documento que muestra a quién pertenece el coche.',
  'sheet.bring-short-fleet': 'el encargo de la oficina de la flota y el permiso de circulación.',
  'sheet.refusal-what': 'Qué se decidió',
  'sheet.refusal-refused': 'El trabajo no se hizo. Motivo que consta en el registro: {reason}',
  'sheet.refusal-held': 'El trabajo espera. Motivo que consta en el registro: {reason}',
  'sheet.refusal-no-blame':
    'Esta nota dice que lo mostrado no bastó para el trabajo. No acusa a nadie de nada.',
  'sheet.refusal-by': 'Lo decidió {by}, {at}.',
  'sheet.refusal-seen': 'Qué se vio',
  'sheet.refusal-seen-none': 'No se registró ningún documento como visto.',
  'sheet.refusal-missing': 'Qué falta',
  'sheet.refusal-missing-none': 'El registro no nombra nada más; pregunte a la empresa.',
  'sheet.refusal-car': 'Qué se hizo en el coche',
  'sheet.refusal-untouched':
    'No se abrió ninguna sesión de alta. Nosotros no cambiamos ninguna llave de este coche.',
  'sheet.refusal-touched':
    'Se abrió una sesión de alta antes de esta decisión. El registro dice qué ocurrió en ella.',
  'sheet.refusal-scans':
    '{count, plural, =0 {No consta ningún escaneo de las unidades de control.} one {Consta un escaneo de las unidades de control; leer no cambia nada en el coche.} other {Constan # escaneos de las unidades de control; leer no cambia nada en el coche.}}',
  'sheet.insurer-what': 'Qué es esta declaración',
  'sheet.insurer-limit':
    'Dice lo que se vio y se probó en este coche ese día. No puede decir si existen otras llaves que nadie nombró, y no es una declaración sobre quién es propietario del coche.',
  'sheet.insurer-tests':
    '{count, plural, =0 {Ninguna prueba del registro consta como hecha en presencia del cliente.} one {# prueba del registro consta como hecha en presencia del cliente.} other {# pruebas del registro constan como hechas en presencia del cliente.}}',
  'sheet.insurer-rows': 'Llaves que constan en el registro',
  'sheet.insurer-key': 'Llave',
  'sheet.insurer-about': 'Qué es',
  'sheet.insurer-before': 'Arrancaba el coche antes',
  'sheet.insurer-after': 'Arranca el coche después',
  'sheet.insurer-not-tried': 'no probado',
  'sheet.insurer-absent': 'Llaves nombradas como ausentes',
  'sheet.insurer-absent-none': 'No se nombró ninguna.',
  'sheet.return-done': 'Qué se hizo',
  'sheet.return-sealed': 'El registro de este trabajo lo selló {by}, {at}.',
  'sheet.return-not-sealed': 'El registro de este trabajo aún no está sellado.',
  'sheet.return-open': 'Qué queda pendiente',
  'sheet.return-open-none': 'No queda pendiente nada de lo que pide este trabajo.',
  'sheet.return-broke': 'La sesión de alta se interrumpió después de {after}, porque {why}.',
  'sheet.return-keys': 'Qué llaves arrancan el coche ahora',
  'sheet.return-starts':
    '{count, plural, one {Se vio que la llave {keys} lo arranca.} other {Se vio que las llaves {keys} lo arrancan.}}',
  'sheet.return-starts-none': 'No se vio que ninguna llave lo arrancara después de la intervención.',
  'sheet.return-fault': 'Avería {code} en {unit}: {class}',
  'sheet.return-faults-none': 'No queda ninguna avería pendiente.',
  'sheet.return-faults': 'Averías que hay que volver a mirar',
  'sheet.return-bring': 'Para la visita',
  'sheet.return-bring-all': 'Todas las llaves de este coche, también las que no estuvieron la primera vez.',
  'sheet.return-bring-file': 'El documento de entrega como archivo, no solo en papel.',
  'sheet.return-bring-changes':
    'Lo que se haya hecho en el coche desde entonces: batería, reparaciones, otras llaves.',
}
