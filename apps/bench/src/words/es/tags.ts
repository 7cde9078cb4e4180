import type { SameCodes } from '@shearline/jobfile'
import type { tagWords as english } from '../en/tags.ts'

/** Tags that tell keys apart: printing them and finding a key by its tag. */
export const tagWords: SameCodes<typeof english> = {
  'tags.find': 'Buscar una llave por su etiqueta',
  'tags.find.how': 'Poner la etiqueta de la llave dentro del marco.',
  'tags.find.other': 'Eso es un código, pero no la etiqueta de una llave. Se sigue buscando.',
  'tags.find.code': 'O teclear los cuatro signos de la etiqueta',
  'tags.find.code.hint': 'Están debajo del código cuadrado.',
  'tags.find.do': 'Buscarla',
  'tags.find.unknown':
    'Ninguna llave de este trabajo tiene el código {code}. Leerlo otra vez; 0, 1, I, L, O y U no se imprimen nunca.',
  'tags.chosen': 'La que está en la mano',
  'tags.found': 'En la mano: {key}',
  'tags.found.is':
    '{origin, select, new {{taught, select, true {Una llave nueva, dada de alta en este trabajo.} other {Una llave nueva, aún sin dar de alta.}}} other {{taught, select, true {Una llave del cliente, dada de alta en este trabajo.} other {Una llave del cliente.}}}}',
  'tags.found.go': 'Mostrar su ficha',
  'tags.elsewhere': 'No es una llave de este banco',
  'tags.elsewhere.job': 'Es la llave {key} de otro trabajo. Mantenerla apartada de las llaves de este.',
  'tags.elsewhere.gone':
    'La etiqueta dice llave {key} de este trabajo, y ahora no consta ninguna llave así en el registro.',
  'tags.elsewhere.open': 'Abrir ese trabajo',
  'tags.print': 'Imprimir etiquetas',
  'tags.print.what':
    'Una etiqueta por llave: su letra y color, el número del trabajo y un código con el que la cámara la encuentra. No lleva coche, nombre ni dirección: una etiqueta perdida no dice a nadie dónde vale la llave.',
  'tags.print.keys': '¿Para qué llaves?',
  'tags.print.used': 'Puestos de la hoja ya usados',
  'tags.print.used.hint': 'Una hoja tiene {count} puestos, contados fila a fila.',
  'tags.print.make': 'Crear la hoja',
  'tags.print.busy': 'Creando la hoja …',
  'tags.print.ready': 'La hoja está lista: guardarla e imprimirla a tamaño real.',
  'tags.print.save': 'Guardar la hoja',
  'tags.sheet.title': 'Etiquetas de llaves, trabajo {job}',
}
