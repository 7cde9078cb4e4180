import type { SameCodes } from '@shearline/jobfile'
import type { teachingWords as english } from '../en/teaching.ts'

/** German: Power, backup and blank. */
export const teachingWords: SameCodes<typeof english> = {
  'plan.power.set': '{volts} ({source}), {battery}.',
  'plan.floor': 'Untergrenze',
  'plan.floor.hint': 'Darunter ist die Sitzung in Gefahr. Die Angabe des Herstellers geht vor.',
  'plan.floor.source': 'Woher der Wert stammt',
  'plan.floor.usual': 'übliche Praxis',
  'plan.battery': 'Batterie des Fahrzeugs',

  'backup.title': 'Sicherung der Daten der Wegfahrsperre',
  'backup.again': 'Erneut auslesen',
  'backup.way': 'Gibt es eine Datensicherung?',
  'backup.way.seal': 'Zweimal ausgelesen, versiegeln',
  'backup.way.reads': 'Zweimal ausgelesen, nur die Hashes',
  'backup.way.none': 'Keine',
  'backup.stays': 'Die Dateien bleiben, wo sie sind. Nur ihre Hashes werden eingetragen.',
  'backup.what': 'Was ausgelesen wurde',
  'backup.what.hint': 'Steuergerät und Art des Speichers, in eigenen Worten.',
  'backup.first': 'Erste Auslesung (SHA-256)',
  'backup.second': 'Zweite Auslesung (SHA-256)',
  'backup.same': 'Die zwei Auslesungen sind gleich.',
  'backup.differ': 'Die zwei Auslesungen weichen ab. Erneut auslesen, bis zwei übereinstimmen.',
  'backup.because': 'Warum es keine gibt',
  'hash.pick': 'Hash einer Datei dieses Geräts bilden',
  'hash.pick-named': '{label}: Hash einer Datei dieses Geräts bilden',
  'hash.working': 'Hash von {name} wird gebildet ...',
  'hash.done': 'Hash von {name} gebildet; die Datei bleibt, wo sie ist.',
  'hash.form': '64 Zeichen 0-9 und a-f',

  'blank.title': 'Rohling für den neuen Schlüssel',
  'blank.again': 'Anderen Rohling wählen',
  'blank.item': 'Rohling',
  'blank.item.hint': 'Eigene Lagernummer oder Beschreibung.',
  'blank.carrier': 'Trägerfrequenz',
  'blank.transponder': 'Transponderfamilie',
  'blank.transponder.hint': 'Familie, wie aufgedruckt.',
  'blank.profile': 'Bartprofil',
  'blank.fits': 'Mit dem Fahrzeug und seinem vorhandenen Schlüssel verglichen?',
  'blank.fits.hint':
    'Bei vielen Fahrzeugen ist ein falscher Rohling endgültig verbraucht: vergleichen, bevor er angelernt wird.',
  'blank.fits.yes': 'Verglichen, passt',
  'blank.fits.no': 'Verglichen, passt nicht',
  'blank.fits.open': 'Noch nicht verglichen',
}
