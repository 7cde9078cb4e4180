import type { SameCodes } from '../catalogues.ts'
import type { teachingWords as english } from '../en/teaching.ts'

/** German: The rehearsal: what can go otherwise, the way back, why the order is as it is, what must be settled first. */
export const teachingWords: SameCodes<typeof english> = {
  'cause.supply-lost': 'Die Spannung fiel aus',
  'cause.link-lost': 'Die Verbindung fiel aus',
  'cause.time-out': 'Die Zeit lief ab',
  'cause.closed-early': 'Die Sitzung wurde zu früh geschlossen',
  'cause.wrong-code': 'Ein falscher Code wurde eingegeben',
  'cause.wrong-key': 'Ein Schlüssel eines anderen Fahrzeugs wurde gezeigt',
  'cause.repeated-key': 'Derselbe Schlüssel wurde noch einmal gezeigt',
  'cause.key-refused': 'Ein Schlüssel wurde abgelehnt',
  'cause.key-forgotten': 'Ein Schlüssel ist doch nicht hier',
  'cause.flat-cell': 'Ein Schlüssel hat eine leere Knopfzelle',

  'recovery.start-with': 'Fahrzeug mit Schlüssel {key} starten',
  'recovery.emergency-start-with':
    'Mit Schlüssel {key} in der Notstartposition starten, seine Knopfzelle ist leer',
  'recovery.wait': 'Warten',
  'recovery.wait-ignition-on': 'Mit eingeschalteter Zündung warten',
  'recovery.change-cell': 'Neue Knopfzelle in Schlüssel {key} einsetzen',
  'recovery.fetch': 'Schlüssel {key} holen',
  'recovery.enter-code': 'Code erneut eingeben',
  'recovery.open': 'Neue Sitzung öffnen',
  'recovery.show': 'Schlüssel {key} zeigen',
  'recovery.close': 'Sitzung schließen',
  'recovery.restore': 'Datensicherung zurückspielen',
  'recovery-way.use-key': 'Ein Schlüssel hier startet das Fahrzeug',
  'recovery-way.reopen': 'Neue Sitzung öffnen',
  'recovery-way.fetch': 'Einen Schlüssel holen',
  'recovery-way.restore': 'Datensicherung zurückspielen',
  'recovery-way.none': 'Kein Rückweg mit dem Vorhandenen',

  'order-reason.other-strands-more':
    'Bei der Reihenfolge {other} liegt das Fahrzeug an mehr Stellen fest: {at}.',
  'order-reason.other-strands-longer': 'Bei der Reihenfolge {other} liegt das Fahrzeug länger fest: {at}.',
  'order-reason.other-loses-more':
    'Die Reihenfolge {other} gefährdet mehr Schlüssel, die das Fahrzeug jetzt starten: {at}.',
  'order-reason.other-spoils-more': 'Die Reihenfolge {other} kann mehr neue Schlüssel verderben: {at}.',
  'order-reason.other-shows-starting-keys-later':
    'Die Reihenfolge {other} kostet nicht mehr, zeigt aber einen Schlüssel, der das Fahrzeug startet, später.',
  'order-reason.other-leaves-given-order':
    'Die Reihenfolge {other} ist genauso gut; die gegebene wurde beibehalten.',
  'order-reason.only-order': 'Es gibt nur eine Reihenfolge.',

  'guard.opens': 'Die Sitzung öffnet mit dem Vorhandenen',
  'guard.code': 'Der Code liegt vor',
  'guard.backup-proven': 'Die Datensicherung ist nachgewiesen',
  'guard.consent':
    'Die Kundschaft hat zugestimmt, dass fehlende Schlüssel möglicherweise nicht mehr funktionieren',
  'guard.supply': 'Die Spannung liegt über ihrer Untergrenze',
  'guard.all-keys-here': 'Jeder Schlüssel des Fahrzeugs ist hier',
  'guard.idle-time': 'Jeder Schritt ist schneller, als die Sitzung wartet',
  'guard-meet.opens':
    'Bringen, was sie öffnet: einen weiteren angenommenen Schlüssel oder ein Gerät, das es kann.',
  'guard-meet.code':
    'Den Code vor dem Öffnen auf rechtmäßigem Weg beschaffen. Er wird hier nie aufgeschrieben.',
  'guard-meet.backup-proven': 'Die Daten zweimal auslesen und vergleichen, im Kapitel Datensicherung.',
  'guard-meet.consent': 'Die fehlenden Schlüssel nennen und die Kundschaft unterschreiben lassen, unten.',
  'guard-meet.supply': 'Ein Stützgerät anschließen, die Untergrenze festlegen und einen Messwert notieren.',
  'guard-meet.all-keys-here':
    'Nach jedem Schlüssel fragen; was wegbleibt, funktioniert vielleicht nicht mehr.',
  'guard-meet.idle-time': 'Herausfinden, wie lange die Sitzung wartet, und die Schlüssel bereitlegen.',
  'guard-state.met': 'geklärt',
  'guard-state.not-met': 'nicht geklärt',
  'guard-state.not-said': 'nicht bekannt',

  'archetype.replace-all-at-close': 'Schreibt die Liste neu, speichert am Ende',
  'archetype.replace-all-each-key': 'Schreibt die Liste mit dem ersten Schlüssel neu',
  'archetype.replace-all-erased-at-open': 'Leert die Liste beim Öffnen',
  'archetype.replace-all-list-lost': 'Schreibt am Ende neu; bei einem Abbruch ist die Liste verloren',
  'archetype.append': 'Fügt Schlüssel hinzu, bis die Liste voll ist',
  'archetype.append-drop-oldest': 'Fügt Schlüssel hinzu; eine volle Liste verliert den ältesten',
  'archetype.append-same-key-twice': 'Fügt Einträge hinzu; ein Schlüssel kann zwei Plätze belegen',
  'archetype.self-add-two-keys': 'Zwei funktionierende Schlüssel lassen einen weiteren zu',
  'archetype.code-gated-hour': 'Ein Code öffnet; Fehlversuche kosten eine Stunde',
  'archetype.code-gated-ignition-on': 'Ein Code öffnet; Fehlversuche kosten 20 Minuten mit Zündung',
  'archetype.timed-wait': 'Zündung ein und warten, ohne Gerät',
  'archetype.all-keys-lost': 'Kein Schlüssel funktioniert mehr',
  'archetype.numbered-slots': 'Jeder Schlüssel hat einen nummerierten Platz',
  'archetype.declared-count': 'Erfährt vorher, wie viele Schlüssel es werden',
  'archetype.pre-coded-key': 'Nimmt Schlüssel, die fertig für dieses Fahrzeug geliefert werden',
  'archetype.nothing-known': 'Nichts ist bekannt',
  'archetype-absent.replace-all-at-close':
    'Schlüssel, die nicht hier sind, funktionieren nicht mehr, aber erst wenn die Sitzung geschlossen ist.',
  'archetype-absent.replace-all-each-key':
    'Schlüssel, die nicht hier sind, funktionieren nicht mehr, sobald der erste Schlüssel angenommen ist.',
  'archetype-absent.replace-all-erased-at-open':
    'Kein Schlüssel funktioniert mehr, sobald die Sitzung öffnet; nur die angenommenen starten wieder.',
  'archetype-absent.replace-all-list-lost':
    'Schlüssel, die nicht hier sind, funktionieren nicht mehr; bricht die Sitzung ab, gilt das für alle.',
  'archetype-absent.append': 'Schlüssel, die nicht hier sind, funktionieren weiter.',
  'archetype-absent.append-drop-oldest':
    'Schlüssel, die nicht hier sind, funktionieren weiter, bis die Liste voll ist; dann fällt der älteste ohne ein Wort weg.',
  'archetype-absent.append-same-key-twice':
    'Schlüssel, die nicht hier sind, funktionieren weiter; die Plätze füllen sich schneller, als es Schlüssel gibt.',
  'archetype-absent.self-add-two-keys': 'Schlüssel, die nicht hier sind, funktionieren weiter.',
  'archetype-absent.code-gated-hour':
    'Schlüssel, die nicht hier sind, funktionieren nicht mehr, sobald die Sitzung geschlossen ist.',
  'archetype-absent.code-gated-ignition-on':
    'Schlüssel, die nicht hier sind, funktionieren nicht mehr, sobald die Sitzung geschlossen ist.',
  'archetype-absent.timed-wait':
    'Schlüssel, die nicht hier sind, funktionieren nicht mehr, sobald der erste Schlüssel angenommen ist.',
  'archetype-absent.all-keys-lost': 'Schlüssel, die später auftauchen, starten das Fahrzeug nicht.',
  'archetype-absent.numbered-slots':
    'Schlüssel, die nicht hier sind, funktionieren weiter, außer ein neuer Schlüssel kommt auf ihren Platz.',
  'archetype-absent.declared-count':
    'Schlüssel, die nicht hier sind, funktionieren nicht mehr, sobald die Sitzung geschlossen ist.',
  'archetype-absent.pre-coded-key': 'Schlüssel, die nicht hier sind, funktionieren weiter.',
  'archetype-absent.nothing-known':
    'Damit rechnen, dass Schlüssel, die nicht hier sind, nicht mehr funktionieren.',

  'disturbed.list-rewritten': 'die Liste der angenommenen Schlüssel war offen',
  'disturbed.remote-list-rewritten': 'die Liste der Fernbedienungen war offen',
  'disturbed.supply-interrupted': 'die Spannung war unterbrochen oder gestützt',
  'disturbed.cell-changed': 'seine Knopfzelle wurde gewechselt',
  'disturbed.case-opened': 'sein Gehäuse war offen',
  'disturbed.blade-cut': 'sein Bart wurde gefräst',
  'disturbed.lock-changed': 'ein Schloss wurde gewechselt',
  'disturbed.key-new': 'er ist neu',
}
