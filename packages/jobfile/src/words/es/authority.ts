import type { SameCodes } from '../catalogues.ts'
import type { authorityWords as englishAuthority, cautionWords as englishCautions } from '../en/authority.ts'

/** What kind of job, who ordered it, what was signed, what is kept. */
export const authorityWords: SameCodes<typeof englishAuthority> = {
  'work.add-a-key': 'Añadir una llave',
  'work.all-keys-lost': 'Todas las llaves perdidas',
  'work.replace-keys': 'Sustituir llaves',
  'customer.private': 'cliente particular',
  'customer.trade': 'cliente profesional',
  'customer.fleet': 'cliente de flota',
  'role.identity': 'Identidad',
  'role.entitlement': 'Derecho a encargar la llave',
  'decision.refused': 'Rechazado',
  'decision.held': 'Retenido',
  'decision.released': 'Liberado',
  'consent.absent-keys-stop': 'Las llaves que no están aquí pueden dejar de arrancar este coche',
  'consent.no-check-before':
    'No se pudo comprobar nada antes de la intervención, porque no funciona ninguna llave',
  'consent.clear-faults': 'Se pueden borrar averías; antes se guardó su estado',
  'retention.invoice': 'Factura',
  'retention.authority-record': 'Lo que se vio de la identidad y del derecho a encargar la llave',
  'retention.identity-image': 'Imágenes de documentos de identidad',
  'retention.photo': 'Fotos',
  'retention.recording': 'Grabaciones del coche',
  'retention.vehicle-secret': 'Datos sellados del vehículo (copia de seguridad)',
  'retention.job-rest': 'Todo lo demás del trabajo',
}

/** Cautions: a name and the usual sentence. Sources: see the English file. */
export const cautionWords: SameCodes<typeof englishCautions> = {
  'caution.defers':
    'Estas son las precauciones habituales. La ley local y la práctica autorizada están por delante.',
  'caution.airbag': 'Airbag',
  'caution-means.airbag':
    'Una avería del airbag que estaba antes de la intervención se deja como se encontró. Hágala revisar en un taller autorizado para airbags.',
  'caution.keyless-can-move': 'Coche de acceso sin llave: puede quedar listo para circular',
  'caution-means.keyless-can-move':
    'Un coche con llave de proximidad puede arrancar con solo tener la llave cerca. Mantenga las llaves lejos del coche mientras alguien trabaje en él.',
  'caution.high-voltage': 'Alta tensión',
  'caution-means.high-voltage':
    'Un coche eléctrico o híbrido contiene tensión peligrosa incluso apagado. Solo personas formadas para ello abren o tocan esas partes.',
  'caution.carbon-monoxide': 'Monóxido de carbono',
  'caution-means.carbon-monoxide':
    'No deje nunca el motor en marcha en un garaje o lugar cubierto. Con una llave de proximidad, compruebe que el motor está parado antes de alejarse.',
  'caution.roadside': 'Trabajo junto a la carretera',
  'caution-means.roadside':
    'El tráfico que pasa es el principal peligro junto a la carretera. Colóquese lejos del lado del tráfico y, en caso de duda, lleve antes el coche a un lugar seguro.',
  'caution.lone-work': 'Trabajo en solitario',
  'caution-means.lone-work':
    'Quien trabaja a solas se mantiene en contacto con otra persona que conoce el lugar y la hora de regreso.',
  'caution.button-cells': 'Pilas de botón',
  'caution-means.button-cells':
    'Una pila de botón tragada puede causar quemaduras a un niño o una niña en menos de dos horas. Mantenga las pilas fuera del alcance de la infancia; si alguien traga una, busque ayuda médica de inmediato.',
  'caution.locked-in': 'Ningún ser vivo se queda dentro',
  'caution-means.locked-in':
    'Los niños, las niñas y los animales permanecen fuera del coche durante el trabajo con llaves: las puertas pueden bloquearse solas.',
  'caution.steering-lock': 'Bloqueo de la dirección',
  'caution-means.steering-lock':
    'No remolque ni empuje el coche hasta ver que el bloqueo de la dirección está liberado. Tras una sesión fallida puede quedarse bloqueado.',
}
