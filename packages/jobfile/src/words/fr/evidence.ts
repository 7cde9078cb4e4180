import type { SameCodes } from '../catalogues.ts'
import type {
  explanationWords as englishExplanations,
  faultWords as englishFaults,
  readingWords as englishReadings,
} from '../en/evidence.ts'

/** French: Where readings come from and when they were taken. */
export const readingWords: SameCodes<typeof englishReadings> = {
  'vin-source.glass': 'vitre',
  'vin-source.plate': 'plaque',
  'vin-source.document': 'document',
  'vin-source.bus': 'véhicule lui-même',
  'battery.flooded': 'batterie plomb-acide à électrolyte liquide',
  'battery.efb': 'batterie plomb-acide renforcée (EFB)',
  'battery.agm': 'batterie plomb-acide à fibre de verre (AGM)',
  'battery.gel': 'batterie plomb-acide au gel',
  'battery.lithium': 'batterie au lithium',
  'battery.unknown': 'type de batterie pas connu',
  'during.rest': 'au repos',
  'during.session': 'pendant la session',
  'during.after': 'après le travail',
  'rule.replace-all': 'Session « tout remplacer » : la liste des clés acceptées devait être réécrite',
  'rule.append': 'Ajout de clé : les nouvelles clés devaient être ajoutées à la liste',
  'rule.append-drop-oldest':
    'Ajout de clé : les nouvelles clés devaient être ajoutées, et une liste pleine perd son entrée la plus ancienne',
  'rule.numbered-slots': 'Places numérotées : chaque clé devait être mise à une place à elle',
  'rule.unknown': 'La règle d’apprentissage n’était pas connue et a été traitée comme « tout remplacer »',
  'break.supply': 'l’alimentation a été perdue',
  'break.link': 'la liaison a été perdue',
  'break.time-out': 'le temps s’est écoulé',
  'break.key-refused': 'une clé a été refusée',
  'break.ignition-off': 'le contact s’est coupé',
  'break.operator': 'la personne qui intervient l’a arrêté',
  'break.unknown': 'le motif n’est pas connu',
}

/** French: Why the work may have raised a fault, by the rule of the fault comparison. */
export const explanationWords: SameCodes<typeof englishExplanations> = {
  'explanation.reset-silence':
    'Le travail a redémarré le calculateur que ce code nomme ; il s’est tu un moment.',
  'explanation.muted-silence':
    'Le travail a demandé au calculateur que ce code nomme de se taire un certain temps.',
  'explanation.supply-low-supply-codes': 'L’alimentation a été basse ou interrompue pendant le travail.',
  'explanation.supply-low-silence':
    'L’alimentation a été basse ou interrompue pendant le travail ; les calculateurs se taisent alors l’un après l’autre.',
  'explanation.key-refused': 'Une clé que le véhicule ne connaissait pas a été présentée pendant le travail.',
  'explanation.immobiliser-teaching': 'L’antidémarrage était dans sa session pendant le travail.',
  'explanation.battery-off-steering':
    'La batterie était débranchée ; la direction retrouve son milieu quand on tourne le volant de butée à butée.',
}

/** French: Fault classes for a customer: a heading, and what may be said of them and no more. */
export const faultWords: SameCodes<typeof englishFaults> = {
  'phase.before': 'avant le travail',
  'phase.after': 'après le travail',
  'phase.cleared': 'après l’effacement',
  'phase.cycled': 'après un cycle de contact',
  'fault-class.there-before-still': 'Là avant le travail et encore là',
  'fault-class.there-before-gone': 'Là avant le travail, non signalé au dernier scan',
  'fault-class.there-before-back': 'Là avant le travail, effacé et revenu',
  'fault-class.raised-by-work': 'Provoqué par le travail',
  'fault-class.new-unexplained': 'Nouveau et non expliqué',
  'fault-class.permanent': 'Permanent',
  'fault-class.not-comparable': 'N’a pas pu être comparé',
  'fault-means.there-before-still':
    'Le véhicule les a signalés avant qu’on touche à quoi que ce soit, et de nouveau au dernier scan. Le travail ne les a pas amenés.',
  'fault-means.there-before-gone':
    'Le véhicule les a signalés avant qu’on touche à quoi que ce soit, et pas au dernier scan. Qu’un code ait disparu ne prouve pas que sa cause est réparée.',
  'fault-means.there-before-back':
    'Le véhicule les a signalés avant qu’on touche à quoi que ce soit. Ils ont été effacés et sont revenus.',
  'fault-means.raised-by-work':
    'Ils n’étaient pas là avant. Ils sont apparus avec le travail, pour le motif indiqué. La dernière colonne dit s’ils ont disparu.',
  'fault-means.new-unexplained':
    'Ils n’étaient pas là avant le travail, et le registre ne contient pas de motif. Ils peuvent avoir un lien avec le travail, ou non.',
  'fault-means.permanent':
    'Seul le véhicule lui-même les efface, une fois ses propres tests réussis. Aucun matériel ne peut les effacer (SAE J1979, service 0A).',
  'fault-means.not-comparable':
    'Le calculateur n’a pas été lu à la fois avant et après le travail, ou a montré trop peu. On ne peut rien dire de ce qui a changé.',
  'claim.failing-now': 'actif au moment du scan',
  'claim.pending': 'en attente',
  'claim.confirmed': 'confirmé',
  'claim.failed-this-cycle': 'survenu dans ce cycle',
  'claim.failed-since-clear': 'survenu depuis l’effacement',
  'claim.warning-lamp': 'demande son voyant',
  'claim.permanent': 'sur la liste des défauts permanents',
  'claim.not-tested-since-clear': 'non testé depuis l’effacement',
  'claim.not-tested-this-cycle': 'non testé dans ce cycle',
  'claim.unit-not-read': 'calculateur non lu',
  'claim.absent': 'non signalé',
  'claim.absent-but-untested': 'non signalé, mais pas encore testé',
  'claim.none': 'signalé',
}
