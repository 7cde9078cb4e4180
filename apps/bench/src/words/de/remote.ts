import type { SameCodes } from '@shearline/jobfile'
import type { remoteWords as english } from '../en/remote.ts'

/** German: Is the new remote of the same radio family as the original? */
export const remoteWords: SameCodes<typeof english> = {
  'remote.title': 'Gehört die neue Fernbedienung zur selben Funkfamilie?',
  'remote.why':
    'Eine Fernbedienung mit anderem Funk startet das Fahrzeug, aber ihre Tasten bewirken nichts. Zwei kurze Aufzeichnungen zeigen es, bevor sie verbraucht ist.',
  'remote.open': 'Zwei Funkaufzeichnungen vergleichen',
  'remote.how':
    'Beide Fernbedienungen mit einem beliebigen Universalempfänger aufzeichnen: derselbe Empfänger, direkt nacheinander, eine Taste zwei Sekunden gedrückt. Nur physikalische Werte werden gemessen. Was gesendet wird, wird weder gelesen noch gezeigt.',
  'remote.privacy':
    'Die Werkbank behält keine Aufzeichnung: Nach dem Messen sind die Abtastwerte weg. Die Dateien bleiben, wo Ihr Empfänger sie geschrieben hat; dort löschen.',
  'remote.close': 'Schließen',
  'remote.original': 'Original-Fernbedienung',
  'remote.new': 'Neue Fernbedienung',
  'remote.pick': 'Ihre Aufzeichnung wählen',
  'remote.pick-again': 'Andere wählen',
  'remote.pick.hint': '.cu8, .cs8, .cs16 oder .cf32; oder beide Dateien eines SigMF-Paars.',
  'remote.pick.no-samples':
    '{name} beschreibt nur eine Aufnahme. Wählen Sie sie zusammen mit der Datei der Abtastwerte (.sigmf-data).',
  'remote.pick.not-recording':
    '{name} ist keine Funkaufnahme. Wählen Sie die Datei, die Ihr Empfänger geschrieben hat, oder beide Dateien eines SigMF-Paars.',
  'remote.forget': 'Wegnehmen',
  'remote.measuring': '{name} wird gemessen',
  'remote.measured':
    '{name}, {seconds} bei {rate} Abtastwerten je Sekunde{centre, select, none {} other {, Mitte {centre}}}',
  'remote.failed': 'Das Messen brach ab: {problem}',
  'remote.ask.change': 'Mit anderen Werten lesen',
  'remote.rate': 'Abtastwerte je Sekunde',
  'remote.rate.unit': 'Tausend',
  'remote.centre': 'Mittenfrequenz',
  'remote.centre.hint': 'Ohne sie lassen sich die Träger nicht vergleichen.',
  'remote.format': 'Abtastformat',
  'remote.format.cu8': '8 Bit, ohne Vorzeichen (cu8)',
  'remote.format.cs8': '8 Bit, mit Vorzeichen (cs8)',
  'remote.format.cs16': '16 Bit (cs16)',
  'remote.format.cs16be': '16 Bit, höchstes Byte zuerst',
  'remote.format.cf32': '32 Bit Gleitkomma (cf32)',
  'remote.format.cf32be': '32 Bit Gleitkomma, höchstes Byte zuerst',
  'remote.measure': 'Messen',

  'remote.verdict.same.next':
    'Ihre Tasten können nach dem Anlernen funktionieren. Der Funk allein beweist nicht, dass das Fahrzeug sie annimmt.',
  'remote.verdict.different.next':
    'Noch nicht verbrauchen: Ihre Tasten bewirken an diesem Fahrzeug höchstwahrscheinlich nichts. Erst die Teilenummern vergleichen.',
  'remote.verdict.unsure.next':
    'Beide erneut aufzeichnen: derselbe Empfänger, direkt nacheinander, aus der Nähe, eine Taste zwei Sekunden gedrückt.',
  'remote.points.same': 'Passt',
  'remote.points.unsure': 'Lässt es offen',
  'remote.points.different': 'Weicht ab',
  'remote.reasons': 'Warum',
  'remote.drift': 'Schwache Reichweite trotz frischer Knopfzelle?',

  'remote.values': 'Gemessen',
  'remote.value': 'Wert',
  'remote.value.carrier': 'Träger',
  'remote.value.modulation': 'Tastung',
  'remote.value.deviation': 'Hub je Seite',
  'remote.value.rate': 'Symbole je Sekunde',
  'remote.value.pulses': 'Impulse, µs',
  'remote.value.gaps': 'Lücken, µs',
  'remote.value.burst': 'Sendeblock',
  'remote.value.repeats': 'Sendeblöcke; Wiederholungen',
  'remote.value.width': 'Breite (99 % der Leistung)',
  'remote.value.snr': 'Über dem Rauschen',
  'remote.value.clipped': 'Übersteuert',
  'remote.modulation.OOK': 'Ein-Aus-Tastung',
  'remote.modulation.2-FSK': 'zwei Töne (2-FSK)',
  'remote.modulation.unsure': 'nicht klar',

  'remote.pictures': 'Bilder',
  'remote.pictures.content':
    'So gezeichnet, dass kein Bild das Gesendete zurückgeben kann: Spitzen werden über ganze Impulsgruppen gehalten.',
  'remote.spectrum': 'Spektrum beim Senden',
  'remote.spectrum.key':
    'Die Frequenz läuft nach rechts, die Stärke nach oben. Dünne Linie: der Funkraum, während die Fernbedienung schweigt. Gestrichelt: Träger oder Töne.',
  'remote.spectrum.apart':
    'Für einen gemeinsamen Maßstab liegen sie zu weit auseinander: Jede hat ihren eigenen.',
  'remote.spectrum.says': '{name}: Träger {carrier}, {width} breit, {snr} dB über dem Rauschen.',
  'remote.waterfall': 'Wasserfall',
  'remote.waterfall.key':
    'Die Zeit läuft nach rechts, die Frequenz nach oben; je stärker, desto kräftiger die Farbe.',
  'remote.waterfall.range': '{low} bis {high}',
  'remote.waterfall.says':
    '{name}: {bursts, plural, one {# Sendeblock} other {# Sendeblöcke}} in {seconds} um {carrier}.',
  'remote.burst': 'Je ein Sendeblock, mit gemeinsamem Beginn',
  'remote.burst.key':
    'Die Zeit läuft nach rechts, die Stärke nach oben. Der Umriss des längsten Sendeblocks; die Lücken darin sind geschlossen.',
  'remote.burst.says': '{name}: {length} lang.',
  'remote.pulse': 'Je ein mittlerer Impuls, mit gemeinsamem Beginn',
  'remote.pulse.key':
    'Die Zeit läuft nach rechts, die Stärke nach oben. Sechzehn Impulse oder mehr, übereinandergelegt.',
  'remote.pulse.says': '{name}: Mittel aus {pulses} Impulsen; übliche Längen {lengths} µs.',
  'remote.pulse.none': '{name}: keiner, weil zwei Töne keine Impulse haben oder es zu wenige sind.',

  'remote.bands': 'Was dort erlaubt ist, wo das Fahrzeug fährt',
  'remote.bands.note': 'Nur zur Information; das örtliche Recht entscheidet, und kein Urteil hängt davon ab.',
  'remote.region': 'Gebiet',
  'remote.region.europe': 'Europa',
  'remote.region.north-america': 'Nordamerika',
  'remote.region.japan': 'Japan',
  'remote.region.south-korea': 'Südkorea',
  'remote.region.china': 'China',
  'remote.region.australia-new-zealand': 'Australien, Neuseeland',
  'remote.band.usual': 'Fernbedienungen sind hier üblich',
  'remote.band.limit': 'Grenzwert',
  'remote.band.range': '{low} bis {high} MHz',
  'remote.band.source': 'Quelle: {source}',
  'remote.band.memory': 'Aus dem Gedächtnis, an keiner Quelle geprüft',
  'remote.band.none': '{carrier} liegt in keinem Band, das hier für dieses Gebiet bekannt ist.',
  'remote.band.field': 'Bei {carrier} sind das {microvolts} µV/m ({decibels} dBµV/m) in 3 m Abstand.',

  'remote.keep': 'Ergebnis im Auftrag behalten',
  'remote.keep.note': 'Urteil, Gründe und die wichtigsten Werte; keine Aufzeichnung und kein Bild.',
  'remote.key.original': 'Das Original ist Schlüssel',
  'remote.key.new': 'Die neue Fernbedienung ist Schlüssel',
  'remote.record': 'Ergebnis eintragen',
  'remote.recorded': 'Eingetragen.',

  'fact.remote-compared':
    'Funk {fresh, select, none {der neuen Fernbedienung} other {von Schlüssel {fresh}}} gegen {original, select, none {das Original} other {Schlüssel {original}}}: {verdict}',
}
