import type { SameCodes } from '../catalogues.ts'
import type {
  differenceWords as englishDifferences,
  keyWords as englishKeys,
  statementWords as englishStatements,
} from '../en/keys.ts'

/** French: Keys: what they are and what each can do. */
export const keyWords: SameCodes<typeof englishKeys> = {
  'function.start': 'Démarrage',
  'function.emergency-start': 'Position de démarrage de secours',
  'function.passive-start': 'Démarrage mains libres',
  'function.passive-entry': 'Accès mains libres',
  'function.lock': 'Bouton verrouillage',
  'function.unlock': 'Bouton déverrouillage',
  'function.boot': 'Bouton coffre',
  'function.panic': 'Bouton alarme',
  'function.blade-door': 'Lame dans la serrure de porte',
  'function.blade-ignition': 'Lame dans le contacteur',
  'function.blade-boot': 'Lame dans la serrure de coffre',
  'form.blade': 'Clé simple à lame',
  'form.transponder': 'Clé à transpondeur',
  'form.remote-head': 'Clé télécommande à lame fixe',
  'form.flip': 'Clé pliable',
  'form.proximity': 'Clé mains libres',
  'form.card': 'Carte-clé',
  'outcome.works': 'marche',
  'outcome.fails': 'ne marche pas',
  'outcome.not-applicable': 'non prévu',
  'outcome.not-tested': 'non essayé',
  'outcome.open': 'sans réponse',
  'origin.existing': 'était déjà là',
  'origin.new': 'nouvelle',
  'make.genuine': 'd’origine',
  'make.aftermarket': 'adaptable',
  'make.renewed': 'reconditionnée',
  'make.unknown': 'origine pas connue',
  'colour.brass': 'laiton',
  'colour.slate': 'ardoise',
  'colour.moss': 'mousse',
  'colour.rust': 'rouille',
  'colour.sky': 'bleu ciel',
  'colour.plum': 'prune',
  'colour.sand': 'sable',
  'colour.ink': 'encre',
}

/** French: Disagreements between the numbers, short enough to stand in a need. */
export const differenceWords: SameCodes<typeof englishDifferences> = {
  'difference.said-more-than-bench':
    '{count, plural, one {# clé annoncée n’est pas ici} other {# clés annoncées ne sont pas ici}}',
  'difference.said-fewer-than-bench':
    '{count, plural, one {il y a ici # clé de plus que la personne cliente n’en connaissait} other {il y a ici # clés de plus que la personne cliente n’en connaissait}}',
  'difference.stored-more-than-bench':
    '{count, plural, one {le véhicule mémorisait # entrée qu’aucune clé ici n’explique} other {le véhicule mémorisait # entrées qu’aucune clé ici n’explique}}',
  'difference.stored-fewer-than-bench':
    '{count, plural, one {# clé ici n’avait pas d’entrée dans le véhicule} other {# clés ici n’avaient pas d’entrée dans le véhicule}}',
  'difference.after-more-than-keys':
    '{count, plural, one {le véhicule mémorise # entrée de plus que les clés n’en expliquent} other {le véhicule mémorise # entrées de plus que les clés n’en expliquent}}',
  'difference.after-fewer-than-keys':
    '{count, plural, one {le véhicule mémorise # entrée de moins qu’il n’y a de clés} other {le véhicule mémorise # entrées de moins qu’il n’y a de clés}}',
  'difference.stored-key-does-not-start':
    '{count, plural, one {# clé sur la table ne démarre pas le véhicule} other {# clés sur la table ne démarrent pas le véhicule}}',
}

/** French: What the tally means, for customer and insurer. */
export const statementWords: SameCodes<typeof englishStatements> = {
  'statement.stored-before':
    'Avant le travail, ce véhicule {count, plural, =0 {ne mémorisait aucune entrée} one {mémorisait # entrée} other {mémorisait # entrées}}.',
  'statement.stored-after':
    'Après le travail, il {count, plural, =0 {ne mémorise aucune entrée} one {mémorise # entrée} other {mémorise # entrées}}.',
  'statement.keys-somewhere-start':
    '{count, plural, one {Une clé quelque part démarre encore ce véhicule.} other {Jusqu’à # clés quelque part démarrent encore ce véhicule.}}',
  'statement.absent-keys-stopped':
    'Les clés qui n’étaient pas ici ont cessé de démarrer ce véhicule. La lame ouvre peut-être encore la porte.',
  'statement.absent-keys-will-stop':
    'Les clés qui ne sont pas ici cesseront de démarrer ce véhicule quand la liste sera réécrite. La lame ouvrira peut-être encore la porte.',
  'statement.absent-keys-still-start': 'Les clés qui ne sont pas ici ne sont pas retirées par ce travail.',
  'statement.absent-keys-not-proven-stopped':
    'La liste a été réécrite, mais le véhicule mémorise plus que les clés n’en expliquent. Il n’est pas prouvé que les clés qui n’étaient pas ici ont cessé de démarrer ce véhicule.',
  'statement.absent-keys-unknown':
    'On ne sait pas si ce travail retire les clés qui ne sont pas ici. Attendez-vous à ce qu’elles cessent de démarrer ce véhicule, et n’y comptez pas.',
  'statement.absent-clone-still-starts':
    '{count, plural, one {# clé} other {# clés}} ({keys}) {count, plural, one {n’est pas ici mais répète l’identité d’une clé qui y est : elle démarre ce véhicule aussi longtemps que celle-ci} other {ne sont pas ici mais répètent l’identité de clés qui y sont : elles démarrent ce véhicule aussi longtemps que celles-ci}}.',
  'statement.entries-are-not-keys':
    'Une entrée n’est pas une clé : dans certains systèmes, une clé prend deux places ; {count, plural, one {cette entrée peut donc être une deuxième place d’une clé sur la table} other {certaines de ces # entrées peuvent donc être une deuxième place d’une clé sur la table}}.',
  'statement.clones-count-once':
    '{count, plural, one {# clé} other {# clés}} ({keys}) {count, plural, one {est un clone} other {sont des clones}} : pour le véhicule, un clone et son original sont une seule clé, et effacer l’un efface les deux.',
  'statement.keys-start-now':
    '{count, plural, one {# clé ici a été vue} other {# clés ici ont été vues}} démarrer ce véhicule après le travail ({keys}).',
  'statement.key-no-longer-starts':
    'La clé {keys} démarrait ce véhicule avant le travail et ne le démarre plus.',
  'statement.keys-never-tested':
    '{count, plural, one {# clé ici n’a jamais été essayée} other {# clés ici n’ont jamais été essayées}} ({keys}).',
}
