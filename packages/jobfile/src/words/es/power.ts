import type { SameCodes } from '../catalogues.ts'
import type { powerWords as english } from '../en/power.ts'

/** Whether the car's supply holds: verdict, why, warnings, the watch, and what is left after the work. */
export const powerWords: SameCodes<typeof english> = {
  'power-verdict.go': 'Adelante: la batería aguanta el plan.',
  'power-verdict.connect-supply': 'Conectar antes una fuente de al menos {amperes}\u00a0A.',
  'power-verdict.stop': 'Alto: no empezar.',

  'power-reason.holds':
    'Probabilidad de bajar de {floorVolts}: {chancePercent}\u00a0%. El mínimo que cabe esperar es de unos {lowestVolts}.',
  'power-reason.holds-with-supply':
    'Con la fuente, la probabilidad de bajar de {floorVolts} es del {chancePercent}\u00a0%. El mínimo que cabe esperar es de unos {lowestVolts}.',
  'power-reason.crosses-floor':
    'Tal como se describe, la probabilidad de bajar de {floorVolts} es del {chancePercent}\u00a0%; se acepta el {acceptedPercent}\u00a0%.',
  'power-reason.supply-too-small': 'La fuente, tal como se describe, no basta.',
  'power-reason.supply-volts-too-low': 'La fuente está ajustada por debajo del umbral.',
  'power-reason.no-supply-enough':
    'Ninguna fuente de hasta 200 A mantiene el umbral. Revisar el umbral, o cambiar o cargar antes la batería.',
  'power-reason.known-bad':
    'Se sabe que la batería está mal. Trabajar con una batería auxiliar, o hacer montar una nueva.',
  'power-reason.dead-cell':
    '{restVolts} es lo que queda cuando un vaso está muerto. Probar la batería con carga, cargarla por separado o usar una batería auxiliar.',
  'power-reason.not-twelve-volts':
    '{restVolts} no es una batería de 12 V en reposo. Parar motor y cargadores y leer otra vez.',
  'power-reason.frozen':
    'A {celsius} °C y con esta carga, el ácido está congelado. No cargarla, no puentearla ni someterla a carga: dejar antes que se descongele.',

  'power-warning.rest-volts-missing':
    'Sin los voltios en reposo, la carga puede ser cualquiera. Leerlos en los bornes antes de encender nada.',
  'power-warning.rested-too-short':
    'No ha reposado mucho: la lectura puede ser demasiado alta. Fiarse del extremo bajo de la franja.',
  'power-warning.hours-at-rest-missing':
    'No se sabe cuánto ha reposado: la lectura puede ser demasiado alta. Preguntar cuándo rodó el coche por última vez.',
  'power-warning.above-full':
    '{restVolts} es más de lo que esta batería muestra en reposo. Asegurarse de que nada la carga y leer su etiqueta.',
  'power-warning.deeply-discharged':
    '{restVolts} está por debajo de todas las tablas: vacía y quizá dañada. Probarla antes de fiarse de ella.',
  'power-warning.kind-missing':
    'No se conoce el tipo de batería: la franja los abarca todos. Leer su etiqueta.',
  'power-warning.capacity-missing': 'No se conoce la capacidad y se toma con amplitud. Leer su etiqueta.',
  'power-warning.age-missing': 'No se conoce la edad: la franja abarca de nueva a nueve años.',
  'power-warning.temperature-missing': 'No se conoce la temperatura: la franja abarca de -10 a 30 °C.',
  'power-warning.second-rate-unusable': 'Los dos valores de la etiqueta se contradicen; uno se deja fuera.',
  'power-warning.step-load-missing':
    'No se conoce el consumo de «{step}»: se toman de 5 a 40 A. Indicar qué está encendido.',
  'power-warning.may-be-frozen':
    'En el extremo bajo de la franja, el ácido puede estar congelado. Mirar la caja; no conectar nada a una batería congelada.',
  'power-warning.lithium-below-zero':
    'Por debajo de 0 °C, una batería de litio puede rechazar la carga o desconectarse sola. Calentarla, o dejar que la fuente lo lleve todo.',
  'power-warning.charger-not-supply':
    'Un cargador no es una fuente: pasa a flotación y deja caer la tensión. No se cuenta con su corriente.',
  'power-warning.supply-amperes-missing':
    'No se conoce la corriente de la fuente: se toman de 5 a 30 A. Leer su etiqueta.',
  'power-warning.support-writes':
    'Aguanta sin ella; aun así, la práctica común conecta una fuente antes de la primera escritura.',
  'power-warning.clamp-to-chassis':
    'Con control de batería, la pinza negativa va al chasis o a la masa del motor, no al borne.',
  'power-warning.setting-overruled': 'La instrucción del fabricante del vehículo prevalece sobre el ajuste.',
  'power-warning.floor-above-target':
    'El objetivo está por debajo del umbral: se toma el umbral como objetivo.',
  'power-warning.start-doubtful':
    'Después de la intervención, el coche arranca solo en el {chancePercent}\u00a0% de lo posible. Cargar antes de irse, o tener a mano un arrancador.',

  'power-level.steady': 'Estable',
  'power-level.falling': 'Bajando: no durará hasta el final del plan',
  'power-level.amber': 'Por debajo del umbral',
  'power-level.stop': 'Parar ya',

  'power-watch.no-readings': 'Aún no hay lecturas: esto es la predicción.',
  'power-watch.readings-left-out':
    'Algunas lecturas no son voltios u horas utilizables y se dejan fuera. Revisar el polímetro.',
  'power-watch.does-not-fit':
    'Ninguna batería como la descrita explica estas lecturas. Algo más consume corriente: mirarlo antes de seguir.',
  'power-watch.plan-overrun':
    'La intervención ha pasado del final del plan; se supone que su último consumo continúa.',

  'power-start.starts': 'Arrancará',
  'power-start.doubtful': 'Puede que no arranque: cargarla, o tener a mano un arrancador',
  'power-start.does-not-start': 'Tal como está, no arrancará',
  'power-start.unknown': 'No se sabe: leer los voltios con la fuente desconectada',

  'power-drain.asleep': 'Dormido',
  'power-drain.waiting': 'Aún no duerme. Leer otra vez hasta 60 minutos después del cierre',
  'power-drain.awake':
    'Algo lo mantiene despierto. Desenchufar de la toma, alejar las llaves, cerrar todo, leer otra vez',
  'power-drain.not-measured': 'Sin medir',

  'power-cell.good': 'Buena',
  'power-cell.replace-soon': 'Cambiar pronto',
  'power-cell.replace': 'Cambiar',
  'power-cell.test-loaded': 'No está probado: leerla mientras el mando emite',
  'power-cell.read-again': 'No puede ser: revisar escala, polaridad y número de pilas',

  'power-meter.empty': 'una línea vacía',
  'power-meter.no-number': 'una línea sin número',
  'power-meter.several-numbers': 'una línea con varios números',
  'power-meter.overload': 'fuera de su escala',
  'power-meter.alternating': 'corriente alterna: pasarlo a continua',
  'power-meter.other-unit': 'una magnitud que no son voltios',
}
