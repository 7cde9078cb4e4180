import type { SameCodes } from '../catalogues.ts'
import type {
  explanationWords as englishExplanations,
  faultWords as englishFaults,
  readingWords as englishReadings,
} from '../en/evidence.ts'

/** Where readings come from and when they were taken. */
export const readingWords: SameCodes<typeof englishReadings> = {
  'vin-source.glass': 'cristal',
  'vin-source.plate': 'placa',
  'vin-source.document': 'documento',
  'vin-source.bus': 'el propio coche',
  'battery.flooded': 'batería de plomo con electrolito líquido',
  'battery.efb': 'batería de plomo de electrolito líquido mejorada (EFB)',
  'battery.agm': 'batería de plomo de fibra de vidrio (AGM)',
  'battery.gel': 'batería de plomo de gel',
  'battery.lithium': 'batería de litio',
  'battery.unknown': 'tipo de batería desconocido',
  'during.rest': 'en reposo',
  'during.session': 'durante la sesión',
  'during.after': 'después de la intervención',
  'rule.replace-all': 'Sesión de sustitución total: la lista de llaves aceptadas se iba a reescribir',
  'rule.append': 'Adición de llave: las llaves nuevas se iban a añadir a la lista',
  'rule.append-drop-oldest':
    'Adición de llave: las llaves nuevas se iban a añadir, y una lista llena da de baja su entrada más antigua',
  'rule.numbered-slots': 'Puestos numerados: cada llave se iba a poner en un puesto propio',
  'rule.unknown': 'La regla de alta no se conocía y se trató como sustitución total',
  'break.supply': 'se perdió la alimentación',
  'break.link': 'se perdió la conexión',
  'break.time-out': 'se agotó el tiempo',
  'break.key-refused': 'se rechazó una llave',
  'break.ignition-off': 'se quitó el contacto',
  'break.operator': 'la detuvo quien hacía el trabajo',
  'break.unknown': 'no se conoce el motivo',
}

/** Why the work may have raised a fault, by the rule of the fault comparison. */
export const explanationWords: SameCodes<typeof englishExplanations> = {
  'explanation.reset-silence':
    'La intervención reinició la unidad de control que este código nombra; estuvo callada un momento.',
  'explanation.muted-silence':
    'La intervención ordenó a la unidad de control que este código nombra callar durante un rato.',
  'explanation.supply-low-supply-codes':
    'La alimentación estuvo baja o se interrumpió durante la intervención.',
  'explanation.supply-low-silence':
    'La alimentación estuvo baja o se interrumpió durante la intervención; las unidades de control callan entonces una tras otra.',
  'explanation.key-refused': 'Durante la intervención se presentó una llave que el coche no conocía.',
  'explanation.immobiliser-teaching': 'El inmovilizador estaba en su sesión durante la intervención.',
  'explanation.battery-off-steering':
    'La batería estuvo desconectada; la dirección vuelve a encontrar su centro cuando se gira el volante de tope a tope.',
}

/** Fault classes for a customer: a heading, and what may be said of them and no more. */
export const faultWords: SameCodes<typeof englishFaults> = {
  'phase.before': 'antes de la intervención',
  'phase.after': 'después de la intervención',
  'phase.cleared': 'después del borrado',
  'phase.cycled': 'después de quitar y dar el contacto',
  'fault-class.there-before-still': 'Ya antes de la intervención, y todavía ahí',
  'fault-class.there-before-gone': 'Ya antes de la intervención, sin comunicar en el último escaneo',
  'fault-class.there-before-back': 'Ya antes de la intervención, con borrado y de vuelta',
  'fault-class.raised-by-work': 'Por la intervención',
  'fault-class.new-unexplained': 'De aparición nueva, sin explicación',
  'fault-class.permanent': 'De carácter permanente',
  'fault-class.not-comparable': 'Sin comparación posible',
  'fault-means.there-before-still':
    'El coche las comunicó antes de que se tocara nada y otra vez en el último escaneo. No las trajo la intervención.',
  'fault-means.there-before-gone':
    'El coche las comunicó antes de que se tocara nada y no en el último escaneo. Que un código haya desaparecido no prueba que su causa esté reparada.',
  'fault-means.there-before-back':
    'El coche las comunicó antes de que se tocara nada. Se borraron y volvieron.',
  'fault-means.raised-by-work':
    'No estaban antes. Aparecieron con la intervención, por el motivo indicado. La última columna dice si han desaparecido.',
  'fault-means.new-unexplained':
    'No estaban antes de la intervención, y el registro no contiene ningún motivo para ellas. Pueden tener que ver con la intervención o no.',
  'fault-means.permanent':
    'Solo el propio coche las borra, una vez superadas sus propias pruebas. Ningún equipo puede borrarlas (SAE J1979, servicio 0A).',
  'fault-means.not-comparable':
    'La unidad de control no se leyó tanto antes como después de la intervención, o mostró demasiado poco. No se puede decir nada sobre lo que cambió.',
  'claim.failing-now': 'presente en el momento del escaneo',
  'claim.pending': 'pendiente',
  'claim.confirmed': 'confirmada',
  'claim.failed-this-cycle': 'falló en este ciclo',
  'claim.failed-since-clear': 'falló desde el borrado',
  'claim.warning-lamp': 'pide su testigo',
  'claim.permanent': 'en la lista de permanentes',
  'claim.not-tested-since-clear': 'no probada desde el borrado',
  'claim.not-tested-this-cycle': 'no probada en este ciclo',
  'claim.unit-not-read': 'unidad de control no leída',
  'claim.absent': 'no comunicada',
  'claim.absent-but-untested': 'no comunicada, pero aún no probada',
  'claim.none': 'comunicada',
}
