/** @module The French words of the verify page. A narrow no-break space (U+202F) stands before : ; ! ? and inside « ». */
import type { SameCodes } from '@shearline/jobfile'
import type { en as english } from './en.ts'

export const fr: SameCodes<typeof english> = {
  'page.language': 'Langue',
  'page.title': 'Vérifier un document de remise',
  'page.lead':
    'Déposez le document ou le paquet que l’entreprise vous a remis. Il est vérifié dans cette page : rien ne quitte cet appareil, et aucune connexion n’est nécessaire.',
  'page.drop': 'Déposer le fichier ici',
  'page.choose': 'Choisir le fichier',
  'page.another': 'Vérifier un autre fichier',
  'page.kinds': 'Un document scellé (PDF), un registre (JSON) ou un paquet (ZIP)',
  'page.foot':
    'Cette page fait les mêmes vérifications que la commande « shearline verify ». Gardez-la avec vos documents : elle fonctionnera aussi longtemps que les navigateurs.',
  'page.no-signatures':
    'Ce navigateur ne sait pas vérifier les signatures Ed25519, donc cette page ne peut rien prouver ici. Ouvrez-la dans un navigateur plus récent.',
  'busy.read': 'Vérification de {name} : {share} % lus ...',
  'busy.stop': 'Arrêter',
  'busy.stopped': 'Arrêté. Rien n’a été prouvé.',
  'busy.failed': 'Le fichier n’a pas pu être lu : {why} Choisissez-le de nouveau.',
  'verdict.holds': 'Il tient',
  'verdict.holds-means': '{name} est, octet par octet, ce qui a été scellé, et dit ce que dit son registre.',
  'verdict.holds-bundle':
    '{name} est, octet par octet, ce qui a été empaqueté, et chaque fait qui s’y trouve est prouvé.',
  'verdict.holds-record':
    'Chaque fait de {name} est prouvé. C’est un registre seul : il n’y a pas de pages à comparer.',
  'verdict.fails': 'Il ne tient pas',
  'verdict.fails-means':
    '{count, plural, one {Un point ne va pas dans {name}.} other {# points ne vont pas dans {name}.}} Ne vous y fiez pas.',
  'mark.holds': 'conforme',
  'mark.fails': 'non conforme',
  'mark.unknown': 'inconnu',
  'check.line': '{check} : {mark}',
  'check.seal': 'Le sceau',
  'check.seal.holds':
    'Sa signature est juste : l’appareil nommé ci-dessous a scellé exactement cette liste de parties.',
  'check.seal.fails': 'Il n’y a pas de sceau dont la signature soit juste.',
  'check.bytes': 'Chaque octet',
  'check.bytes.holds':
    'Chacun des {bytes} octets en dehors de la place du sceau est celui qui a été scellé, et le sceau est tel qu’il a été écrit.',
  'check.bytes.fails':
    '{count, plural, =0 {Les parties du fichier sont celles qui ont été scellées, mais la fin du fichier n’est pas telle que le sceau a été écrit.} one {Sur {all} parties du fichier, une n’est pas celle qui a été scellée.} other {Sur {all} parties du fichier, # ne sont pas celles qui ont été scellées.}}',
  'check.bytes.unknown': 'Sans un sceau juste, personne ne peut dire quels octets appartiennent au fichier.',
  'check.zip.holds':
    'Chaque octet du fichier ZIP est celui qui a été empaqueté, et la liste des fichiers est signée.',
  'check.zip.fails': 'Le fichier ZIP ou la liste de ses fichiers n’est pas ce qui a été empaqueté.',
  'check.facts': 'Faits et signatures',
  'check.facts.holds':
    '{facts, plural, one {Le seul fait est signé et enchaîné} other {Les # faits sont tous signés et enchaînés}} ; {signatures, plural, one {une signature est juste} other {# signatures sont justes}}.',
  'check.facts.fails':
    '{facts, plural, =0 {Il n’y a aucun fait} one {Il y a un fait} other {Il y a # faits}} ; {signatures, plural, =0 {aucune signature n’est juste} one {une signature est juste} other {# signatures sont justes}}. Ce qui ne va pas est indiqué plus bas.',
  'check.facts.unknown': 'Aucun fait n’a pu être lu.',
  'check.hashes': 'Empreintes',
  'check.hashes.holds':
    '{hashes, plural, =0 {Aucune empreinte n’a été refaite} one {Une empreinte a été refaite et est juste} other {# empreintes ont été refaites et sont justes}}.',
  'check.hashes.fails':
    '{hashes, plural, =0 {Aucune empreinte refaite n’est juste} one {Une empreinte a été refaite et est juste} other {# empreintes ont été refaites et sont justes}} ; d’autres ne le sont pas.',
  'check.pages': 'Pages et registre',
  'check.pages.holds': 'Les pages imprimées disent ce que dit le registre signé, caractère par caractère.',
  'check.pages.fails': 'Les pages imprimées ne disent pas ce que dit le registre signé.',
  'check.pages.unknown':
    'Cela n’est connu que si chaque octet est celui qui a été scellé, si le registre est prouvé et si cette page de vérification est de la version qui a fait le document.',
  'wrong.title': 'Ce qui ne tient pas, et où',
  'wrong.note': 'À savoir',
  'wrong.notes': 'Ce qu’il faut savoir',
  'who.title': 'À qui est le sceau',
  'who.device': 'Appareil',
  'who.print': 'Empreinte de la clé (SHA-256)',
  'who.packed': 'Empaqueté par',
  'who.means':
    'Un sceau juste prouve que rien n’a été modifié depuis que cette clé a scellé le document. À qui est la clé, seule l’entreprise peut le dire : comparez l’empreinte avec celle que vous avez reçue de l’entreprise par une autre voie.',
  'who.compare': 'Empreinte reçue de l’entreprise',
  'who.same': 'C’est la même : cette clé appartient à qui vous a donné cette empreinte.',
  'who.other': 'C’en est une autre : le document n’a pas été scellé par la clé que vous connaissez.',
  'who.short': 'Tapez les 64 chiffres et lettres ; {count, plural, one {# est saisi} other {# sont saisis}}.',
  'strip.title': 'Le fichier, du premier au dernier octet',
  'strip.alt':
    '{count, plural, one {Une partie} other {# parties}} dans l’ordre du fichier ; {changed, plural, =0 {aucune n’est modifiée} one {une est modifiée} other {# sont modifiées}}. La liste ci-dessous nomme chacune.',
  'strip.seal': 'la place du sceau',
  'strip.parts': '{count, plural, one {Une partie} other {# parties}}, octet par octet',
  'strip.part': 'Partie',
  'strip.from': 'Premier octet',
  'strip.to': 'Dernier octet',
  'strip.state': 'État',
  'facts.title': '{count, plural, =0 {Aucun fait} one {Un fait} other {# faits}} du registre',
  'facts.fact': 'Fait',
  'facts.at': 'Consigné (UTC)',
  'facts.by': 'Par',
  'file.title': 'Le fichier',
  'file.name': 'Nom',
  'file.bytes': 'Octets',
  'file.job': 'Intervention',
}
