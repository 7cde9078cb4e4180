import type { SameCodes } from '@shearline/jobfile'
import type { reportWords as english } from '../en/reports.ts'

/** German: Reports kept beside what was understood, and what was confirmed before clearing. */
export const reportWords: SameCodes<typeof english> = {
  'report.kept-beside':
    'Der Bericht wird neben dieser Liste als Text aufbewahrt. Öffnungscodes, Telefonnummern und E-Mail-Adressen darin werden vorher unkenntlich gemacht.',
  'report.kept.title': 'Berichte im Protokoll',
  'report.kept.one': 'Scan {phase}, {day} {time}: {name}',
  'report.kept.pasted': 'eingefügter Text',
  'report.kept.loading': 'Der Bericht wird geholt.',
  'report.kept.gone':
    'Der Bericht ist nicht hier: Er wurde gelöscht, als seine Frist um war, oder dieses Gerät hat keine Verbindung.',
  'clear.airbag':
    'Airbagcodes von vor der Arbeit bleiben, und alles andere in ihrem Steuergerät auch. Niemand löscht sie, damit eine Leuchte ausgeht.',
  'fact.clear-acknowledged.scan-saved': 'Bestätigt: Jeder Code steht vorher im Protokoll.',
  'fact.clear-acknowledged.airbag': 'Bestätigt: Airbagcodes von vor der Arbeit bleiben.',
  'fact.clear-acknowledged.emissions': 'Bestätigt: Die Abgas-Prüfbereitschaft beginnt von vorn.',
  'fact.clear-acknowledged.permanent': 'Bestätigt: Permanente Codes bleiben, bis das Fahrzeug sie löscht.',
}
