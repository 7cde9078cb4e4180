import type { SameCodes } from '@shearline/jobfile'
import type { teachingRehearsalWords as english } from '../en/teaching-rehearsal.ts'

/** French: The rehearsal: order, guards, the line of steps, what a stop leaves and the way back. */
export const teachingRehearsalWords: SameCodes<typeof english> = {
  'rehearsal.title': 'Simulation : pas à pas, et ce qui vaut si cela s’arrête',
  'rehearsal.again': 'La relire',
  'rehearsal.read': 'Lue dans l’ordre {order}. {wayBack}',
  'rehearsal.no-keys':
    'Aucune clé n’est encore à apprendre : étiqueter d’abord les clés sur la table et la nouvelle.',
  'rehearsal.label-new': 'Étiqueter la nouvelle clé',
  'rehearsal.missing':
    '{count, plural, one {La clé {keys} n’y est pas} other {Les clés {keys} n’y sont pas}} : la relire.',
  'rehearsal.no-new':
    'Aucune nouvelle clé n’est encore étiquetée. L’étiqueter d’abord ci-dessus, pour qu’elle soit simulée aussi.',
  'rehearsal.working': 'Parcours de toutes les façons dont cela peut s’arrêter ...',
  'rehearsal.too-much-unknown':
    'Trop de choses ne sont pas connues pour répondre. Indiquer le genre de session, les places de la liste ou ce qui l’ouvre.',
  'rehearsal.open': 'Session ouverte',
  'rehearsal.opened': 'ouverte',
  'rehearsal.closed': 'Session fermée',
  'rehearsal.closed-short': 'fermée',
  'rehearsal.cannot-open': 'Selon cette règle, la session ne peut pas être ouverte avec ce qui est ici.',
  'rehearsal.better': 'Un ordre plus sûr : {order}.',
  'rehearsal.take-better': 'Le prendre',
  'rehearsal.key': 'Clé {key}',
  'rehearsal.earlier': 'Plus tôt',
  'rehearsal.length': 'Durée de la session : {time}.',
  'rehearsal.stranded':
    '{count, plural, =0 {Où que cela s’arrête, une clé ici démarre encore le véhicule.} one {À # étape, le véhicule peut rester sans clé qui le démarre.} other {À # étapes, le véhicule peut rester sans clé qui le démarre.}}',
  'rehearsal.sure':
    'Lire chaque ligne. Le pire retour ci-dessus est ce que vous promettez à la personne cliente.',
  'rehearsal.record': 'Je l’ai lue',

  'order.title': 'Ordre de présentation des clés',
  'order.earlier': 'Présenter la clé {key} plus tôt',
  'why.proven': 'Pourquoi cet ordre : tous les autres ont été écartés',
  'why.best-found': 'Pourquoi cet ordre : le meilleur trouvé',
  'why.at-open': 'après l’ouverture',
  'why.at-key': 'après la clé {key}',

  'guards.title': 'Avant l’ouverture',
  'guards.all': 'Avant l’ouverture : tout est réglé',
  'guards.open':
    '{count, plural, one {Avant l’ouverture : # point à régler} other {Avant l’ouverture : # points à régler}}',
  'guards.met': 'Réglé : {guards}.',

  'line-of-steps': 'La session comme une ligne d’étapes',
  'mark.safe': 'comme avant',
  'mark.loses': 'perd {keys}',
  'mark.stranded': 'immobilisé',
  'end-mark.safe': 'toutes démarrent',
  'end-mark.loses': 'certaines cessent',
  'end-mark.stranded': 'aucune ne démarre',
  'stop-here.title': '{step} : si quelque chose arrive maintenant',
  'stop-here.goes-on': 'La session continue ; à sa fin :',
  'stop-here.spoiled': 'Gâchées : {keys}.',
  'cause.of-key': '{cause} ({key})',
  'list-or': ' / ',

  'way.going': 'Pour repartir :',
  'way.finished': 'Pour finir le travail :',
  'way.goes': 'Le véhicule peut rouler avec {keys}.',
  'way.in': '{way}, {time}.',
  'way.not-proven': 'Un chemin plus court existe peut-être.',
  'lasting.none': 'aucun chiffre',
  'lasting.seconds': '{count, plural, one {{figure} seconde} other {{figure} secondes}}',
  'lasting.minutes': '{count, plural, one {{figure} minute} other {{figure} minutes}}',
}
