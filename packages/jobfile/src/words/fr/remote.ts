import type { SameCodes } from '../catalogues.ts'
import type { remoteWords as english } from '../en/remote.ts'

/** French: Are two remotes of one radio family: the verdict, its reasons, and what was met while measuring. */
export const remoteWords: SameCodes<typeof english> = {
  'remote-verdict.same': 'Même famille radio',
  'remote-verdict.different': 'Radio différente',
  'remote-verdict.unsure': 'Pas sûr',

  'remote-reason.modulation':
    '{same, select, yes {Les deux émettent de la même façon : {original}.} other {L’originale émet ainsi : {original} ; la nouvelle ainsi : {new}.}}',
  'remote-reason.modulation-unknown':
    'La façon d’émettre n’est pas claire : originale {original}, nouvelle {new}.',
  'remote-reason.carrier':
    'Les porteuses sont à {difference} l’une de l’autre : originale {original}, nouvelle {new}.',
  'remote-reason.carrier-unknown':
    'La fréquence centrale d’un enregistrement n’est pas connue ; les porteuses ne peuvent donc pas être comparées.',
  'remote-reason.carrier-drifted':
    'La nouvelle porteuse est décalée de {difference}. Un récepteur étroit dans le véhicule ne l’entend peut-être que de près, bien que sa pile soit neuve.',
  'remote-reason.timing':
    '{unmatched, select, both {Chacune a des longueurs d’impulsion que l’autre n’a pas} other {Les longueurs d’impulsion diffèrent de {percent} %}} : originale {original} µs, nouvelle {new} µs.',
  'remote-reason.timing-part':
    'Une partie seulement des longueurs d’impulsion peut être comparée : originale {original} µs, nouvelle {new} µs.',
  'remote-reason.deviation':
    'Les écarts de fréquence diffèrent de {percent} % : originale {original}, nouvelle {new}.',
  'remote-reason.symbol-rate':
    'Les débits de symboles diffèrent de {percent} % : originale {original}, nouvelle {new} par seconde.',
  'remote-reason.other-sender-matches':
    'Un émetteur plus faible d’un enregistrement concorde avec l’autre enregistrement : le plus fort n’était peut-être pas la télécommande.',
  'remote-reason.no-sender':
    '{side, select, original {Originale} other {Nouvelle télécommande}} : aucun émetteur n’a été trouvé.',
  'remote-reason.weak':
    '{side, select, original {Originale} other {Nouvelle télécommande}} : seulement {snr} dB au-dessus du bruit ; il en faut 6.',
  'remote-reason.off-centre':
    '{side, select, original {Originale} other {Nouvelle télécommande}} : la porteuse est au bord de ce qui a été enregistré, à {offset} du centre.',
  'remote-reason.clipped':
    '{side, select, original {Originale} other {Nouvelle télécommande}} : {percent} % de l’enregistrement sont saturés.',
  'remote-reason.foreign-on-top':
    '{side, select, original {Originale} other {Nouvelle télécommande}} : un autre émetteur la recouvre.',
  'remote-reason.several-senders':
    '{side, select, original {Originale} other {Nouvelle télécommande}} : deux émetteurs sont à peu près aussi forts.',
  'remote-reason.few-pulses':
    '{side, select, original {Originale} other {Nouvelle télécommande}} : trop peu d’impulsions pour mesurer.',

  'remote-finding.no-sender':
    'Aucun émetteur n’a été trouvé. Enregistrer de nouveau en tenant le bouton deux secondes.',
  'remote-finding.weak':
    'Seulement {snrDb} dB au-dessus du bruit ; il en faut 6. Approcher la télécommande et enregistrer de nouveau.',
  'remote-finding.off-centre':
    'La porteuse est à {offset} du centre. Accorder le récepteur plus près d’elle et enregistrer de nouveau.',
  'remote-finding.clipped':
    '{percent} % des valeurs sont saturées. Baisser le gain ou s’éloigner, et enregistrer de nouveau.',
  'remote-finding.foreign-on-top':
    'Un autre émetteur recouvre le signal. Attendre qu’il se taise et enregistrer de nouveau.',
  'remote-finding.several-senders':
    'Deux émetteurs sont à peu près aussi forts. Tenir la télécommande tout près du récepteur et enregistrer de nouveau.',
  'remote-finding.few-pulses':
    'Trop peu d’impulsions pour mesurer. Tenir le bouton deux secondes et enregistrer de nouveau.',
  'remote-finding.rate-unknown': 'La fréquence d’échantillonnage n’est pas connue. La donner ci-dessous.',
  'remote-finding.rate-unusable':
    'Une fréquence d’échantillonnage de {rate} par seconde ne peut pas être utilisée. La vérifier ci-dessous.',
  'remote-finding.format-unknown': 'Le format des échantillons n’est pas connu. Le choisir ci-dessous.',
  'remote-finding.centre-unknown':
    'La fréquence centrale n’est pas connue ; la porteuse n’est donc donnée que depuis le centre.',
  'remote-finding.empty-recording':
    'L’enregistrement a {samples, plural, one {# échantillon} other {# échantillons}} : trop peu pour mesurer.',
  'remote-finding.cut-sample':
    'Les derniers octets ne font pas un échantillon entier et ont été laissés de côté. Si les valeurs semblent fausses, vérifier le format des échantillons.',
  'remote-finding.not-numbers':
    '{values, plural, one {# valeur n’était pas un nombre} other {# valeurs n’étaient pas des nombres}}. Vérifier le format des échantillons.',
  'remote-finding.parts-dropped':
    'L’enregistrement est long : ses {share} % les plus silencieux ont été laissés de côté. Si l’appui manque, enregistrer plus court.',
  'remote-finding.other-sender':
    'Un autre émetteur a été entendu à {offset} du centre. C’est sans importance si la télécommande était la plus forte.',
  'remote-finding.some-clipping':
    '{percent} % des valeurs sont saturées ; ce qui est mesuré ici n’en souffre pas.',
  'remote-finding.carrier-wanders':
    'La porteuse se déplace de {drift} pendant l’enregistrement. Vérifier la pile et la carte de cette télécommande.',
  'remote-finding.sigmf-unreadable': 'Le fichier SigMF ne peut pas être lu. Donner les valeurs ci-dessous.',
  'remote-finding.sigmf-field': 'Le fichier SigMF ne donne pas {field}. Donner la valeur ci-dessous.',
  'remote-finding.sigmf-datatype':
    'Le format d’échantillons SigMF {datatype} n’est pas connu ici. Convertir l’enregistrement.',
  'remote-finding.sigmf-channels':
    'L’enregistrement a {channels} voies dans un seul fichier. Écrire une voie dans un fichier à elle.',
  'remote-finding.sigmf-retuned':
    'Le récepteur a été réaccordé pendant l’enregistrement ; sa première fréquence centrale est utilisée. Mieux vaut enregistrer de nouveau.',
}
