import type { SameCodes } from '../catalogues.ts'
import type { practiceWords as english } from '../en/practice.ts'

/** French: Training at the practice car: exercises, what came of an action, and why points were lost. */
export const practiceWords: SameCodes<typeof english> = {
  'practice.one-more-key': 'Une clé de plus',
  'practice.one-more-key.story':
    'Deux clés marchent et la personne cliente en veut une troisième. Le véhicule ajoute une clé et garde les autres. Vérifier ensuite chaque clé.',
  'practice.forgotten-at-home': 'Une clé est restée à la maison',
  'practice.forgotten-at-home.story':
    'Le véhicule réécrit sa liste quand la session est fermée. La deuxième clé est à la maison, à une demi-heure. Une troisième est mémorisée, que personne n’a.',
  'practice.dies-after-second-key': 'La session meurt après la deuxième clé',
  'practice.dies-after-second-key.story':
    'Un matin froid, une batterie faible, pas de sauvegarde. La liste est réécrite à chaque clé. Faire en sorte que tout le monde rentre à la maison.',
  'practice.erased-and-cut': 'La liste est effacée, puis la liaison tombe',
  'practice.erased-and-cut.story':
    'Le véhicule n’ouvre une session qu’avec une clé qui marche, et oublie toutes les clés à cet instant. Une sauvegarde prouvée de la liste est disponible, et une télécommande a une pile à plat.',
  'practice.clone-on-the-ring': 'Deux clés qui n’en font qu’une',
  'practice.clone-on-the-ring.story':
    'Le véhicule veut deux clés différentes qui marchent avant d’en prendre une troisième. Deux clés pendent à l’anneau ; l’une est un clone.',
  'practice.list-is-full': 'La liste est pleine',
  'practice.list-is-full.story':
    'Quatre places, quatre clés mémorisées, deux perdues depuis longtemps. Le véhicule perd la plus ancienne sans un mot quand il en prend une autre.',
  'practice.misread-code': 'Le code a été mal lu',
  'practice.misread-code.story':
    'La session ne s’ouvre qu’avec un code, et quelqu’un a pris un 1 pour un 7. Chaque essai faux coûte vingt minutes. La batterie n’est pas des meilleures.',

  'practice.did.supply-on': 'Alimentation réglée sur {amperes} A : {volts} V.',
  'practice.did.scanned':
    '{faults, plural, =0 {Aucun défaut mémorisé} one {# défaut mémorisé} other {# défauts mémorisés}} ; {units, plural, one {# calculateur a répondu} other {# calculateurs ont répondu}}.',
  'practice.did.cleared': 'Mémoires de défauts effacées ; le calculateur d’airbags n’a pas été touché.',
  'practice.did.cycled': 'Contact coupé et remis.',
  'practice.did.session-opened': 'La session est ouverte.',
  'practice.did.session-refused': 'Le véhicule n’ouvre pas la session.',
  'practice.did.session-wants-code': 'Le véhicule veut d’abord le code.',
  'practice.did.code-accepted': 'Le véhicule accepte le code.',
  'practice.did.code-refused':
    'Le véhicule refuse le code{minutes, plural, =0 {.} one { et n’en prend pas d’autre pendant # minute.} other { et n’en prend pas d’autre pendant # minutes.}}',
  'practice.did.code-wait':
    'Le véhicule attend encore : il prendra un code dans {minutes, plural, one {# minute} other {# minutes}}.',
  'practice.did.code-not-wanted': 'Ce véhicule ne demande pas de code.',
  'practice.did.stopped': 'La session a été arrêtée.',
  'practice.did.no-session': 'Aucune session n’est ouverte.',
  'practice.did.session-closed':
    'La session est fermée ; {stored, plural, one {# clé est mémorisée} other {# clés sont mémorisées}}.',
  'practice.did.session-too-few':
    'Trop peu de clés ont été apprises : la session s’est terminée sans être fermée ; {stored, plural, one {# clé est mémorisée} other {# clés sont mémorisées}}.',
  'practice.did.no-backup': 'Il n’y a pas de sauvegarde.',
  'practice.did.restored':
    'La liste sauvegardée est de retour ; {stored, plural, one {# clé est mémorisée} other {# clés sont mémorisées}}.',
  'practice.did.waited': '{minutes, plural, one {# minute} other {# minutes}} plus tard : {volts} V.',
  'practice.did.no-such-key': 'Il n’y a pas de clé {key} ici.',
  'practice.did.show-taken':
    'La clé {key} a été prise : {taught, plural, one {# apprise} other {# apprises}} dans cette session.',
  'practice.did.show-no-session': 'La clé {key} a été présentée, mais aucune session n’est ouverte.',
  'practice.did.show-not-accepted': 'La clé {key} n’a pas été prise.',
  'practice.did.show-same-key': 'La clé {key} est déjà connue de cette session.',
  'practice.did.show-list-full': 'La clé {key} n’a pas été prise : la liste est pleine.',
  'practice.did.start-started': 'La clé {key} démarre le véhicule.',
  'practice.did.start-key-not-accepted':
    'La clé {key} n’est pas acceptée. Le véhicule en garde un code défaut.',
  'practice.did.start-battery-too-weak':
    'La clé {key} est acceptée, mais la batterie est trop faible pour lancer le moteur : {volts} V.',
  'practice.did.start-not-on-the-bench': 'La clé {key} n’est pas ici.',
  'practice.did.button-works': 'Les boutons de la clé {key} marchent.',
  'practice.did.button-dead': 'Les boutons de la clé {key} ne font rien.',
  'practice.did.fetched': 'La clé {key} a été cherchée. Cela a pris une demi-heure.',
  'practice.did.cell-new': 'La clé {key} a une pile neuve.',
  'practice.did.incident-supply-lost':
    'L’alimentation est perdue ! La session est terminée ; maintenant {volts} V.',
  'practice.did.incident-link-lost': 'La liaison avec le véhicule est perdue ! La session est terminée.',

  'practice.mark.stranded': 'Aucune clé ici ne démarre le véhicule : la personne cliente est immobilisée.',
  'practice.mark.session-open': 'La session est restée ouverte.',
  'practice.mark.key-does-not-start': 'La clé {key} ne démarre pas le véhicule.',
  'practice.mark.start-not-proven': 'Personne n’a essayé de démarrer le véhicule avec la clé {key}.',
  'practice.mark.buttons-not-proven': 'Personne n’a essayé les boutons de la clé {key}.',
  'practice.mark.no-scan-before': 'Aucun scan des défauts avant le travail.',
  'practice.mark.no-scan-after': 'Aucun scan des défauts après le travail.',
  'practice.mark.no-supply': 'Une batterie faible, et pas d’alimentation de soutien avant la session.',
}
