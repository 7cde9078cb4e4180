import type { SameCodes } from '@shearline/jobfile'
import type { manyScansWords as english } from '../en/many-scans.ts'

/** French: Many scans in one picture, and a report that was shared to the bench. */
export const manyScansWords: SameCodes<typeof english> = {
  'faults.columns': 'Colonnes',
  'faults.columns.moments': '{count, plural, one {# moment} other {# moments}}',
  'faults.columns.scans': '{count, plural, one {le scan} other {chacun des # scans}}',
  'faults.scan-head': '{phase}, {day} {time}',
  'faults.filter.changed': 'Changés ({count, number})',
  'report.was-kept': 'Ce qui a été gardé',

  'title.shared': 'Rapport partagé · Shearline',
  'shared.title': 'Un rapport a été partagé',
  'shared.title.none': 'Aucun rapport partagé',
  'shared.which':
    'Pour quelle intervention est-il ? Rien n’est gardé avant que vous ayez regardé ce qui a été compris.',
  'shared.none':
    'Rien n’attend ici. Un rapport qu’une autre application partage avec l’établi attend ici jusqu’à ce que vous disiez pour quelle intervention il est.',
  'shared.text': 'texte partagé',
  'shared.discard': 'Abandonner {name}',
  'shared.no-job':
    'Il n’y a pas encore d’intervention. En ouvrir une, puis partager de nouveau ou revenir à cette page.',
  'shared.waiting': 'Un rapport a été partagé avec cette intervention : {name}.',
  'shared.read': 'Le lire maintenant',
  'shared.failed':
    'Rien n’a pu être repris : ce qui a été partagé est vide, dépasse {most}, ou cet appareil manque de place. Partagez un fichier plus petit, ou ouvrez-le dans son intervention.',
}
