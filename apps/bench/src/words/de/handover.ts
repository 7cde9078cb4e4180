import type { SameCodes } from '@shearline/jobfile'
import type { handoverWords as english } from '../en/handover.ts'

/** German: Cautions, price, warranty, retention, seal and close. */
export const handoverWords: SameCodes<typeof english> = {
  'handover.open': 'Dokument öffnen',
  'cautions.title': 'Sicherheitshinweise zu diesem Fahrzeug',
  'cautions.read': 'gelesen',
  'cautions.acknowledge': 'Gelesen',
  'cautions.acknowledge-named': 'Gelesen: {caution}',
  'price.title': 'Preis',
  'price.again': 'Anderen Preis vereinbaren',
  'price.currency': 'Währung',
  'price.line': 'Zeile {number}: wofür',
  'price.amount': 'Zeile {number}: Betrag',
  'price.usual': 'Schlüssel, gefräst und angelernt',
  'price.another': 'Weitere Zeile',
  'price.sum': 'Summe',
  'warranty.title': 'Garantie',
  'warranty.none': 'Es ist keine eingetragen.',
  'warranty.add': 'Garantie geben',
  'warranty.again': 'Andere Garantie geben',
  'warranty.given': '{months, plural, one {# Monat} other {# Monate}}. Nicht abgedeckt: {excludes}.',
  'warranty.months': 'Monate',
  'warranty.excludes': 'Nicht abgedeckt',
  'warranty.usual': 'Knopfzelle des Schlüssels|Wasser|Stürze',
  'retention.title': 'Was wann gelöscht wird',
  'retention.again': 'Andere Fristen festlegen',
  'retention.law':
    'Diese Fristen stammen aus den hier genannten Regeln. Das örtliche Recht prüfen und ändern, was es anders verlangt.',
  'retention.class': '{name}: Tage der Aufbewahrung',
  'retention.days': '{days, plural, one {# Tag} other {# Tage}}',
  'retention.changed': 'für diesen Auftrag geändert',
  'seal.title': 'Dokument',
  'seal.open': '{count, plural, one {Ein Punkt ist noch offen} other {# Punkte sind noch offen}}:',
  'seal.anyway': 'Trotzdem versiegeln. Das Dokument sagt dann, was offen war.',
  'seal.unsent':
    '{count, plural, one {# Eintrag ist} other {# Einträge sind}} hier gespeichert und noch nicht gesendet. Versiegeln braucht keine Verbindung: Das Dokument entsteht auf diesem Gerät und wird später gesendet.',
  'seal.busy': 'Dokument wird erstellt und geprüft ...',
  'seal.not-in-line':
    'Inzwischen wurde etwas eingetragen, das noch offen ist. Die Liste ansehen und erneut versiegeln.',
  'seal.not-proven':
    'Das Dokument ließ sich nach dem Erstellen nicht nachweisen, deshalb wurde nichts versiegelt. Erneut versuchen.',
  'seal.go': 'Dokument versiegeln',
  'seal.again': 'Erneut versiegeln',
  'seal.sealed':
    'Versiegelt {day}, {time}, von {by}, über {count, plural, one {# Eintrag} other {# Einträge}}.',
  'seal.changed':
    '{count, plural, one {# Eintrag kam seither hinzu} other {# Einträge kamen seither hinzu}}: erneut versiegeln.',
  'document.here': 'Das Dokument ist auf diesem Gerät gespeichert und noch nicht gesendet.',
  'document.sent': 'Das Dokument ist auf diesem Gerät gespeichert und gesendet.',
  'document.save': 'Dokument als Datei speichern',
  'document.check': 'Auf diesem Gerät prüfen',
  'document.proven':
    'Hier geprüft: Es hält. {facts, plural, one {# Eintrag} other {# Einträge}}, {signatures, plural, one {# Signatur} other {# Signaturen}}, {hashes, plural, one {# Hash} other {# Hashes}}.',
  'document.not-proven': 'Es hält nicht: {what}',
  'close.blank': 'Was aus dem Rohling wurde',
  'close.blank.again': 'Weiterer Rohling',
  'close.key': 'Wurde zu Schlüssel',
  'close.no-key': 'keinem',
  'close.outcome': 'Ergebnis',
  'close.outcome.used': 'verbraucht',
  'close.outcome.spoiled': 'verdorben',
  'close.outcome.returned': 'zurück in den Wagen',
}
