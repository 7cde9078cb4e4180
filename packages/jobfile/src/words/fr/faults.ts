import type { SameCodes } from '../catalogues.ts'
import type { comparisonWords as english } from '../en/faults.ts'

/** French: Where the rules of the fault comparison come from, what speaks for a class, and what is worth saying of the scans. */
export const comparisonWords: SameCodes<typeof english> = {
  'explanation-source.reset-silence':
    'pratique générale du métier 4.5 et 4.6 ; qu’un redémarrage fasse taire un calculateur est une déduction',
  'explanation-source.muted-silence': 'ISO 14229-1 service 28 ; pratique générale du métier 4.5 et 4.6',
  'explanation-source.supply-low-supply-codes':
    'pratique générale du métier 4.6 ; sens des codes SAE J2012, de mémoire',
  'explanation-source.supply-low-silence': 'pratique générale du métier 4.5',
  'explanation-source.key-refused':
    'pratique générale du métier 1.2.13 et 4.6 ; sens des codes SAE J2012, de mémoire',
  'explanation-source.immobiliser-teaching':
    'pratique générale du métier 1.2.13 et 4.6 ; sens des codes SAE J2012, de mémoire',
  'explanation-source.battery-off-steering':
    'pratique courante, sans source ; sens du code SAE J2012, de mémoire',

  'evidence.recorded': '{recording}, {seconds} s',
  'evidence.recorded-detail': '{recording}, {seconds} s, {detail}',
  'evidence.recorded.at': '{recording}, {time}',
  'evidence.recorded-detail.at': '{recording}, {time}, {detail}',
  'evidence.session-opened': 'session d’apprentissage ouverte {at}',
  'evidence.key-refused': 'clé refusée {at}',
  'evidence.supply-fell': 'tension tombée à {minimum}, seuil {floor}',
  'evidence.noted': '{words}',
  'evidence.other-failure-type': '{phase} : le même code avec un autre type de défaillance',
  'evidence.reported-as': '{phase} : signalé comme {raw}',

  'fault-finding.no-before-scan':
    'Il n’y a pas de scan d’avant le travail : aucun défaut ne peut être dit nouveau ou ancien.',
  'fault-finding.unit-not-read-before':
    '{unit} n’a pas été lu avant le travail : ses défauts ne peuvent pas être comparés.',
  'fault-finding.unit-not-read-again': '{unit} a été lu avant le travail et pas depuis.',
  'fault-finding.cleared-not-retested': '{unit} : {codes} effacés, pas encore testés de nouveau.',
  'fault-finding.fault-code-unreadable':
    '« {code} » n’est pas un code défaut dans la forme de SAE J2012 ; il est comparé tel qu’il est écrit.',
  'fault-finding.units-perhaps-one':
    '« {unit} » et « {other} » sont peut-être un seul calculateur ; ils sont comparés comme deux.',
  'fault-finding-do.no-before-scan':
    'Le dire à la remise. La prochaine fois, scanner chaque calculateur avant de toucher à quoi que ce soit.',
  'fault-finding-do.unit-not-read-before': 'Le dire à la remise.',
  'fault-finding-do.unit-not-read-again': 'Scanner de nouveau ce calculateur.',
  'fault-finding-do.cleared-not-retested':
    'Couper le contact, laisser le véhicule se mettre en veille, remettre le contact et scanner de nouveau.',
  'fault-finding-do.cleared-not-retested.cycled':
    'Laisser les tests se faire (rouler, ou attendre, selon le véhicule) et scanner de nouveau.',
  'fault-finding-do.fault-code-unreadable': 'Le relire à la source.',
  'fault-finding-do.units-perhaps-one': 'Dire s’ils n’en font qu’un.',

  'report-finding.no-code-found': 'Ni code défaut ni « aucun défaut » n’y a été trouvé.',
  'report-finding.line-too-long':
    'La ligne a {length, plural, one {# caractère} other {# caractères}} ; seuls les {read} premiers ont été lus.',
  'report-finding.report-too-long':
    'Le rapport a {length, plural, one {# caractère} other {# caractères}} ; seuls les {read} premiers ont été lus.',
  'report-finding-do.no-code-found':
    'Saisir les défauts, ou ajouter le rapport à l’intervention comme fichier.',
  'report-finding-do.line-too-long': 'En regarder le reste soi-même.',
  'report-finding-do.report-too-long': 'Le couper en parties.',
}
