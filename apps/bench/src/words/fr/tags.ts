import type { SameCodes } from '@shearline/jobfile'
import type { tagWords as english } from '../en/tags.ts'

/** French: Tags that tell keys apart: printing them and finding a key by its tag. */
export const tagWords: SameCodes<typeof english> = {
  'tags.find': 'Retrouver une clé par son étiquette',
  'tags.find.how': 'Tenir l’étiquette de la clé dans le cadre.',
  'tags.find.other': 'C’est un code, mais pas l’étiquette d’une clé. La recherche continue.',
  'tags.find.code': 'Ou saisir les quatre signes de l’étiquette',
  'tags.find.code.hint': 'Ils sont sous le code carré.',
  'tags.find.do': 'La trouver',
  'tags.find.unknown':
    'Aucune clé de cette intervention n’a le code {code}. Le relire ; 0, 1, I, L, O et U ne sont jamais imprimés.',
  'tags.chosen': 'Celle que vous tenez',
  'tags.found': 'Dans votre main : {key}',
  'tags.found.is':
    '{origin, select, new {{taught, select, true {Une nouvelle clé, apprise dans cette intervention.} other {Une nouvelle clé, pas encore apprise.}}} other {{taught, select, true {Une clé de la clientèle, apprise dans cette intervention.} other {Une clé de la clientèle.}}}}',
  'tags.found.go': 'Montrer sa fiche',
  'tags.elsewhere': 'Pas une clé de cet établi',
  'tags.elsewhere.job':
    'C’est la clé {key} d’une autre intervention. La tenir à l’écart des clés de celle-ci.',
  'tags.elsewhere.gone':
    'L’étiquette dit clé {key} de cette intervention, et aucune clé pareille n’est maintenant au registre.',
  'tags.elsewhere.open': 'Ouvrir cette autre intervention',
  'tags.print': 'Imprimer des étiquettes',
  'tags.print.what':
    'Une étiquette par clé : sa lettre et sa couleur, le numéro de l’intervention, et un code par lequel la caméra la retrouve. Ni véhicule, ni nom, ni adresse n’y figure : une étiquette perdue ne dit à personne où va la clé.',
  'tags.print.keys': 'Pour quelles clés ?',
  'tags.print.used': 'Places de la planche déjà utilisées',
  'tags.print.used.hint': 'Une planche a {count} places, comptées ligne par ligne.',
  'tags.print.make': 'Créer la planche',
  'tags.print.busy': 'Création de la planche …',
  'tags.print.ready': 'La planche est prête : l’enregistrer et l’imprimer en taille réelle.',
  'tags.print.save': 'Enregistrer la planche',
  'tags.sheet.title': 'Étiquettes de clés, intervention {job}',
}
