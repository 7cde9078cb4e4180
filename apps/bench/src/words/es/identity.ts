import type { SameCodes } from '@shearline/jobfile'
import type { identityWords as english } from '../en/identity.ts'

/** Which key and which control unit is which: what the car shows, and names that may mean one. */
export const identityWords: SameCodes<typeof english> = {
  'keys.shown-as': 'Cómo muestra el coche esta llave',
  'keys.shown-as.hint':
    'Algunos coches numeran cada llave o muestran su identidad: «llave 3». Las llaves que se muestran igual son una sola para el coche.',
  'keys.shown-as.is': 'El coche la muestra como: {words}',
  'keys.shown-as.title': 'Cómo muestra el coche cada llave',
  'keys.shown-as.record': 'Registrar lo que muestra el coche',
  'tally.shown-as':
    '{words}: {count, plural, one {llave {keys}} other {llaves {keys}, que para el coche son una sola}}',
  'units.ask.title': '¿Una unidad de control o dos?',
  'units.ask':
    'Los escaneos nombran «{unit}» y «{other}». Solo quien está ante el coche puede ver si son la misma unidad de control. Hasta que se diga, se comparan como dos.',
  'units.ask.same': 'Una unidad',
  'units.ask.two': 'Dos unidades',
  'faults.unit.also': '{unit} (también: {names})',
  'fact.unit-matched.same': '{unit} y {other} son una sola unidad de control',
  'fact.unit-matched.two': '{unit} y {other} son dos unidades de control',
}
