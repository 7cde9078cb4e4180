import type { SameCodes } from '@shearline/jobfile'
import type { vaultWords as english } from '../en/vault.ts'

/** French: The vault: who can open vehicle secrets, sealing two reads, opening with a reason. */
export const vaultWords: SameCodes<typeof english> = {
  'vault.recipients': 'Qui peut ouvrir les secrets des véhicules',
  'vault.recipients.about':
    'Les sauvegardes des données de véhicules sont scellées sur cet appareil avant d’être gardées ou envoyées. Seules les personnes qui détiennent ces clés peuvent les ouvrir.',
  'vault.recipients.none': 'Personne encore : d’ici là, aucune sauvegarde ne peut être scellée ici.',
  'vault.recipients.office': 'Le bureau scelle aussi pour ces clés',
  'vault.recipients.office.about':
    'N’en reprendre une que si l’on sait à qui elle est : qui la détient peut ouvrir tout ce qui est scellé ici désormais.',
  'vault.recipients.take': 'Reprendre',
  'vault.recipients.take-named': 'Reprendre la clé de {name}',
  'vault.recipients.key': 'Clé publique',
  'vault.recipients.key.hint': 'Commence par age1. Ne jamais saisir ici de clé privée.',
  'vault.recipients.name': 'À qui est cette clé',
  'vault.recipients.add': 'Ajouter cette clé',
  'vault.recipients.remove': 'Retirer',
  'vault.recipients.remove-named': 'Retirer {name}',
  'vault.seal.no-recipient': 'Aucune clé n’est désignée qui pourrait ouvrir une sauvegarde scellée.',
  'vault.seal.to-device': 'En désigner une sur la page de l’appareil',
  'vault.seal.about':
    'Les deux fichiers sont comparés et l’un est scellé sur cet appareil ; seule la forme scellée est gardée et envoyée. Peuvent l’ouvrir : {names}.',
  'vault.seal.first': 'Choisir la première lecture',
  'vault.seal.second': 'Choisir la deuxième lecture',
  'vault.seal.none': 'pas encore choisie',
  'vault.seal.picked': '{name}, {count, plural, one {# octet} other {# octets}}',
  'vault.seal.same-file':
    'C’est deux fois le même fichier. Lire la mémoire une deuxième fois, dans un autre fichier.',
  'vault.seal.do': 'Comparer et sceller',
  'vault.seal.busy': 'Comparaison et scellement…',
  'vault.digest.first': 'Première lecture (empreinte à clé)',
  'vault.digest.second': 'Deuxième lecture (empreinte à clé)',
  'vault.sealed-file': 'sauvegarde scellée',
  'vault.secrets': 'Scellé dans cette intervention',
  'vault.secret': '{what}, {count, plural, one {# octet} other {# octets}}, scellé {when}',
  'vault.secret.opened': 'Ouvert {when} par {by} : {reason}',
  'vault.open': 'L’ouvrir',
  'vault.open.reason': 'Pourquoi on l’ouvre',
  'vault.open.reason.hint': 'Va au registre avant que quoi que ce soit soit ouvert.',
  'vault.open.identity': 'Clé privée',
  'vault.open.identity.hint': 'Le fichier tel qu’il a été imprimé ou enregistré. Il n’est pas gardé.',
  'vault.open.identity.file': 'La prendre dans son fichier',
  'vault.open.identity.show': 'Afficher la clé',
  'vault.open.identity.hide': 'Masquer la clé',
  'vault.open.identity.no-key': '« {name} » est trop grand pour être une clé privée.',
  'vault.open.passphrase': 'Phrase secrète de cette clé, si elle en a une',
  'vault.open.do': 'Consigner le motif et ouvrir',
  'vault.open.save': 'Enregistrer le fichier ouvert',
  'vault.open.right':
    'C’est bien celui qui a été consigné lors du scellement. Supprimer le fichier enregistré dès qu’il a servi.',
  'vault.open.wrong': 'Ce n’est PAS celui qui a été consigné lors du scellement.',
  'vault.open.not-here': 'Le fichier scellé n’est ni ici ni sur le serveur.',
}
