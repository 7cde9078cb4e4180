import type { SameCodes } from '@shearline/jobfile'
import type { reportWords as english } from '../en/reports.ts'

/** French: Reports kept beside what was understood, and what was confirmed before clearing. */
export const reportWords: SameCodes<typeof english> = {
  'report.kept-beside':
    'Le rapport est gardé à côté de cette liste comme texte. Les codes d’ouverture, numéros de téléphone et adresses électroniques y sont d’abord rendus illisibles.',
  'report.kept.title': 'Rapports au registre',
  'report.kept.one': 'Scan {phase}, {day} {time} : {name}',
  'report.kept.pasted': 'texte collé',
  'report.kept.loading': 'Récupération du rapport.',
  'report.kept.gone':
    'Le rapport n’est pas ici : il a été supprimé à la fin de son délai, ou cet appareil n’a pas de connexion.',
  'clear.airbag':
    'Les codes d’airbag d’avant le travail restent, et tout le reste dans leur calculateur aussi. Personne ne les efface pour éteindre un voyant.',
  'fact.clear-acknowledged.scan-saved': 'Confirmé : chaque code est d’abord au registre.',
  'fact.clear-acknowledged.airbag': 'Confirmé : les codes d’airbag d’avant le travail restent.',
  'fact.clear-acknowledged.emissions': 'Confirmé : les tests antipollution repartent de zéro.',
  'fact.clear-acknowledged.permanent':
    'Confirmé : les codes permanents restent jusqu’à ce que le véhicule les efface.',
}
