import type { SameCodes } from '../catalogues.ts'
import type { sheetWords as english } from '../en/sheets.ts'

/** French: Phrases of the sheets beside the handover document: consents, what to bring, refusal, statement of keys, return visit. */
export const sheetWords: SameCodes<typeof english> = {
  'sheet.absent-keys': 'Consentement : clés qui ne sont pas ici',
  'sheet.no-check': 'Consentement : pas de contrôle avant le travail',
  'sheet.bring-this': 'Ce qu’il faut apporter',
  'sheet.refusal': 'Avis : travail non fait',
  'sheet.insurer': 'Attestation sur les clés',
  'sheet.return-visit': 'Nouvelle visite',
  'sheet-preview.absent-keys':
    '{count, plural, one {Une clé est citée comme absente} other {# clés sont citées comme absentes}} : {names}.',
  'sheet-preview.absent-keys.nothing': 'Aucune clé n’est citée comme absente.',
  'sheet-preview.no-check':
    'Aucune clé présente n’est au registre comme démarrant le véhicule avant le travail.',
  'sheet-preview.no-check.nothing':
    'Une clé démarrait le véhicule avant le travail ; un contrôle était donc possible.',
  'sheet-preview.bring-this': 'Pour {when}, {place}.',
  'sheet-preview.bring-this.nothing': 'Aucun rendez-vous n’est au registre.',
  'sheet-preview.refusal': '{decision} : {reason}',
  'sheet-preview.refusal.nothing': 'Le travail n’a été ni refusé ni suspendu.',
  'sheet-preview.insurer':
    '{here, plural, one {Une clé était ici} other {# clés étaient ici}}, {absent, plural, =0 {aucune n’est citée comme absente} one {une est citée comme absente} other {# sont citées comme absentes}}.',
  'sheet-preview.insurer.nothing': 'Aucune clé n’est au registre.',
  'sheet-preview.return-visit':
    '{count, plural, =0 {Rien n’est ouvert ; la feuille dit ce qui a été fait.} one {Un point est ouvert.} other {# points sont ouverts.}}',
  'sheet-preview.return-visit.nothing': 'Aucun travail n’est au registre sur lequel revenir.',
  'sheet.running': '{sheet}, intervention {job}',
  'sheet.made': '{at}, d’après le registre tel qu’il était alors',
  'sheet.record': 'SHA-256 de ce registre',
  'sheet.not-a-seal':
    'Cette feuille ne porte pas de sceau. Ce qu’elle indique figure au registre signé de l’intervention, que l’entreprise conserve et remet.',
  'sheet.car': 'Véhicule',
  'sheet.job': 'Intervention',
  'sheet.law': 'Cette feuille ne touche pas aux droits donnés par la loi.',
  'sheet.sign': 'Signature',
  'sheet.sign-name': 'Nom',
  'sheet.sign-date': 'Lieu et date',
  'sheet.sign-by': 'Signature',
  'sheet.signed': 'Au registre comme signé par {signer}, {how}.',
  'sheet.agreed':
    'Au registre comme accepté au nom de {signer} ; aucune signature correspondante n’est au registre.',
  'sheet.absent-what': 'Ce que le travail leur fait',
  'sheet.absent-replace-all':
    'Le travail réécrit la liste des clés que ce véhicule accepte. Seules les clés qui sont ici et qui sont apprises de nouveau le démarreront ensuite.',
  'sheet.absent-append':
    'Le travail ajoute des clés à la liste que ce véhicule accepte. Les clés qui ne sont pas ici devraient continuer à le démarrer ; cela ne peut pas être essayé tant qu’elles sont absentes.',
  'sheet.absent-oldest':
    'Le travail ajoute des clés à une liste qui est pleine ou peut l’être. Le véhicule peut perdre la plus ancienne, qui peut être une clé qui n’est pas ici.',
  'sheet.absent-slots':
    'Le travail met des clés à des places numérotées. Une clé qui n’est pas ici et qui tient une de ces places ne démarrera plus ce véhicule.',
  'sheet.absent-unknown':
    'On ne sait pas comment ce véhicule tient sa liste. Il est traité comme si la liste était réécrite : les clés qui ne sont pas ici peuvent ne plus le démarrer.',
  'sheet.absent-named': 'Clés qui ne sont pas ici, par les noms que vous leur donnez :',
  'sheet.absent-others': 'Il en va de même pour une clé que personne n’a nommée ici.',
  'sheet.absent-back':
    'Une clé qui cesse de fonctionner peut être apprise de nouveau plus tard, quand elle est apportée au véhicule. C’est une nouvelle intervention avec son propre prix.',
  'sheet.absent-agree': 'J’ai compris ceci et j’accepte que le travail soit fait sans ces clés.',
  'sheet.nocheck-what': 'Ce qu’on ne peut pas savoir',
  'sheet.nocheck-why':
    'Aucune clé présente ne démarre ce véhicule. Avant le travail, personne ne peut donc voir ce qui marchait et ce qui ne marchait pas.',
  'sheet.nocheck-functions':
    'Les serrures, les boutons, les voyants et d’autres fonctions ne peuvent être essayés qu’après le travail. Si l’un d’eux ne marche pas alors, on ne peut pas dire s’il marchait avant.',
  'sheet.nocheck-faults':
    'Des défauts trouvés après le travail ont pu être là avant. Là où le véhicule peut être lu sans clé, cela est fait d’abord et conservé.',
  'sheet.nocheck-damage': 'Ce qui se voit de l’extérieur est noté et photographié avant le travail.',
  'sheet.nocheck-agree': 'J’ai compris ceci et j’accepte que le travail soit fait sans contrôle préalable.',
  'sheet.bring-hello': 'Merci d’avoir ces choses auprès du véhicule :',
  'sheet.bring-keys':
    'Chaque clé de ce véhicule que vous avez, même si elle ne marche pas, est cassée ou n’ouvre qu’une porte.',
  'sheet.bring-keys-why':
    'Une clé qui n’est pas là pendant le travail peut cesser de démarrer le véhicule. Ce n’est pas forcément une clé que vous utilisez.',
  'sheet.bring-identity': 'Votre pièce d’identité avec photo, l’original.',
  'sheet.bring-private':
    'Le document qui montre que le véhicule est immatriculé à votre nom ou vous appartient, l’original. Si le véhicule n’est pas à vous : l’accord écrit de la personne propriétaire et comment la joindre.',
  'sheet.bring-trade':
    'L’ordre de votre entreprise avec un nom et un numéro à rappeler, et le document qui montre à qui appartient le véhicule.',
  'sheet.bring-fleet':
    'L’ordre du bureau de la flotte avec un nom et un numéro à rappeler, et le certificat d’immatriculation du véhicule ou son numéro.',
  'sheet.bring-other': 'Convenu aussi : {what}',
  'sheet.bring-when': 'Quand',
  'sheet.bring-where': 'Où',
  'sheet.bring-no-time': 'à une heure encore à convenir',
  'sheet.bring-place-car':
    'Le véhicule est là où l’on peut en faire le tour et ouvrir ses portes, si possible hors de la route et avec du réseau téléphonique à proximité.',
  'sheet.bring-not-sent':
    'N’envoyez pas de photos de votre pièce d’identité ni de la taille d’une clé par message. Elles sont regardées sur place.',
  'sheet.bring-message':
    '{firm, select, none {Travail} other {{firm} : travail}} sur les clés de {vehicle}, {when}, {place}. Merci d’apporter : chaque clé de ce véhicule, qu’elle marche ou non ; votre pièce d’identité ; {entitlement} Une clé qui n’est pas là peut cesser de démarrer le véhicule. Merci de n’envoyer aucune photo de documents ou de tailles de clés.',
  'sheet.bring-short-private':
    'le document qui montre que le véhicule est immatriculé à votre nom ou vous appartient.',
  'sheet.bring-short-trade':
    'l’ordre de votre entreprise et le document qui montre à qui appartient le véhicule.',
  'sheet.bring-short-fleet': 'l’ordre du bureau de la flotte et le certificat d’immatriculation.',
  'sheet.refusal-what': 'Ce qui a été décidé',
  'sheet.refusal-refused': 'Le travail n’a pas été fait. Motif au registre : {reason}',
  'sheet.refusal-held': 'Le travail attend. Motif au registre : {reason}',
  'sheet.refusal-no-blame':
    'Cet avis dit que ce qui a été montré ne suffisait pas pour le travail. Il n’accuse personne de rien.',
  'sheet.refusal-by': 'Décidé le {at} par {by}.',
  'sheet.refusal-seen': 'Ce qui a été vu',
  'sheet.refusal-seen-none': 'Aucun document n’a été consigné comme vu.',
  'sheet.refusal-missing': 'Ce qui manque',
  'sheet.refusal-missing-none': 'Le registre ne nomme rien d’autre ; demandez à l’entreprise.',
  'sheet.refusal-car': 'Ce qui a été fait au véhicule',
  'sheet.refusal-untouched':
    'Aucune session d’apprentissage n’a été ouverte. Aucune clé de ce véhicule n’a été modifiée par nous.',
  'sheet.refusal-touched':
    'Une session d’apprentissage a été ouverte avant cette décision. Le registre dit ce qui s’y est passé.',
  'sheet.refusal-scans':
    '{count, plural, =0 {Aucun scan des calculateurs n’est au registre.} one {Un scan des calculateurs est au registre ; lire ne change rien au véhicule.} other {# scans des calculateurs sont au registre ; lire ne change rien au véhicule.}}',
  'sheet.insurer-what': 'Ce qu’est cette attestation',
  'sheet.insurer-limit':
    'Elle dit ce qui a été vu et essayé sur ce véhicule ce jour-là. Elle ne peut pas dire s’il existe d’autres clés que personne n’a nommées, et elle n’est pas une déclaration sur la propriété du véhicule.',
  'sheet.insurer-tests':
    '{count, plural, =0 {Aucun essai au registre n’est noté comme fait en présence de la personne cliente.} one {# essai au registre est noté comme fait en présence de la personne cliente.} other {# essais au registre sont notés comme faits en présence de la personne cliente.}}',
  'sheet.insurer-rows': 'Clés au registre',
  'sheet.insurer-key': 'Clé',
  'sheet.insurer-about': 'Ce qu’elle est',
  'sheet.insurer-before': 'Démarrait le véhicule avant',
  'sheet.insurer-after': 'Démarre le véhicule après',
  'sheet.insurer-not-tried': 'non essayé',
  'sheet.insurer-absent': 'Clés citées comme absentes',
  'sheet.insurer-absent-none': 'Aucune n’a été citée.',
  'sheet.return-done': 'Ce qui a été fait',
  'sheet.return-sealed': 'Le registre de cette intervention a été scellé le {at} par {by}.',
  'sheet.return-not-sealed': 'Le registre de cette intervention n’est pas encore scellé.',
  'sheet.return-open': 'Ce qui est ouvert',
  'sheet.return-open-none': 'Rien de ce que demande cette intervention n’est ouvert.',
  'sheet.return-broke': 'La session d’apprentissage s’est interrompue après {after}, motif : {why}.',
  'sheet.return-keys': 'Quelles clés démarrent le véhicule maintenant',
  'sheet.return-starts':
    '{count, plural, one {La clé {keys} a été vue le démarrer.} other {Les clés {keys} ont été vues le démarrer.}}',
  'sheet.return-starts-none': 'Aucune clé n’a été vue le démarrer après le travail.',
  'sheet.return-fault': 'Défaut {code} dans {unit} : {class}',
  'sheet.return-faults-none': 'Aucun défaut n’est resté ouvert.',
  'sheet.return-faults': 'Défauts à regarder de nouveau',
  'sheet.return-bring': 'Pour la visite',
  'sheet.return-bring-all': 'Chaque clé de ce véhicule, aussi celles qui n’étaient pas là la première fois.',
  'sheet.return-bring-file': 'Le document de remise en fichier, pas seulement sur papier.',
  'sheet.return-bring-changes': 'Ce qui a été fait au véhicule depuis : batterie, réparations, autres clés.',
}
