import type { SameCodes } from '@shearline/jobfile'
import type { remoteWords as english } from '../en/remote.ts'

/** French: Is the new remote of the same radio family as the original? */
export const remoteWords: SameCodes<typeof english> = {
  'remote.title': 'La nouvelle télécommande est-elle de la même famille radio ?',
  'remote.why':
    'Une télécommande d’une autre radio démarre le véhicule, mais ses boutons ne font rien. Deux courts enregistrements le disent avant qu’elle soit utilisée pour de bon.',
  'remote.open': 'Comparer deux enregistrements radio',
  'remote.how':
    'Enregistrer les deux télécommandes avec un récepteur universel quelconque : le même récepteur, l’une après l’autre, un bouton tenu deux secondes. Seules des grandeurs physiques sont mesurées. Ce qui est émis n’est ni lu ni montré.',
  'remote.privacy':
    'L’établi ne garde aucun enregistrement : ses échantillons disparaissent une fois mesurés. Les fichiers restent où votre récepteur les a écrits ; les y supprimer.',
  'remote.close': 'Fermer',
  'remote.original': 'Télécommande d’origine',
  'remote.new': 'Nouvelle télécommande',
  'remote.pick': 'Choisir son enregistrement',
  'remote.pick-again': 'En choisir un autre',
  'remote.pick.hint': '.cu8, .cs8, .cs16 ou .cf32 ; ou les deux fichiers d’une paire SigMF.',
  'remote.pick.no-samples':
    '{name} ne fait que décrire un enregistrement. Choisissez-le avec le fichier de ses échantillons (.sigmf-data).',
  'remote.pick.not-recording':
    '{name} n’est pas un enregistrement radio. Choisissez le fichier écrit par votre récepteur, ou les deux fichiers d’une paire SigMF.',
  'remote.forget': 'Ôter',
  'remote.measuring': 'Mesure de {name}',
  'remote.measured':
    '{name}, {seconds} à {rate} échantillons par seconde{centre, select, none {} other {, centre {centre}}}',
  'remote.failed': 'La mesure s’est arrêtée : {problem}',
  'remote.ask.change': 'Le lire avec d’autres valeurs',
  'remote.rate': 'Échantillons par seconde',
  'remote.rate.unit': 'milliers',
  'remote.centre': 'Fréquence centrale',
  'remote.centre.hint': 'Sans elle, les porteuses ne peuvent pas être comparées.',
  'remote.format': 'Format des échantillons',
  'remote.format.cu8': '8 bits, non signé (cu8)',
  'remote.format.cs8': '8 bits, signé (cs8)',
  'remote.format.cs16': '16 bits (cs16)',
  'remote.format.cs16be': '16 bits, octet de poids fort en premier',
  'remote.format.cf32': '32 bits à virgule flottante (cf32)',
  'remote.format.cf32be': '32 bits à virgule flottante, octet de poids fort en premier',
  'remote.measure': 'Mesurer',

  'remote.verdict.same.next':
    'Ses boutons peuvent marcher une fois la clé apprise. La radio seule ne prouve pas que le véhicule l’accepte.',
  'remote.verdict.different.next':
    'Ne pas l’utiliser encore : ses boutons ne feront très probablement rien sur ce véhicule. Comparer d’abord les références.',
  'remote.verdict.unsure.next':
    'Enregistrer de nouveau les deux : le même récepteur, l’une après l’autre, de près, un bouton tenu deux secondes.',
  'remote.points.same': 'Concorde',
  'remote.points.unsure': 'Laisse le doute',
  'remote.points.different': 'Diffère',
  'remote.reasons': 'Pourquoi',
  'remote.drift': 'Portée faible alors que la pile est neuve ?',

  'remote.values': 'Mesuré',
  'remote.value': 'Valeur',
  'remote.value.carrier': 'Porteuse',
  'remote.value.modulation': 'Modulation',
  'remote.value.deviation': 'Écart de chaque côté',
  'remote.value.rate': 'Symboles par seconde',
  'remote.value.pulses': 'Impulsions, µs',
  'remote.value.gaps': 'Intervalles, µs',
  'remote.value.burst': 'Salve',
  'remote.value.repeats': 'Salves ; répétitions',
  'remote.value.width': 'Largeur (99 % de la puissance)',
  'remote.value.snr': 'Au-dessus du bruit',
  'remote.value.clipped': 'Saturé',
  'remote.modulation.OOK': 'tout ou rien',
  'remote.modulation.2-FSK': 'deux tons (2-FSK)',
  'remote.modulation.unsure': 'pas clair',

  'remote.pictures': 'Images',
  'remote.pictures.content':
    'Dessinées de façon qu’aucune image ne puisse rendre ce qui a été émis : les crêtes sont tenues sur des groupes entiers d’impulsions.',
  'remote.spectrum': 'Spectre en émission',
  'remote.spectrum.key':
    'La fréquence va vers la droite, la force vers le haut. Trait fin : l’air quand la télécommande se tait. Pointillé : porteuse ou tons.',
  'remote.spectrum.apart': 'Trop éloignées pour une même échelle : chacune a la sienne.',
  'remote.spectrum.says': '{name} : porteuse {carrier}, largeur {width}, {snr} dB au-dessus du bruit.',
  'remote.waterfall': 'Chute d’eau',
  'remote.waterfall.key':
    'Le temps va vers la droite, la fréquence vers le haut ; plus c’est fort, plus la couleur est pleine.',
  'remote.waterfall.range': '{low} à {high}',
  'remote.waterfall.says':
    '{name} : {bursts, plural, one {# salve} other {# salves}} en {seconds} autour de {carrier}.',
  'remote.burst': 'Une salve de chacune, départ commun',
  'remote.burst.key':
    'Le temps va vers la droite, la force vers le haut. Le contour de la salve la plus longue ; les intervalles y sont refermés.',
  'remote.burst.says': '{name} : durée {length}.',
  'remote.pulse': 'Impulsion moyenne de chacune, départ commun',
  'remote.pulse.key':
    'Le temps va vers la droite, la force vers le haut. Seize impulsions ou plus superposées.',
  'remote.pulse.says': '{name} : moyenne de {pulses} impulsions ; longueurs habituelles {lengths} µs.',
  'remote.pulse.none':
    '{name} : aucune, parce que deux tons n’ont pas d’impulsions ou qu’il y en a trop peu.',

  'remote.bands': 'Ce qui est permis là où roule le véhicule',
  'remote.bands.note': 'Pour information seulement ; le droit local décide, et aucun verdict n’en dépend.',
  'remote.region': 'Région',
  'remote.region.europe': 'Europe',
  'remote.region.north-america': 'Amérique du Nord',
  'remote.region.japan': 'Japon',
  'remote.region.south-korea': 'Corée du Sud',
  'remote.region.china': 'Chine',
  'remote.region.australia-new-zealand': 'Australie, Nouvelle-Zélande',
  'remote.band.usual': 'Les télécommandes y sont courantes',
  'remote.band.limit': 'Limite',
  'remote.band.range': '{low} à {high} MHz',
  'remote.band.source': 'Source : {source}',
  'remote.band.memory': 'De mémoire, sans vérification à une source',
  'remote.band.none': '{carrier} n’est dans aucune bande connue ici pour cette région.',
  'remote.band.field': 'À {carrier}, cela fait {microvolts} µV/m ({decibels} dBµV/m) à 3 m.',

  'remote.keep': 'Garder le résultat dans l’intervention',
  'remote.keep.note': 'Verdict, motifs et valeurs principales ; aucun enregistrement et aucune image.',
  'remote.key.original': 'L’originale est la clé',
  'remote.key.new': 'La nouvelle télécommande est la clé',
  'remote.record': 'Consigner le résultat',
  'remote.recorded': 'Consigné.',

  'fact.remote-compared':
    'Radio {fresh, select, none {de la nouvelle télécommande} other {de la clé {fresh}}} face à {original, select, none {l’originale} other {la clé {original}}} : {verdict}',
}
