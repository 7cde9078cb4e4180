import type { SameCodes } from '@shearline/jobfile'
import type { policyWords as english } from '../en/policy.ts'

/** French: Rules of place and firm (policy packs), the car and its place, cautions where they matter, custody. */
export const policyWords: SameCodes<typeof english> = {
  'title.rules': 'Règles · Shearline',
  'title.keeping': 'À supprimer · Shearline',
  'board.find': 'Chercher une intervention',
  'board.find.hint': 'Des mots de son nom, de son lieu ou du véhicule, ou la fin de son VIN.',
  'board.found':
    '{count, plural, =0 {Aucune intervention ne correspond} one {# intervention correspond} other {# interventions correspondent}}',
  'board.more': '{count, plural, one {# autre intervention} other {# autres interventions}}',
  'rules.title': 'Règles du lieu et de l’entreprise',
  'rules.law':
    'Les règles sont des données, pas des conseils. Vérifier le droit local ; là où il dit autrement, il passe avant.',
  'rules.by': 'Cette intervention suit : {pack}.',
  'rules.which': 'Règles à suivre',
  'rules.choose': 'Suivre ces règles',
  'rules.other': 'Suivre d’autres règles',
  'rules.not-here':
    'Les règles « {pack} » ne sont pas sur cet appareil. Ce qu’elles demandent est au registre et figure ci-dessous.',
  'rules.identity-any': 'Identité, un de ces documents : {documents}.',
  'rules.entitlement-any': 'Droit, un de ces documents : {documents}.',
  'rules.or': ' ; ',
  'rules.label': '{name}, {region}, {dated}',
  'rules.source': 'Source : {source} ({basis}).',
  'rules.why-not': 'Pourquoi non',
  'rules.because': 'Répondu non : {why}',
  'rules.record-no': 'Consigner non avec ce motif',
  'rules.link': 'Règles',
  'rules.page': 'Règles du lieu et de l’entreprise',
  'rules.page.what':
    'Un jeu de règles dit ce qui montre que quelqu’un peut avoir une clé, ce qui est conservé et combien de temps, ce qu’il faut dire à la clientèle au bord de la route, et quelles bandes radio sont courantes. En copier un, l’adapter à votre droit, et le suivre.',
  'rules.usual': 'utilisées pour les nouvelles interventions',
  'rules.make-usual': 'Utiliser pour les nouvelles interventions',
  'rules.make-usual-named': 'Utiliser pour les nouvelles interventions : {name}',
  'rules.copy': 'Modifier une copie',
  'rules.copy-named': 'Modifier une copie : {name}',
  'rules.edit': 'Modifier',
  'rules.edit-named': 'Modifier : {name}',
  'rules.save': 'Enregistrer dans un fichier',
  'rules.save-named': 'Enregistrer dans un fichier : {name}',
  'rules.forget': 'Oublier',
  'rules.forget-named': 'Oublier : {name}',
  'rules.where': '{region} ; vérifié {dated}',
  'rules.read-file': 'Lire un jeu de règles depuis un fichier',
  'rules.read-file.hint': 'Un fichier JSON, comme « Enregistrer dans un fichier » l’écrit.',
  'rules.read': 'Lu : {name}. Il est gardé sur cet appareil.',
  'rules.not-json': 'Le fichier n’est pas du JSON, donc rien n’a été lu : {what}',
  'rules.troubles':
    '{count, plural, one {Un endroit est faux} other {# endroits sont faux}}, donc rien n’a été lu :',
  'rules.trouble': '{what}. {doNext}',
  'rules.form.name': 'Nom des règles',
  'rules.form.region': 'Où elles s’appliquent',
  'rules.form.dated': 'Jour où elles ont été comparées au droit',
  'rules.form.dated.hint': 'Par exemple 2026-11-28.',
  'rules.form.authority': 'Ce qui montre que quelqu’un peut avoir une clé',
  'rules.form.identity': 'Identité, l’un de',
  'rules.form.entitlement': 'Droit, l’un de',
  'rules.form.checks': 'Demandé aussi',
  'rules.form.own': 'Vos propres questions',
  'rules.form.own.hint': 'Chacune veut un oui, ou un non avec un motif.',
  'rules.form.source': 'D’où cela vient',
  'rules.form.retention': 'Ce qui est conservé et combien de temps',
  'rules.form.days': '{name} : jours',
  'rules.form.stalled': 'Jours après lesquels une intervention jamais terminée est tenue pour terminée',
  'rules.form.contract': 'Ce qui est dit à la clientèle particulière avant le travail',
  'rules.form.radio': 'Bandes radio de',
  'rules.form.radio.none': 'aucune région',
  'rules.form.keep': 'Garder ces règles',
  'rules.own-suffix': '{name} (les nôtres)',

  'site.title': 'Le véhicule et son lieu',
  'site.why': 'Ces quatre réponses décident quelles mises en garde comptent ici.',

  'cautions.here':
    '{count, plural, one {Lire ceci avant de continuer} other {Lire ces # points avant de continuer}}',

  'keeping.title': 'À supprimer',
  'keeping.link': 'À supprimer',
  'keeping.what':
    'Ce que cet appareil sait de chaque intervention, comparé à ses délais. La suppression, avec sa preuve, se fait sur l’ordinateur qui tient le registre : « shearline retention delete ».',
  'keeping.reading': 'Parcours de {count, plural, one {# intervention} other {# interventions}} ...',
  'keeping.none': 'Rien n’est à supprimer aujourd’hui.',
  'keeping.since': 'depuis {day}',
  'keeping.items': '{count, plural, one {# élément} other {# éléments}}',
  'keeping.rule':
    '{days, plural, one {# jour} other {# jours}} à partir de {trigger, select, sealed {l’apposition du sceau} handed_over {la remise} warranty_ended {la fin de la garantie} purpose_ended {la fin de son utilité} other {l’inscription au registre}} ; {source}',
  'keeping.held': 'Retenu, donc cela reste : {reason}',
  'keeping.stalled': 'L’intervention ne s’est jamais terminée ; compté depuis son dernier fait.',

  'custody.title': 'Ce qui est conservé, et jusqu’à quand',
  'custody.pack': 'Délais : {pack}.',
  'custody.class':
    '{count, plural, =0 {rien de conservé} one {# élément conservé} other {# éléments conservés}}',
  'custody.not-running': 'son délai n’a pas commencé',
  'custody.until': 'jusqu’au {day}',
  'custody.due': 'à supprimer depuis {day}',
  'custody.deleted': '{count, plural, one {# supprimé} other {# supprimés}}',
  'custody.hold': 'Ne rien laisser supprimer',
  'custody.hold.why': 'Pourquoi, et à la demande de qui',
  'custody.hold.place': 'Retenir tout de cette intervention',
  'custody.hold.stands': 'Rien de cette intervention ne doit être supprimé : {reason} ({by}, {day}).',
  'custody.hold.lift': 'Mettre fin à cette retenue',
  'custody.deletion':
    '{what} : {count, plural, one {# élément} other {# éléments}}, {day}, par {by}. {why}{keys, select, true { Les clés correspondantes sont détruites.} other {}}',

  'doubts.title': 'Ce qui ne concorde pas dans ce registre',
  'doubts.clock.before-its-predecessor':
    'Un fait de l’appareil {device} porte une heure antérieure à celle du précédent.',
  'doubts.clock.before-what-it-names':
    'Un fait de l’appareil {device} porte une heure antérieure à ce qu’il nomme.',
  'doubts.clock.written-after-receipt':
    'Un fait de l’appareil {device} porte une heure postérieure à son arrivée.',
  'doubts.clock.in-the-future': 'Un fait de l’appareil {device} porte une heure à venir.',
  'doubts.clock.other': 'L’horloge de l’appareil {device} ne concorde pas avec le registre.',
  'doubts.device-revoked':
    '{count, plural, one {Un fait vient} other {# faits viennent}} d’un appareil qui n’est plus digne de confiance ({devices}). Consigner de nouveau, sur un appareil de confiance, ce qui est vrai.',
  'doubts.not-witnessed':
    '{count, plural, one {Un fait vient} other {# faits viennent}} d’un appareil dont la clé de signature est peut-être en d’autres mains ({devices}). Seule cette clé montre quand cela a été écrit.',
  'doubts.own-revoked':
    'L’entreprise ne fait plus confiance à cet appareil ({because, select, retired {mis hors service} replaced {remplacé} lost {déclaré perdu} stolen {déclaré volé} other {sa clé de signature est peut-être en d’autres mains}}). Ce qu’il consigne maintenant n’est pas accepté. Travailler sur un autre appareil.',

  'hand.title': 'Passer cette intervention à quelqu’un d’autre',
  'hand.how':
    'Une personne de l’équipe dont l’établi utilise le même serveur ouvre cette adresse ou la scanne avec la caméra : l’intervention s’y ouvre avec tout ce qui est envoyé jusqu’ici.',
  'hand.here-only':
    'Cet établi a été ouvert à une adresse que seul cet appareil comprend ({address}). Donner le fichier ci-dessous, ou ouvrir d’abord l’établi à une adresse de votre réseau.',
  'hand.qr': 'Adresse de cette intervention en code QR',
  'hand.unsent':
    '{count, plural, one {# fait n’est encore que sur cet appareil} other {# faits ne sont encore que sur cet appareil}}. Envoyer d’abord, ou donner aussi le fichier.',
  'hand.all-sent': 'Tout de cette intervention est envoyé.',
  'hand.bundle': 'Enregistrer toute l’intervention dans un fichier',
  'hand.bundle.how':
    'Sans réseau : le fichier contient chaque fait et chaque fichier de l’intervention qui est sur cet appareil. Tout le monde peut le prouver avec « shearline verify », même des années plus tard ; il est fait pour être lu, le travail continue par l’adresse ci-dessus.',
  'hand.bundle.unsealed':
    'L’intervention n’est pas encore scellée : chaque fait du fichier est signé, mais rien n’y montre qu’il n’en manque aucun. Sceller d’abord le document pour prouver le tout.',

  'handed.title': 'Remis',
  'handed.to': 'À qui',
  'handed.to.hint': 'Nom ou fonction de la personne qui a pris le véhicule et ses clés.',
  'handed.keys': 'Clés parties avec le véhicule',
  'handed.first': 'Sceller d’abord le document ; ceci vient après.',
  'handed.record': 'Remis',
  'handed.again': 'Consigner une autre remise',
  'handed.done':
    'À {to}, {day}, {time} ; {count, plural, =0 {aucune clé citée} one {clé {keys}} other {clés {keys}}}.',
}
