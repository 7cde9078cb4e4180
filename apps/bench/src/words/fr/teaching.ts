import type { SameCodes } from '@shearline/jobfile'
import type { teachingWords as english } from '../en/teaching.ts'

/** French: Power, backup and blank. */
export const teachingWords: SameCodes<typeof english> = {
  'plan.power.set': '{volts} ({source}), {battery}.',
  'plan.floor': 'Seuil',
  'plan.floor.hint': 'En dessous, la session est en danger. Le chiffre du constructeur passe avant.',
  'plan.floor.source': 'D’où vient le chiffre',
  'plan.floor.usual': 'pratique courante',
  'plan.battery': 'Batterie du véhicule',

  'backup.title': 'Sauvegarde des données de l’antidémarrage',
  'backup.again': 'Relire',
  'backup.way': 'Y a-t-il une sauvegarde ?',
  'backup.way.seal': 'Lue deux fois, à sceller',
  'backup.way.reads': 'Lue deux fois, seulement les empreintes',
  'backup.way.none': 'Aucune',
  'backup.stays': 'Les fichiers restent où ils sont. Seules leurs empreintes sont consignées.',
  'backup.what': 'Ce qui a été lu',
  'backup.what.hint': 'Calculateur et type de mémoire, avec vos mots.',
  'backup.first': 'Première lecture (SHA-256)',
  'backup.second': 'Deuxième lecture (SHA-256)',
  'backup.same': 'Les deux lectures sont identiques.',
  'backup.differ': 'Les deux lectures diffèrent. Relire jusqu’à ce que deux concordent.',
  'backup.because': 'Pourquoi il n’y en a pas',
  'hash.pick': 'Calculer l’empreinte d’un fichier de cet appareil',
  'hash.pick-named': '{label} : calculer l’empreinte d’un fichier de cet appareil',
  'hash.working': 'Empreinte de {name} en cours ...',
  'hash.done': 'Empreinte de {name} calculée ; le fichier reste où il est.',
  'hash.form': '64 signes 0-9 et a-f',

  'blank.title': 'Ébauche de la nouvelle clé',
  'blank.again': 'Choisir une autre ébauche',
  'blank.item': 'Ébauche',
  'blank.item.hint': 'Votre numéro de stock ou une description.',
  'blank.carrier': 'Fréquence porteuse',
  'blank.transponder': 'Transpondeur',
  'blank.transponder.hint': 'La famille, comme imprimée.',
  'blank.profile': 'Profil de lame',
  'blank.fits': 'Comparée au véhicule et à sa clé présente ?',
  'blank.fits.hint':
    'Sur beaucoup de véhicules, une mauvaise ébauche est perdue pour de bon : comparer avant l’apprentissage.',
  'blank.fits.yes': 'Comparée, convient',
  'blank.fits.no': 'Comparée, ne convient pas',
  'blank.fits.open': 'Pas encore comparée',
}
