import type { SameCodes } from '../catalogues.ts'
import type { remoteWords as english } from '../en/remote.ts'

/** Are two remotes of one radio family: the verdict, its reasons, and what was met while measuring. */
export const remoteWords: SameCodes<typeof english> = {
  'remote-verdict.same': 'Misma familia de radio',
  'remote-verdict.different': 'Radio distinta',
  'remote-verdict.unsure': 'No es seguro',

  'remote-reason.modulation':
    '{same, select, yes {Los dos emiten con {original}.} other {El original emite con {original}, el nuevo con {new}.}}',
  'remote-reason.modulation-unknown': 'No está claro cómo emite: original {original}, nuevo {new}.',
  'remote-reason.carrier': 'Las portadoras están separadas {difference}: original {original}, nuevo {new}.',
  'remote-reason.carrier-unknown':
    'No se conoce la frecuencia central de una grabación, así que no se pueden comparar las portadoras.',
  'remote-reason.carrier-drifted':
    'La portadora del nuevo se desvía {difference}. Un receptor estrecho del coche puede oírlo solo de cerca, aunque su pila sea nueva.',
  'remote-reason.timing':
    '{unmatched, select, both {Cada uno tiene duraciones de pulso que el otro no tiene} other {Las duraciones de pulso difieren un {percent}\u00a0%}}: original {original} µs, nuevo {new} µs.',
  'remote-reason.timing-part':
    'Solo se puede comparar una parte de las duraciones de pulso: original {original} µs, nuevo {new} µs.',
  'remote-reason.deviation':
    'Las desviaciones de frecuencia difieren un {percent}\u00a0%: original {original}, nuevo {new}.',
  'remote-reason.symbol-rate':
    'Los ritmos de símbolos difieren un {percent}\u00a0%: original {original}, nuevo {new} por segundo.',
  'remote-reason.other-sender-matches':
    'Un emisor más débil de una grabación encaja con la otra: quizá el más fuerte no era el mando.',
  'remote-reason.no-sender':
    '{side, select, original {Original} other {Mando nuevo}}: no se encontró ningún emisor.',
  'remote-reason.weak':
    '{side, select, original {Original} other {Mando nuevo}}: solo {snr}\u00a0dB sobre el ruido; hacen falta 6 dB.',
  'remote-reason.off-centre':
    '{side, select, original {Original} other {Mando nuevo}}: la portadora está en el borde de lo grabado, a {offset} del centro.',
  'remote-reason.clipped':
    '{side, select, original {Original} other {Mando nuevo}}: el {percent}\u00a0% de la grabación está saturado.',
  'remote-reason.foreign-on-top':
    '{side, select, original {Original} other {Mando nuevo}}: hay otro emisor superpuesto.',
  'remote-reason.several-senders':
    '{side, select, original {Original} other {Mando nuevo}}: dos emisores son más o menos igual de fuertes.',
  'remote-reason.few-pulses':
    '{side, select, original {Original} other {Mando nuevo}}: hay muy pocos pulsos para medir.',

  'remote-finding.no-sender':
    'No se encontró ningún emisor. Grabar otra vez y mantener pulsado el botón dos segundos.',
  'remote-finding.weak':
    'Solo {snrDb}\u00a0dB sobre el ruido; hacen falta 6 dB. Acercar el mando y grabar otra vez.',
  'remote-finding.off-centre':
    'La portadora está a {offset} del centro. Sintonizar el receptor más cerca de ella y grabar otra vez.',
  'remote-finding.clipped':
    'El {percent}\u00a0% de los valores está saturado. Bajar la ganancia o alejarse, y grabar otra vez.',
  'remote-finding.foreign-on-top': 'Hay otro emisor superpuesto. Esperar a que calle y grabar otra vez.',
  'remote-finding.several-senders':
    'Dos emisores son más o menos igual de fuertes. Poner el mando cerca del receptor y grabar otra vez.',
  'remote-finding.few-pulses':
    'Hay muy pocos pulsos para medir. Mantener pulsado el botón dos segundos y grabar otra vez.',
  'remote-finding.rate-unknown': 'No se conoce la frecuencia de muestreo. Indicarla abajo.',
  'remote-finding.rate-unusable':
    'Una frecuencia de muestreo de {rate} por segundo no se puede usar. Revisarla abajo.',
  'remote-finding.format-unknown': 'No se conoce el formato de las muestras. Elegirlo abajo.',
  'remote-finding.centre-unknown':
    'No se conoce la frecuencia central, así que la portadora se da solo respecto al centro.',
  'remote-finding.empty-recording': 'La grabación tiene {samples} muestras: muy pocas para medir.',
  'remote-finding.cut-sample':
    'Los últimos bytes no forman una muestra entera y se dejaron fuera. Si los valores parecen erróneos, revisar el formato de las muestras.',
  'remote-finding.not-numbers': '{values} valores no eran números. Revisar el formato de las muestras.',
  'remote-finding.parts-dropped':
    'La grabación es larga: se dejó fuera el {share}\u00a0% más silencioso. Si falta la pulsación, grabar menos tiempo.',
  'remote-finding.other-sender':
    'Se oyó otro emisor a {offset} del centro. No importa si el mando era el más fuerte.',
  'remote-finding.some-clipping':
    'El {percent}\u00a0% de los valores está saturado; lo que aquí se mide no sufre por ello.',
  'remote-finding.carrier-wanders':
    'La portadora se mueve {drift} dentro de la grabación. Revisar la pila y la placa de este mando.',
  'remote-finding.sigmf-unreadable': 'No se puede leer el archivo SigMF. Indicar los valores abajo.',
  'remote-finding.sigmf-field': 'El archivo SigMF no dice {field}. Indicar el valor abajo.',
  'remote-finding.sigmf-datatype':
    'El formato de muestras SigMF {datatype} no se conoce aquí. Convertir la grabación.',
  'remote-finding.sigmf-channels':
    'La grabación tiene {channels} canales en un archivo. Escribir un canal en un archivo propio.',
  'remote-finding.sigmf-retuned':
    'El receptor se resintonizó mientras grababa; se usa su primera frecuencia central. Mejor grabar otra vez.',
}
