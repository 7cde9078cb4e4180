import type { SameCodes } from '../catalogues.ts'
import type { powerWords as english } from '../en/power.ts'

/** French: Whether the car's supply holds: verdict, why, warnings, the watch, and what is left after the work. */
export const powerWords: SameCodes<typeof english> = {
  'power-verdict.go': 'C’est bon : la batterie tient le plan.',
  'power-verdict.connect-supply': 'Brancher d’abord une alimentation d’au moins {amperes} A.',
  'power-verdict.stop': 'Stop : ne pas commencer.',

  'power-reason.holds':
    'Probabilité de tomber sous {floorVolts} : {chancePercent} %. Le minimum à attendre est d’environ {lowestVolts}.',
  'power-reason.holds-with-supply':
    'Avec l’alimentation, la probabilité de tomber sous {floorVolts} est de {chancePercent} %. Le minimum à attendre est d’environ {lowestVolts}.',
  'power-reason.crosses-floor':
    'Telle que décrite, la probabilité de tomber sous {floorVolts} est de {chancePercent} % ; {acceptedPercent} % sont admis.',
  'power-reason.supply-too-small': 'L’alimentation telle que décrite ne suffit pas.',
  'power-reason.supply-volts-too-low': 'L’alimentation est réglée sous le seuil.',
  'power-reason.no-supply-enough':
    'Aucune alimentation jusqu’à 200 A ne tient le seuil. Vérifier le seuil, ou d’abord changer ou charger la batterie.',
  'power-reason.known-bad':
    'La batterie est connue comme mauvaise. Travailler sur une batterie d’appoint, ou en faire monter une neuve.',
  'power-reason.dead-cell':
    '{restVolts}, c’est ce qui reste quand un élément est mort. Essayer la batterie en charge, la charger seule, ou utiliser une batterie d’appoint.',
  'power-reason.not-twelve-volts':
    '{restVolts} ne sont pas une batterie 12 V au repos. Moteur et chargeurs arrêtés, puis relire.',
  'power-reason.frozen':
    'À {celsius} °C et à cette charge, l’acide est gelé. Ne pas la charger, ponter ni solliciter : la laisser d’abord dégeler.',

  'power-warning.rest-volts-missing':
    'Sans la tension au repos, la charge peut être quelconque. La lire aux bornes avant d’allumer quoi que ce soit.',
  'power-warning.rested-too-short':
    'Elle n’a pas reposé longtemps : la valeur peut être trop haute. Se fier au bas de la bande.',
  'power-warning.hours-at-rest-missing':
    'La durée de son repos n’est pas connue : la valeur peut être trop haute. Demander quand le véhicule a roulé pour la dernière fois.',
  'power-warning.above-full':
    '{restVolts}, c’est plus que cette batterie ne montre au repos. S’assurer que rien ne la charge, et lire son étiquette.',
  'power-warning.deeply-discharged':
    '{restVolts}, c’est sous tous les tableaux : vide, et peut-être abîmée. L’essayer avant de s’y fier.',
  'power-warning.kind-missing':
    'Le type de batterie n’est pas connu : tous les types sont dans la bande. Lire son étiquette.',
  'power-warning.capacity-missing': 'La capacité n’est pas connue et prise large. Lire son étiquette.',
  'power-warning.age-missing': 'L’âge n’est pas connu : de neuve à neuf ans sont dans la bande.',
  'power-warning.temperature-missing': 'La température n’est pas connue : de -10 à 30 °C sont dans la bande.',
  'power-warning.second-rate-unusable':
    'Les deux valeurs de l’étiquette se contredisent ; l’une est laissée de côté.',
  'power-warning.step-load-missing':
    'La charge de « {step} » n’est pas connue : 5 à 40 A sont pris. Indiquer ce qui est allumé.',
  'power-warning.may-be-frozen':
    'Au bas de la bande, l’acide peut être gelé. Regarder le bac ; ne rien brancher à une batterie gelée.',
  'power-warning.lithium-below-zero':
    'Sous 0 °C, une batterie au lithium peut refuser la charge ou se couper. La réchauffer, ou laisser l’alimentation tout porter.',
  'power-warning.charger-not-supply':
    'Un chargeur n’est pas une alimentation : il retombe en maintien et laisse chuter la tension. Son courant n’est pas compté.',
  'power-warning.supply-amperes-missing':
    'Le courant de l’alimentation n’est pas connu : 5 à 30 A sont pris. Lire son étiquette.',
  'power-warning.support-writes':
    'Cela tient sans ; la pratique courante branche quand même une alimentation avant la première écriture.',
  'power-warning.clamp-to-chassis':
    'Avec surveillance de batterie, la pince négative va à la masse du châssis ou du moteur, pas à la borne.',
  'power-warning.setting-overruled': 'L’instruction du constructeur l’emporte sur le réglage.',
  'power-warning.floor-above-target': 'La consigne est sous le seuil : le seuil est pris comme consigne.',
  'power-warning.start-doubtful':
    'Après le travail, le véhicule ne démarre que dans {chancePercent} % de ce qui est possible. Charger avant de partir, ou avoir un booster à portée de main.',

  'power-level.steady': 'Stable',
  'power-level.falling': 'En baisse : elle ne tiendra pas jusqu’à la fin du plan',
  'power-level.amber': 'Sous le seuil',
  'power-level.stop': 'Arrêter maintenant',

  'power-watch.no-readings': 'Pas encore de mesure : ceci est la prévision.',
  'power-watch.readings-left-out':
    'Certaines mesures ne sont pas des volts ou des temps utilisables et sont laissées de côté. Vérifier l’appareil de mesure.',
  'power-watch.does-not-fit':
    'Aucune batterie telle que décrite n’explique ces mesures. Autre chose consomme : regarder avant de continuer.',
  'power-watch.plan-overrun':
    'Le travail a dépassé la fin du plan ; sa dernière charge est supposée continuer.',

  'power-start.starts': 'Il démarrera',
  'power-start.doubtful': 'Il ne démarrera peut-être pas : charger, ou avoir un booster à portée de main',
  'power-start.does-not-start': 'Il ne démarrera pas ainsi',
  'power-start.unknown': 'Pas connu : lire la tension, alimentation débranchée',

  'power-drain.asleep': 'En veille',
  'power-drain.waiting': 'Pas encore en veille. Relire jusqu’à 60 minutes après le verrouillage',
  'power-drain.awake':
    'Maintenu éveillé. Débrancher la prise diagnostic, éloigner les clés, tout fermer, relire',
  'power-drain.not-measured': 'Non mesuré',

  'power-cell.good': 'Bonne',
  'power-cell.replace-soon': 'Remplacer bientôt',
  'power-cell.replace': 'Remplacer',
  'power-cell.test-loaded': 'Non prouvé : la lire pendant que la télécommande émet',
  'power-cell.read-again': 'Impossible : vérifier le calibre, la polarité et le nombre de piles',

  'power-meter.empty': 'une ligne vide',
  'power-meter.no-number': 'une ligne sans nombre',
  'power-meter.several-numbers': 'une ligne avec plusieurs nombres',
  'power-meter.overload': 'hors de son calibre',
  'power-meter.alternating': 'tension alternative : le passer en continu',
  'power-meter.other-unit': 'une autre grandeur que des volts',
}
