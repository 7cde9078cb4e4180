import type { SameCodes } from '../catalogues.ts'
import type { pictureWords as english } from '../en/pictures.ts'

/** German: Phrases of the handover document that its second edition added: photos, life lines, how the supply was left, the square code. */
export const pictureWords: SameCodes<typeof english> = {
  'doc.code-alt':
    'Ein quadratischer Code zum Scannen. Er enthält den SHA-256 des Protokolls und den Fingerabdruck des versiegelnden Schlüssels, beide unten gedruckt.',
  'doc.code-about':
    'Scannen Sie diesen Code, um maschinell zu vergleichen: Er enthält den SHA-256 des Protokolls und den Fingerabdruck des Schlüssels, wie unten gedruckt. Er öffnet keine Seite und braucht kein Netz.',
  'doc.key-photo': 'Foto im Protokoll, SHA-256 beginnt mit {hash}.',
  'doc.key-photo-alt':
    'Foto von Schlüssel {key}: {form}, Anhänger {colour}. Das Protokoll hält es durch seinen SHA-256 fest.',
  'doc.key-cell-rest': 'Knopfzelle, {rest} V in Ruhe: {verdict}.',
  'doc.key-cell-loaded': 'Knopfzelle, {loaded} V beim Senden: {verdict}.',
  'doc.key-cell-both': 'Knopfzelle, {rest} V in Ruhe und {loaded} V beim Senden: {verdict}.',
  'doc.key-cell-replaced': 'Die Knopfzelle wurde ersetzt.',
  'doc.fault-strand': 'Lebenslinie',
  'doc.fault-strand-alt': '{code}, Lebenslinie: {life}',
  'doc.fault-strand-legend':
    'Die Lebenslinie zeigt die Scans {phases}, vom ersten bis zum letzten. Eine volle Scheibe: gemeldet. Ein Ring: Das Steuergerät antwortete und meldete ihn nicht. Ein kurzer Strich: nicht ausgelesen.',
  'doc.power-verdict': 'Vor der Arbeit berechnet',
  'doc.power-supply-first': 'Zuerst ein Stützgerät anschließen.',
  'doc.power-drain': 'Strom nach dem Verriegeln',
  'doc.power-drain-read':
    '{milliamperes} mA, {minutes, plural, one {# Minute} other {# Minuten}} nach dem Verriegeln. {state}.',
  'doc.power-removed': 'Stützgerät',
  'doc.power-removed-state':
    '{removed, select, yes {vor der letzten Messung nach der Arbeit abgenommen} other {bei der letzten Messung nach der Arbeit noch angeschlossen}}',
}
