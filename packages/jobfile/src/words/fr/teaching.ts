import type { SameCodes } from '../catalogues.ts'
import type { teachingWords as english } from '../en/teaching.ts'

/** French: The rehearsal: what can go otherwise, the way back, why the order is as it is, what must be settled first. */
export const teachingWords: SameCodes<typeof english> = {
  'cause.supply-lost': 'L’alimentation a été perdue',
  'cause.link-lost': 'La liaison a été perdue',
  'cause.time-out': 'Le temps s’est écoulé',
  'cause.closed-early': 'La session a été fermée trop tôt',
  'cause.wrong-code': 'Un code faux a été saisi',
  'cause.wrong-key': 'Une clé d’un autre véhicule a été présentée',
  'cause.repeated-key': 'La même clé a été présentée de nouveau',
  'cause.key-refused': 'Une clé a été refusée',
  'cause.key-forgotten': 'Une clé n’est finalement pas ici',
  'cause.flat-cell': 'Une clé a une pile à plat',

  'recovery.start-with': 'Démarrer le véhicule avec la clé {key}',
  'recovery.emergency-start-with':
    'Démarrer avec la clé {key} en position de démarrage de secours, sa pile est à plat',
  'recovery.wait': 'Attendre',
  'recovery.wait-ignition-on': 'Attendre contact mis',
  'recovery.change-cell': 'Mettre une pile neuve dans la clé {key}',
  'recovery.fetch': 'Aller chercher la clé {key}',
  'recovery.enter-code': 'Saisir de nouveau le code',
  'recovery.open': 'Ouvrir une nouvelle session',
  'recovery.show': 'Présenter la clé {key}',
  'recovery.close': 'Fermer la session',
  'recovery.restore': 'Restaurer la sauvegarde',
  'recovery-way.use-key': 'Une clé ici démarre le véhicule',
  'recovery-way.reopen': 'Ouvrir une nouvelle session',
  'recovery-way.fetch': 'Aller chercher une clé',
  'recovery-way.restore': 'Restaurer la sauvegarde',
  'recovery-way.none': 'Pas de retour avec ce qui est ici',

  'order-reason.other-strands-more':
    'L’ordre {other} laisse le véhicule immobilisé à plus d’endroits : {at}.',
  'order-reason.other-strands-longer': 'L’ordre {other} laisse le véhicule immobilisé plus longtemps : {at}.',
  'order-reason.other-loses-more':
    'L’ordre {other} met en jeu plus de clés qui démarrent le véhicule maintenant : {at}.',
  'order-reason.other-spoils-more': 'L’ordre {other} peut gâcher plus de nouvelles clés : {at}.',
  'order-reason.other-shows-starting-keys-later':
    'L’ordre {other} ne coûte pas plus, mais présente plus tard une clé qui démarre le véhicule.',
  'order-reason.other-leaves-given-order':
    'L’ordre {other} est tout aussi bon ; celui qui était donné a été gardé.',
  'order-reason.only-order': 'Il n’y a qu’un seul ordre.',

  'guard.opens': 'La session s’ouvre avec ce qui est ici',
  'guard.code': 'Le code est disponible',
  'guard.backup-proven': 'La sauvegarde est prouvée',
  'guard.consent': 'La personne cliente a accepté que les clés absentes puissent cesser de fonctionner',
  'guard.supply': 'La tension est au-dessus de son seuil',
  'guard.all-keys-here': 'Chaque clé du véhicule est ici',
  'guard.idle-time': 'Chaque étape est plus rapide que l’attente de la session',
  'guard-meet.opens': 'Apporter ce qui l’ouvre : une autre clé acceptée, ou un matériel qui le peut.',
  'guard-meet.code': 'Obtenir le code par une voie légale avant d’ouvrir. Il n’est jamais écrit ici.',
  'guard-meet.backup-proven': 'Lire les données deux fois et comparer, au chapitre Sauvegarde.',
  'guard-meet.consent': 'Nommer les clés absentes et faire signer la personne cliente, ci-dessous.',
  'guard-meet.supply': 'Brancher une alimentation de soutien, fixer le seuil et noter une mesure.',
  'guard-meet.all-keys-here':
    'Demander chaque clé ; celle qui reste absente cessera peut-être de fonctionner.',
  'guard-meet.idle-time': 'Savoir combien de temps la session attend, et préparer les clés.',
  'guard-state.met': 'réglé',
  'guard-state.not-met': 'non réglé',
  'guard-state.not-said': 'pas connu',

  'archetype.replace-all-at-close': 'Réécrit la liste, enregistre à la fin',
  'archetype.replace-all-each-key': 'Réécrit la liste avec la première clé',
  'archetype.replace-all-erased-at-open': 'Vide la liste à l’ouverture',
  'archetype.replace-all-list-lost': 'Réécrit à la fin ; une interruption perd la liste',
  'archetype.append': 'Ajoute des clés jusqu’à ce que la liste soit pleine',
  'archetype.append-drop-oldest': 'Ajoute des clés ; une liste pleine perd la plus ancienne',
  'archetype.append-same-key-twice': 'Ajoute des entrées ; une clé peut prendre deux places',
  'archetype.self-add-two-keys': 'Deux clés qui marchent en font entrer une de plus',
  'archetype.code-gated-hour': 'Un code l’ouvre ; les essais faux coûtent une heure',
  'archetype.code-gated-ignition-on': 'Un code l’ouvre ; les essais faux coûtent 20 minutes de contact',
  'archetype.timed-wait': 'Contact mis et attente, sans matériel',
  'archetype.all-keys-lost': 'Plus aucune clé ne marche',
  'archetype.numbered-slots': 'Chaque clé a une place numérotée',
  'archetype.declared-count': 'On lui dit combien de clés il y aura',
  'archetype.pre-coded-key': 'Prend des clés livrées prêtes pour ce véhicule',
  'archetype.nothing-known': 'Rien n’est connu',
  'archetype-absent.replace-all-at-close':
    'Les clés absentes cessent de fonctionner, mais seulement une fois la session fermée.',
  'archetype-absent.replace-all-each-key':
    'Les clés absentes cessent de fonctionner dès que la première clé est prise.',
  'archetype-absent.replace-all-erased-at-open':
    'Toutes les clés cessent de fonctionner dès que la session s’ouvre ; seules celles qui sont prises démarrent de nouveau.',
  'archetype-absent.replace-all-list-lost':
    'Les clés absentes cessent de fonctionner ; si la session s’interrompt, toutes les clés aussi.',
  'archetype-absent.append': 'Les clés absentes continuent de fonctionner.',
  'archetype-absent.append-drop-oldest':
    'Les clés absentes continuent de fonctionner jusqu’à ce que la liste soit pleine ; alors la plus ancienne cesse sans un mot.',
  'archetype-absent.append-same-key-twice':
    'Les clés absentes continuent de fonctionner ; les places se remplissent avant qu’il y ait autant de clés.',
  'archetype-absent.self-add-two-keys': 'Les clés absentes continuent de fonctionner.',
  'archetype-absent.code-gated-hour': 'Les clés absentes cessent de fonctionner une fois la session fermée.',
  'archetype-absent.code-gated-ignition-on':
    'Les clés absentes cessent de fonctionner une fois la session fermée.',
  'archetype-absent.timed-wait':
    'Les clés absentes cessent de fonctionner dès que la première clé est prise.',
  'archetype-absent.all-keys-lost': 'Les clés retrouvées plus tard ne démarreront pas le véhicule.',
  'archetype-absent.numbered-slots':
    'Les clés absentes continuent de fonctionner, sauf si une nouvelle clé est mise à leur place.',
  'archetype-absent.declared-count': 'Les clés absentes cessent de fonctionner une fois la session fermée.',
  'archetype-absent.pre-coded-key': 'Les clés absentes continuent de fonctionner.',
  'archetype-absent.nothing-known': 'Compter que les clés absentes cessent de fonctionner.',

  'disturbed.list-rewritten': 'la liste des clés acceptées était ouverte',
  'disturbed.remote-list-rewritten': 'la liste des télécommandes était ouverte',
  'disturbed.supply-interrupted': 'l’alimentation a été interrompue ou soutenue',
  'disturbed.cell-changed': 'sa pile a été changée',
  'disturbed.case-opened': 'son boîtier était ouvert',
  'disturbed.blade-cut': 'sa lame a été taillée',
  'disturbed.lock-changed': 'une serrure a été changée',
  'disturbed.key-new': 'elle est nouvelle',
}
