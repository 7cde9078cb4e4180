import type { SameCodes } from '@shearline/jobfile'
import type { shellWords as english } from '../en/shell.ts'

/** French: Header, board, new job, this device, and what goes wrong. */
export const shellWords: SameCodes<typeof english> = {
  'app.name': 'Shearline',
  'app.device': 'Appareil',
  'app.skip': 'Aller au contenu',
  'app.loading': 'Un instant ...',
  'title.board': 'Interventions · Shearline',
  'title.new': 'Nouvelle intervention · Shearline',
  'title.job': 'Intervention · Shearline',
  'title.device': 'Cet appareil · Shearline',
  yes: 'Oui',
  no: 'Non',
  cancel: 'Annuler',
  close: 'Fermer',
  record: 'Consigner',
  reason: 'Motif',
  'reason.writing': 'Motif par écrit',
  'amount.more': 'Augmenter',
  'amount.less': 'Diminuer',
  'amount.unit': '{label} ({unit})',
  'names.add': 'Ajouter',
  'names.remove': 'Retirer {name}',
  'saved.here': 'enregistré ici',
  'saved.sent': 'envoyé',

  'sending.sent': 'Enregistré, tout envoyé',
  'sending.sending': 'Enregistré, envoi de {count}',
  'sending.waiting': 'Enregistré, {count} à envoyer',
  'sending.refused': 'Enregistré, non accepté',
  'sending.full.sent': 'Tout ce qui est sur cet appareil est aussi sur le serveur.',
  'sending.full.sending':
    'Tout est enregistré sur cet appareil. En cours d’envoi : {facts, plural, one {# fait} other {# faits}}{blobs, plural, =0 {} one { et # enregistrement} other { et # enregistrements}}.',
  'sending.full.waiting':
    'Tout est enregistré sur cet appareil. Reste à envoyer : {facts, plural, one {# fait} other {# faits}}{blobs, plural, =0 {} one { et # enregistrement} other { et # enregistrements}}. L’établi réessaie de lui-même, aussi après un redémarrage.',
  'sending.full.refused':
    'Tout est enregistré sur cet appareil et y reste. Le serveur n’a pas accepté {facts, plural, one {# fait} other {# faits}}{blobs, plural, =0 {} one { et # enregistrement} other { et # enregistrements}}.',
  'sending.refusal': '{what} ({code})',
  'sending.try': 'Essayer d’envoyer maintenant',

  'board.day':
    '{open, plural, =0 {Rien en cours} one {# intervention en cours} other {# interventions en cours}}{ready, plural, =0 {} one {, # alignée} other {, # alignées}}',
  'board.new': 'Nouvelle intervention',
  'board.earlier': 'Jours précédents',
  'board.invented': 'inventé',
  'board.where': '{place} · {when}',
  'board.empty.title': 'Pas encore d’intervention',
  'board.empty.what':
    'En ouvrir une à l’arrivée de la demande. Chacune apparaît alors ici comme son cylindre de serrure, avec la seule chose à faire ensuite.',
  'board.empty.call': 'Nouvelle intervention : quel véhicule, où, pour qui.',
  'board.empty.arrive':
    'Au véhicule : lire le VIN, étiqueter chaque clé, scanner avant de toucher à quoi que ce soit.',
  'board.empty.seal': 'Quand les sept goupilles sont alignées : sceller le document et remettre.',

  'new.title': 'Nouvelle intervention',
  'new.name': 'Nom de l’intervention',
  'new.name.hint': 'Pour la retrouver : « petit fourgon, clé perdue ».',
  'new.vehicle': 'Véhicule, avec les mots de la personne cliente',
  'new.vehicle.hint': 'Le genre et la couleur suffisent. Le VIN décide plus tard.',
  'new.place': 'Où il se trouve',
  'new.place.hint': 'Les heures de cette intervention sont en {zone}, le fuseau de cet appareil.',
  'new.work': 'Ce qui est demandé',
  'new.customer': 'Qui commande',
  'new.language': 'Langue de la personne cliente',
  'new.language.hint': 'Les consentements et le document de remise sont écrits dans cette langue.',
  'new.open': 'Ouvrir l’intervention',

  'device.title': 'Cet appareil',
  'device.by': 'Votre nom',
  'device.by.hint': 'Figure au registre à côté de tout ce que vous écrivez.',
  'device.name': 'Nom de cet appareil',
  'device.name.hint': 'Ce que lisent les autres : « tablette du fourgon 2 ».',
  'device.keep': 'Garder',
  'device.language': 'Langue de cet établi',
  'device.language.hint':
    'Ce que reçoit la personne cliente est écrit dans la langue fixée pour chaque intervention.',
  'device.light': 'Éclairage',
  'device.light.hint':
    'Contraste fort est noir sur blanc, à contours épais, pour le soleil et les yeux faibles.',
  'theme.auto': 'Comme l’appareil',
  'theme.light': 'Clair',
  'theme.dark': 'Sombre',
  'theme.sun': 'Contraste fort',
  'device.sending': 'Enregistré et envoyé',
  'device.kept': 'Gardé ici',
  'device.key':
    'Ce navigateur signe ce qu’il consigne avec une clé qui ne peut pas en sortir. Les autres reconnaissent l’appareil à :',
  'device.facts':
    '{count, plural, =0 {Rien n’est encore consigné avec cet appareil.} one {# fait est consigné avec cet appareil.} other {# faits sont consignés avec cet appareil.}}',
  'device.lasting': 'Le navigateur a promis de garder ce stockage.',
  'device.not-lasting':
    'Le navigateur peut abandonner ce stockage quand le disque est plein. Lui demander de le garder ; il accepte en général une fois l’établi souvent utilisé ou installé.',
  'device.ask-lasting': 'Demander au navigateur de le garder',

  'by.title': 'Qui travaille ?',
  'by.go-on': 'Continuer',
  'by.needed': 'Rien n’a été consigné : le registre a besoin du nom de la personne qui travaille.',

  'mishap.title': 'Cette page a rencontré un problème',
  'mishap.kept': 'Tout ce qui était affiché comme enregistré l’est toujours sur cet appareil.',
  'mishap.reload': 'Recharger la page',
  'problem.fact': 'Non consigné, la valeur à « {path} » ne convient pas. {what}',
  'problem.cannot-sign':
    'Ce navigateur ne peut pas signer de faits. En utiliser une version récente, ou un autre.',
  'problem.refused': '{what} {doNext}',
  'problem.unreachable':
    'Le serveur est injoignable pour le moment. Tout ce qui est consigné reste enregistré ici ; réessayer quand il y aura une connexion.',
  'problem.full':
    'Cet appareil est plein, donc rien n’a été consigné. Libérer de la place et consigner de nouveau.',
  'problem.other': 'Cela n’a pas marché : {what}',
}
