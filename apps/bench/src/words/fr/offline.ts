import type { SameCodes } from '@shearline/jobfile'
import type { offlineWords as english } from '../en/offline.ts'

/** French: What is kept without a connection, clocks that differ, and newer versions of the bench. */
export const offlineWords: SameCodes<typeof english> = {
  'clock.ahead':
    'L’horloge de cet appareil avance de {minutes, plural, one {# minute} other {# minutes}} sur celle du serveur. Les heures du registre la suivent : la régler dès que possible.',
  'clock.behind':
    'L’horloge de cet appareil retarde de {minutes, plural, one {# minute} other {# minutes}} sur celle du serveur. Les heures du registre la suivent : la régler dès que possible.',
  'clock.other-ahead':
    'L’horloge de « {name} » avance de {minutes, plural, one {# minute} other {# minutes}}. Ses faits figurent au registre plus tard qu’ils n’ont été faits.',
  'renewal.ready':
    'Une nouvelle version est prête. Recharger quand cela convient ; tout ce qui est consigné reste.',
  'renewal.job-open':
    'Une intervention est ouverte dans une autre fenêtre de ce navigateur. L’y fermer d’abord, puis recharger.',
  'renewal.reload': 'Recharger',
  'board.unsent':
    '{count, plural, one {# fait enregistré ici, pas encore envoyé} other {# faits enregistrés ici, pas encore envoyés}}',
  'sending.reading': 'Vérification de ce qui est gardé',
  'sending.full.reading': 'Vérification de ce qui est gardé sur cet appareil et de ce qui est envoyé.',
  'sending.upload': 'Envoi de {name} : {sent} sur {whole}',
  'device.whole': 'L’établi entier est gardé sur cet appareil : il s’ouvre et fonctionne sans connexion.',
  'device.not-whole':
    'L’établi n’est pas encore entier ici. Rester connecté jusqu’à ce que cette ligne le dise.',
  'device.room': 'L’établi occupe {used} sur cet appareil.',
  'device.droppable':
    'Quand la place manque : les enregistrements déjà envoyés peuvent être retirés d’ici. Les faits et les documents restent.',
  'device.drop-sent': 'Retirer les enregistrements envoyés ({size})',
}
