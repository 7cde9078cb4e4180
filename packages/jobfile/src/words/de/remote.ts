import type { SameCodes } from '../catalogues.ts'
import type { remoteWords as english } from '../en/remote.ts'

/** German: Are two remotes of one radio family: the verdict, its reasons, and what was met while measuring. */
export const remoteWords: SameCodes<typeof english> = {
  'remote-verdict.same': 'Gleiche Funkfamilie',
  'remote-verdict.different': 'Anderer Funk',
  'remote-verdict.unsure': 'Nicht sicher',

  'remote-reason.modulation':
    '{same, select, yes {Beide senden gleich: {original}.} other {Das Original sendet so: {original}; die neue so: {new}.}}',
  'remote-reason.modulation-unknown': 'Wie gesendet wird, ist nicht klar: Original {original}, neu {new}.',
  'remote-reason.carrier': 'Die Träger liegen {difference} auseinander: Original {original}, neu {new}.',
  'remote-reason.carrier-unknown':
    'Die Mittenfrequenz einer Aufzeichnung ist nicht bekannt, deshalb lassen sich die Träger nicht vergleichen.',
  'remote-reason.carrier-drifted':
    'Der neue Träger liegt um {difference} daneben. Ein schmaler Empfänger im Fahrzeug hört ihn vielleicht nur aus der Nähe, obwohl die Knopfzelle frisch ist.',
  'remote-reason.timing':
    '{unmatched, select, both {Jede hat Impulslängen, die die andere nicht hat} other {Die Impulslängen weichen um {percent} % ab}}: Original {original} µs, neu {new} µs.',
  'remote-reason.timing-part':
    'Nur ein Teil der Impulslängen lässt sich vergleichen: Original {original} µs, neu {new} µs.',
  'remote-reason.deviation': 'Die Frequenzhübe weichen um {percent} % ab: Original {original}, neu {new}.',
  'remote-reason.symbol-rate':
    'Die Symbolraten weichen um {percent} % ab: Original {original}, neu {new} je Sekunde.',
  'remote-reason.other-sender-matches':
    'Ein schwächerer Sender in einer Aufzeichnung passt zur anderen Aufzeichnung: Der stärkste war vielleicht nicht die Fernbedienung.',
  'remote-reason.no-sender':
    '{side, select, original {Original} other {Neue Fernbedienung}}: Kein Sender wurde gefunden.',
  'remote-reason.weak':
    '{side, select, original {Original} other {Neue Fernbedienung}}: nur {snr} dB über dem Rauschen; 6 dB sind nötig.',
  'remote-reason.off-centre':
    '{side, select, original {Original} other {Neue Fernbedienung}}: Der Träger liegt am Rand des Aufgezeichneten, {offset} neben der Mitte.',
  'remote-reason.clipped':
    '{side, select, original {Original} other {Neue Fernbedienung}}: {percent} % der Aufzeichnung sind übersteuert.',
  'remote-reason.foreign-on-top':
    '{side, select, original {Original} other {Neue Fernbedienung}}: Ein anderer Sender liegt darüber.',
  'remote-reason.several-senders':
    '{side, select, original {Original} other {Neue Fernbedienung}}: Zwei Sender sind etwa gleich stark.',
  'remote-reason.few-pulses':
    '{side, select, original {Original} other {Neue Fernbedienung}}: zu wenige Impulse zum Messen.',

  'remote-finding.no-sender':
    'Kein Sender wurde gefunden. Erneut aufzeichnen und die Taste zwei Sekunden gedrückt halten.',
  'remote-finding.weak':
    'Nur {snrDb} dB über dem Rauschen; 6 dB sind nötig. Fernbedienung näher bringen und erneut aufzeichnen.',
  'remote-finding.off-centre':
    'Der Träger liegt {offset} neben der Mitte. Empfänger näher darauf abstimmen und erneut aufzeichnen.',
  'remote-finding.clipped':
    '{percent} % der Werte sind übersteuert. Verstärkung verringern oder weiter weggehen und erneut aufzeichnen.',
  'remote-finding.foreign-on-top':
    'Ein anderer Sender liegt darüber. Warten, bis er schweigt, und erneut aufzeichnen.',
  'remote-finding.several-senders':
    'Zwei Sender sind etwa gleich stark. Fernbedienung dicht an den Empfänger halten und erneut aufzeichnen.',
  'remote-finding.few-pulses':
    'Zu wenige Impulse zum Messen. Taste zwei Sekunden gedrückt halten und erneut aufzeichnen.',
  'remote-finding.rate-unknown': 'Die Abtastrate ist nicht bekannt. Unten angeben.',
  'remote-finding.rate-unusable': 'Eine Abtastrate von {rate} je Sekunde ist nicht verwendbar. Unten prüfen.',
  'remote-finding.format-unknown': 'Das Abtastformat ist nicht bekannt. Unten wählen.',
  'remote-finding.centre-unknown':
    'Die Mittenfrequenz ist nicht bekannt, deshalb ist der Träger nur von der Mitte aus angegeben.',
  'remote-finding.empty-recording':
    'Die Aufzeichnung hat {samples, plural, one {# Abtastwert} other {# Abtastwerte}}: zu wenig zum Messen.',
  'remote-finding.cut-sample':
    'Die letzten Bytes ergeben keinen ganzen Abtastwert und wurden ausgelassen. Wirken die Werte falsch, das Abtastformat prüfen.',
  'remote-finding.not-numbers':
    '{values, plural, one {# Wert war keine Zahl} other {# Werte waren keine Zahlen}}. Abtastformat prüfen.',
  'remote-finding.parts-dropped':
    'Die Aufzeichnung ist lang: Ihre leisesten {share} % wurden ausgelassen. Fehlt der Tastendruck, kürzer aufzeichnen.',
  'remote-finding.other-sender':
    'Ein anderer Sender war {offset} neben der Mitte zu hören. Es macht nichts, wenn die Fernbedienung die stärkste war.',
  'remote-finding.some-clipping':
    '{percent} % der Werte sind übersteuert; das hier Gemessene leidet nicht darunter.',
  'remote-finding.carrier-wanders':
    'Der Träger wandert innerhalb der Aufzeichnung um {drift}. Knopfzelle und Platine dieser Fernbedienung prüfen.',
  'remote-finding.sigmf-unreadable': 'Die SigMF-Datei ist nicht lesbar. Werte unten angeben.',
  'remote-finding.sigmf-field': 'Die SigMF-Datei nennt {field} nicht. Wert unten angeben.',
  'remote-finding.sigmf-datatype':
    'Das SigMF-Abtastformat {datatype} ist hier nicht bekannt. Aufzeichnung umwandeln.',
  'remote-finding.sigmf-channels':
    'Die Aufzeichnung hat {channels} Kanäle in einer Datei. Einen Kanal in eine eigene Datei schreiben.',
  'remote-finding.sigmf-retuned':
    'Der Empfänger wurde während der Aufzeichnung umgestimmt; seine erste Mittenfrequenz gilt. Besser erneut aufzeichnen.',
}
