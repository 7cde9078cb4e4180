import type { SameCodes } from '../catalogues.ts'
import type {
  differenceWords as englishDifferences,
  keyWords as englishKeys,
  statementWords as englishStatements,
} from '../en/keys.ts'

/** German: Keys: what they are and what each can do. */
export const keyWords: SameCodes<typeof englishKeys> = {
  'function.start': 'Starten',
  'function.emergency-start': 'Notstartposition',
  'function.passive-start': 'Schlüsselloser Start',
  'function.passive-entry': 'Schlüsselloser Zugang',
  'function.lock': 'Taste Verriegeln',
  'function.unlock': 'Taste Entriegeln',
  'function.boot': 'Taste Kofferraum',
  'function.panic': 'Taste Alarm',
  'function.blade-door': 'Bart im Türschloss',
  'function.blade-ignition': 'Bart im Zündschloss',
  'function.blade-boot': 'Bart im Kofferraumschloss',
  'form.blade': 'Einfacher Bartschlüssel',
  'form.transponder': 'Transponderschlüssel',
  'form.remote-head': 'Funkschlüssel mit festem Bart',
  'form.flip': 'Klappschlüssel',
  'form.proximity': 'Keyless-Schlüssel',
  'form.card': 'Schlüsselkarte',
  'outcome.works': 'geht',
  'outcome.fails': 'geht nicht',
  'outcome.not-applicable': 'nicht vorhanden',
  'outcome.not-tested': 'nicht geprüft',
  'outcome.open': 'keine Antwort',
  'origin.existing': 'war schon da',
  'origin.new': 'neu',
  'make.genuine': 'Originalteil',
  'make.aftermarket': 'Zubehörteil',
  'make.renewed': 'aufbereitet',
  'make.unknown': 'Herkunft nicht bekannt',
  'colour.brass': 'Messing',
  'colour.slate': 'Schiefer',
  'colour.moss': 'Moos',
  'colour.rust': 'Rost',
  'colour.sky': 'Himmelblau',
  'colour.plum': 'Pflaume',
  'colour.sand': 'Sand',
  'colour.ink': 'Tinte',
}

/** German: Disagreements between the numbers, short enough to stand in a need. */
export const differenceWords: SameCodes<typeof englishDifferences> = {
  'difference.said-more-than-bench':
    '{count, plural, one {# Schlüssel, den es geben soll, ist nicht hier} other {# Schlüssel, die es geben soll, sind nicht hier}}',
  'difference.said-fewer-than-bench':
    '{count, plural, one {# Schlüssel mehr ist hier, als der Kundschaft bekannt war} other {# Schlüssel mehr sind hier, als der Kundschaft bekannt waren}}',
  'difference.stored-more-than-bench':
    '{count, plural, one {das Fahrzeug speicherte # Eintrag, den kein Schlüssel hier erklärt} other {das Fahrzeug speicherte # Einträge, die kein Schlüssel hier erklärt}}',
  'difference.stored-fewer-than-bench':
    '{count, plural, one {# Schlüssel hier hatte keinen Eintrag im Fahrzeug} other {# Schlüssel hier hatten keinen Eintrag im Fahrzeug}}',
  'difference.after-more-than-keys':
    '{count, plural, one {das Fahrzeug speichert # Eintrag mehr, als die Schlüssel erklären} other {das Fahrzeug speichert # Einträge mehr, als die Schlüssel erklären}}',
  'difference.after-fewer-than-keys':
    '{count, plural, one {das Fahrzeug speichert # Eintrag weniger, als es Schlüssel gibt} other {das Fahrzeug speichert # Einträge weniger, als es Schlüssel gibt}}',
  'difference.stored-key-does-not-start':
    '{count, plural, one {# Schlüssel auf dem Tisch startet das Fahrzeug nicht} other {# Schlüssel auf dem Tisch starten das Fahrzeug nicht}}',
}

/** German: What the tally means, for customer and insurer. */
export const statementWords: SameCodes<typeof englishStatements> = {
  'statement.stored-before':
    'Vor der Arbeit speicherte dieses Fahrzeug {count, plural, =0 {keinen Eintrag} one {# Eintrag} other {# Einträge}}.',
  'statement.stored-after':
    'Nach der Arbeit speichert es {count, plural, =0 {keinen Eintrag} one {# Eintrag} other {# Einträge}}.',
  'statement.keys-somewhere-start':
    '{count, plural, one {Ein Schlüssel irgendwo startet dieses Fahrzeug noch.} other {Bis zu # Schlüssel irgendwo starten dieses Fahrzeug noch.}}',
  'statement.absent-keys-stopped':
    'Schlüssel, die nicht hier waren, starten dieses Fahrzeug nicht mehr. Der Bart öffnet möglicherweise noch die Tür.',
  'statement.absent-keys-will-stop':
    'Schlüssel, die nicht hier sind, starten dieses Fahrzeug nicht mehr, sobald die Liste neu geschrieben wird. Der Bart öffnet möglicherweise noch die Tür.',
  'statement.absent-keys-still-start':
    'Schlüssel, die nicht hier sind, werden durch diese Arbeit nicht entfernt.',
  'statement.absent-keys-not-proven-stopped':
    'Die Liste wurde neu geschrieben, aber das Fahrzeug speichert mehr, als die Schlüssel erklären. Es ist nicht nachgewiesen, dass Schlüssel, die nicht hier waren, dieses Fahrzeug nicht mehr starten.',
  'statement.absent-keys-unknown':
    'Es ist nicht bekannt, ob diese Arbeit Schlüssel entfernt, die nicht hier sind. Rechnen Sie damit, dass sie dieses Fahrzeug nicht mehr starten, aber verlassen Sie sich nicht darauf.',
  'statement.absent-clone-still-starts':
    '{count, plural, one {# Schlüssel} other {# Schlüssel}} ({keys}) {count, plural, one {ist nicht hier, wiederholt aber die Identität eines Schlüssels, der hier ist: Er startet dieses Fahrzeug, solange jener es tut} other {sind nicht hier, wiederholen aber die Identität von Schlüsseln, die hier sind: Sie starten dieses Fahrzeug, solange jene es tun}}.',
  'statement.entries-are-not-keys':
    'Einträge sind keine Schlüssel: In manchen Systemen belegt ein Schlüssel zwei Plätze, daher {count, plural, one {kann dieser Eintrag ein zweiter Platz eines Schlüssels auf dem Tisch sein} other {können einige dieser # Einträge ein zweiter Platz eines Schlüssels auf dem Tisch sein}}.',
  'statement.clones-count-once':
    '{count, plural, one {# Schlüssel} other {# Schlüssel}} ({keys}) {count, plural, one {ist ein Klon} other {sind Klone}}: Für das Fahrzeug sind ein Klon und sein Original ein einziger Schlüssel, und wird einer gelöscht, sind beide gelöscht.',
  'statement.keys-start-now':
    '{count, plural, one {Bei # Schlüssel hier wurde gesehen, dass er dieses Fahrzeug nach der Arbeit startet} other {Bei # Schlüsseln hier wurde gesehen, dass sie dieses Fahrzeug nach der Arbeit starten}} ({keys}).',
  'statement.key-no-longer-starts':
    'Schlüssel {keys} startete dieses Fahrzeug vor der Arbeit und startet es jetzt nicht.',
  'statement.keys-never-tested':
    '{count, plural, one {# Schlüssel hier wurde} other {# Schlüssel hier wurden}} nie geprüft ({keys}).',
}
