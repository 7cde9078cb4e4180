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
  'doc.handed': 'Übergeben',
  'doc.handed-to': '{at}, an {to}. Schlüssel: {keys}',
  'doc.handed-to-unnamed': '{at}, an {to}. Welche Schlüssel, steht nicht im Protokoll.',
  'doc.handed-not': 'nicht im Protokoll, als dieses Dokument erstellt wurde',
  'doc.stopped-button-away':
    'Das Starten des Fahrzeugs und das Verriegeln mit der Taste werden getrennt angelernt: Ein Schlüssel, der das Fahrzeug nicht startet, kann es möglicherweise noch per Taste ver- oder entriegeln. Mit einem Schlüssel, der nicht da ist, lässt sich das nicht ausprobieren.',
  'doc.consent-unsigned':
    '{about}. Erteilt im Namen von {signer}; eine Unterschrift dazu ist nicht im Protokoll.',
  'doc.consent-keys-unsigned':
    '{about}: {names}. Erteilt im Namen von {signer}; eine Unterschrift dazu ist nicht im Protokoll.',
  'doc.signatures': 'Unterschriften im Protokoll',
  'doc.signatures-none': 'Keine Unterschrift ist im Protokoll.',
  'doc.signature-signer': 'Name',
  'doc.signature-for': 'Wofür',
  'doc.signature-how': 'Wie',
  'doc.signature-when': 'Wann',
  'doc.signature-kept': 'SHA-256 beginnt',
  'doc.signature-for.consent': 'Einwilligung',
  'doc.signature-for.plan': 'Arbeitsplan',
  'doc.signature-for.quote': 'Angebot',
  'doc.signature-for.handover': 'Fahrzeug und Schlüssel erhalten',
  'doc.signature-for.acknowledgement': 'Fehler zur Kenntnis genommen',
  'doc.signature-drawn': 'von Hand gezeichnet',
  'doc.signature-typed': 'Name auf einer Tastatur getippt',
  'doc.signatures-limit':
    'Die Unterschriften selbst sind hier nicht abgedruckt; das Protokoll nennt jede mit ihrem SHA-256. Es zeigt, was wann eingegeben wurde, nicht, wessen Hand es war.',
  'doc.supply-readings': 'Messungen',
  'doc.price-tax': 'Das Protokoll sagt nicht, ob dieser Preis Steuer enthält.',
  'doc.span-day': '{date}, {from} bis {to} Uhr ({zone})',
  'doc.span-days': '{from} bis {to}',
}
