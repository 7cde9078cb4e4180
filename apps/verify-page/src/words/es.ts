/** @module The Spanish words of the verify page. */
import type { SameCodes } from '@shearline/jobfile'
import type { en as english } from './en.ts'

export const es: SameCodes<typeof english> = {
  'page.language': 'Idioma',
  'page.title': 'Comprobar un documento de entrega',
  'page.lead':
    'Suelte aquí el documento o el paquete que le entregó la empresa. Se comprueba dentro de esta página: nada sale de este dispositivo y no hace falta conexión.',
  'page.drop': 'Soltar el archivo aquí',
  'page.choose': 'Elegir el archivo',
  'page.another': 'Comprobar otro archivo',
  'page.kinds': 'Un documento sellado (PDF), un registro (JSON) o un paquete (ZIP)',
  'page.foot':
    'Esta página hace las mismas comprobaciones que el comando «shearline verify». Guárdela junto a sus documentos: funciona mientras funcionen los navegadores.',
  'page.no-signatures':
    'Este navegador no puede comprobar firmas Ed25519, así que esta página no puede probar nada aquí. Ábrala en un navegador más reciente.',
  'busy.read': 'Comprobando {name}: {share} % leído ...',
  'busy.stop': 'Parar',
  'busy.stopped': 'Parado. No se probó nada.',
  'busy.failed': 'No se pudo leer el archivo: {why} Elíjalo de nuevo.',
  'verdict.holds': 'Es válido',
  'verdict.holds-means': '{name} es, byte a byte, lo que se selló, y dice lo que dice su registro.',
  'verdict.holds-bundle':
    '{name} es, byte a byte, lo que se empaquetó, y cada anotación que contiene está probada.',
  'verdict.holds-record':
    'Cada anotación de {name} está probada. Es un registro solo: no hay páginas que comparar.',
  'verdict.fails': 'No es válido',
  'verdict.fails-means':
    '{count, plural, one {Hay un punto incorrecto en {name}.} other {Hay # puntos incorrectos en {name}.}} No se fíe de él.',
  'mark.holds': 'correcto',
  'mark.fails': 'incorrecto',
  'mark.unknown': 'no se sabe',
  'check.line': '{check}: {mark}',
  'check.seal': 'El sello',
  'check.seal.holds':
    'Su firma es correcta: el dispositivo nombrado abajo selló exactamente esta lista de partes.',
  'check.seal.fails': 'No hay ningún sello cuya firma sea correcta.',
  'check.bytes': 'Cada byte',
  'check.bytes.holds':
    'Cada uno de los {bytes} bytes fuera del lugar del sello es el que se selló, y el sello está como se escribió.',
  'check.bytes.fails':
    '{count, plural, =0 {Las partes del archivo son las que se sellaron, pero el final del archivo no está como se escribió el sello.} one {De {all} partes del archivo, una no es la que se selló.} other {De {all} partes del archivo, # no son las que se sellaron.}}',
  'check.bytes.unknown': 'Sin un sello correcto nadie puede decir qué bytes pertenecen al archivo.',
  'check.zip.holds': 'Cada byte del archivo ZIP es el que se empaquetó, y la lista de archivos está firmada.',
  'check.zip.fails': 'El archivo ZIP o la lista de sus archivos no es lo que se empaquetó.',
  'check.facts': 'Anotaciones y firmas',
  'check.facts.holds':
    '{facts, plural, one {La única anotación está firmada y enlazada} other {Las # anotaciones están todas firmadas y enlazadas}}; {signatures, plural, one {una firma es correcta} other {# firmas son correctas}}.',
  'check.facts.fails':
    '{facts, plural, one {Hay una anotación} other {Hay # anotaciones}}; {signatures, plural, one {una firma es correcta} other {# firmas son correctas}}. Lo que está mal se indica abajo.',
  'check.facts.unknown': 'No se pudo leer ninguna anotación.',
  'check.hashes': 'Valores hash',
  'check.hashes.holds':
    '{hashes, plural, one {Un hash se calculó de nuevo y es correcto} other {# hashes se calcularon de nuevo y son correctos}}.',
  'check.hashes.fails':
    '{hashes, plural, one {Un hash se calculó de nuevo y es correcto} other {# hashes se calcularon de nuevo y son correctos}}; otros no lo son.',
  'check.pages': 'Páginas y registro',
  'check.pages.holds': 'Las páginas impresas dicen lo que dice el registro firmado, carácter por carácter.',
  'check.pages.fails': 'Las páginas impresas no dicen lo que dice el registro firmado.',
  'check.pages.unknown':
    'Eso solo se sabe cuando cada byte es el que se selló, el registro está probado y esta página de comprobación es de la versión que creó el documento.',
  'wrong.title': 'Qué no es válido, y dónde',
  'wrong.note': 'Conviene saber',
  'wrong.notes': 'Lo que conviene saber',
  'who.title': 'De quién es el sello',
  'who.device': 'Dispositivo',
  'who.print': 'Huella de la clave (SHA-256)',
  'who.packed': 'Empaquetado por',
  'who.means':
    'Un sello correcto prueba que nada cambió desde que esta clave lo selló. De quién es la clave, solo puede decirlo la empresa: compare la huella con una que haya recibido de la empresa por otra vía.',
  'who.compare': 'Huella que recibió de la empresa',
  'who.same': 'Es la misma: esta clave pertenece a quien le dio esa huella.',
  'who.other': 'Es otra: el documento no se selló con la clave que usted conoce.',
  'who.short': 'Escriba las 64 cifras y letras; {count, plural, one {hay # escrita} other {hay # escritas}}.',
  'strip.title': 'El archivo, del primer byte al último',
  'strip.alt':
    '{count, plural, one {Una parte} other {# partes}} en el orden del archivo; {changed, plural, =0 {ninguna ha cambiado} one {una ha cambiado} other {# han cambiado}}. La lista de abajo nombra cada una.',
  'strip.seal': 'el lugar del sello',
  'strip.parts': '{count, plural, one {Una parte} other {# partes}}, byte a byte',
  'strip.part': 'Parte',
  'strip.from': 'Primer byte',
  'strip.to': 'Último byte',
  'strip.state': 'Estado',
  'facts.title': '{count, plural, one {Una anotación} other {# anotaciones}} del registro',
  'facts.fact': 'Anotación',
  'facts.at': 'Registrada (UTC)',
  'facts.by': 'Por',
  'file.title': 'El archivo',
  'file.name': 'Nombre',
  'file.bytes': 'Tamaño en bytes',
  'file.job': 'Trabajo',
}
