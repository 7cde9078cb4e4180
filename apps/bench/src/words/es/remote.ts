import type { SameCodes } from '@shearline/jobfile'
import type { remoteWords as english } from '../en/remote.ts'

/** Is the new remote of the same radio family as the original? */
export const remoteWords: SameCodes<typeof english> = {
  'remote.title': '¿Es el mando nuevo de la misma familia de radio?',
  'remote.why':
    'Un mando de otra radio arranca el coche, pero sus botones no hacen nada. Dos grabaciones cortas lo dicen antes de gastarlo.',
  'remote.open': 'Comparar dos grabaciones de radio',
  'remote.how':
    'Grabar los dos mandos con cualquier receptor general: el mismo receptor, de una sentada, un botón pulsado dos segundos. Solo se miden valores físicos. Lo que se emite no se lee ni se muestra.',
  'remote.privacy':
    'El banco no guarda ninguna grabación: sus muestras desaparecen una vez medidas. Los archivos se quedan donde los escribió el receptor; borrarlos allí.',
  'remote.close': 'Cerrar',
  'remote.original': 'Mando original',
  'remote.new': 'Mando nuevo',
  'remote.pick': 'Elegir su grabación',
  'remote.pick-again': 'Elegir otra',
  'remote.pick.hint': '.cu8, .cs8, .cs16 o .cf32; o los dos archivos de un par SigMF.',
  'remote.pick.no-samples':
    '{name} solo describe una grabación. Elíjalo junto con el archivo de sus muestras (.sigmf-data).',
  'remote.pick.not-recording':
    '{name} no es una grabación de radio. Elija el archivo que escribió su receptor, o los dos archivos de un par SigMF.',
  'remote.forget': 'Quitar',
  'remote.measuring': 'Midiendo {name}',
  'remote.measured':
    '{name}, {seconds} a {rate} muestras por segundo{centre, select, none {} other {, centro {centre}}}',
  'remote.failed': 'La medición se detuvo: {problem}',
  'remote.ask.change': 'Leerla con otros valores',
  'remote.rate': 'Muestras por segundo',
  'remote.rate.unit': 'miles',
  'remote.centre': 'Frecuencia central',
  'remote.centre.hint': 'Sin ella no se pueden comparar las portadoras.',
  'remote.format': 'Formato de las muestras',
  'remote.format.cu8': '8 bits, sin signo (cu8)',
  'remote.format.cs8': '8 bits, con signo (cs8)',
  'remote.format.cs16': '16 bits (cs16)',
  'remote.format.cs16be': '16 bits, primero el byte alto',
  'remote.format.cf32': '32 bits, coma flotante (cf32)',
  'remote.format.cf32be': '32 bits, coma flotante, primero el byte alto',
  'remote.measure': 'Medirla',

  'remote.verdict.same.next':
    'Sus botones pueden funcionar una vez dado de alta. La radio sola no prueba que el coche lo acepte.',
  'remote.verdict.different.next':
    'No gastarlo todavía: lo más probable es que sus botones no hagan nada en este coche. Comparar antes las referencias.',
  'remote.verdict.unsure.next':
    'Grabar otra vez los dos: el mismo receptor, de una sentada, de cerca, un botón pulsado dos segundos.',
  'remote.points.same': 'Coincide',
  'remote.points.unsure': 'Lo deja abierto',
  'remote.points.different': 'Difiere',
  'remote.reasons': 'Por qué',
  'remote.drift': '¿Poco alcance aunque la pila es nueva?',

  'remote.values': 'Medido',
  'remote.value': 'Valor',
  'remote.value.carrier': 'Portadora',
  'remote.value.modulation': 'Modulación',
  'remote.value.deviation': 'Desviación a cada lado',
  'remote.value.rate': 'Símbolos por segundo',
  'remote.value.pulses': 'Pulsos, µs',
  'remote.value.gaps': 'Pausas, µs',
  'remote.value.burst': 'Ráfaga',
  'remote.value.repeats': 'Ráfagas; repeticiones',
  'remote.value.width': 'Anchura (99 % de la potencia)',
  'remote.value.snr': 'Sobre el ruido',
  'remote.value.clipped': 'Saturado',
  'remote.modulation.OOK': 'portadora encendida y apagada (OOK)',
  'remote.modulation.2-FSK': 'dos tonos (2-FSK)',
  'remote.modulation.unsure': 'no está claro',

  'remote.pictures': 'Imágenes',
  'remote.pictures.content':
    'Dibujadas de modo que ninguna imagen pueda devolver lo emitido: los picos se mantienen sobre grupos enteros de pulsos.',
  'remote.spectrum': 'Espectro mientras emite',
  'remote.spectrum.key':
    'La frecuencia va hacia la derecha, la intensidad hacia arriba. Línea fina: el aire mientras el mando calla. Línea discontinua: portadora o tonos.',
  'remote.spectrum.apart': 'Están demasiado lejos para una misma escala: cada uno tiene la suya.',
  'remote.spectrum.says': '{name}: portadora {carrier}, anchura {width}, {snr}\u00a0dB sobre el ruido.',
  'remote.waterfall': 'Cascada',
  'remote.waterfall.key':
    'El tiempo va hacia la derecha, la frecuencia hacia arriba; cuanto más fuerte, más intenso el color.',
  'remote.waterfall.range': 'de {low} a {high}',
  'remote.waterfall.says':
    '{name}: {bursts, plural, one {# ráfaga} other {# ráfagas}} en {seconds}, en torno a {carrier}.',
  'remote.burst': 'Una ráfaga de cada uno, con el mismo comienzo',
  'remote.burst.key':
    'El tiempo va hacia la derecha, la intensidad hacia arriba. El contorno de la ráfaga más larga; las pausas de dentro están cerradas.',
  'remote.burst.says': '{name}: duración {length}.',
  'remote.pulse': 'Pulso medio de cada uno, con el mismo comienzo',
  'remote.pulse.key':
    'El tiempo va hacia la derecha, la intensidad hacia arriba. Dieciséis pulsos o más, superpuestos.',
  'remote.pulse.says': '{name}: media de {pulses} pulsos; duraciones usuales {lengths} µs.',
  'remote.pulse.none': '{name}: ninguno, porque dos tonos no tienen pulsos o hay muy pocos.',

  'remote.bands': 'Qué está permitido donde circula el coche',
  'remote.bands.note': 'Solo información; decide la ley local, y ningún resultado depende de ello.',
  'remote.region': 'Región',
  'remote.region.europe': 'Europa',
  'remote.region.north-america': 'Norteamérica',
  'remote.region.japan': 'Japón',
  'remote.region.south-korea': 'Corea del Sur',
  'remote.region.china': 'China',
  'remote.region.australia-new-zealand': 'Australia y Nueva Zelanda',
  'remote.band.usual': 'Aquí son habituales los mandos',
  'remote.band.limit': 'Límite',
  'remote.band.range': 'de {low} a {high} MHz',
  'remote.band.source': 'Fuente: {source}',
  'remote.band.memory': 'De memoria, sin contrastar con una fuente',
  'remote.band.none': '{carrier} no está en ninguna banda conocida aquí para esta región.',
  'remote.band.field': 'A {carrier} eso son {microvolts} µV/m ({decibels} dBµV/m) a 3 m.',

  'remote.keep': 'Guardar el resultado en el trabajo',
  'remote.keep.note': 'Resultado, motivos y valores principales; ni grabación ni imagen.',
  'remote.key.original': 'El original es la llave',
  'remote.key.new': 'El mando nuevo es la llave',
  'remote.record': 'Registrar el resultado',
  'remote.recorded': 'Registrado.',

  'fact.remote-compared':
    '{fresh, select, none {Radio del mando nuevo} other {Radio de la llave {fresh}}} frente {original, select, none {al original} other {a la llave {original}}}: {verdict}',
}
