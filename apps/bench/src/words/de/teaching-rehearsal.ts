import type { SameCodes } from '@shearline/jobfile'
import type { teachingRehearsalWords as english } from '../en/teaching-rehearsal.ts'

/** German: The rehearsal: order, guards, the line of steps, what a stop leaves and the way back. */
export const teachingRehearsalWords: SameCodes<typeof english> = {
  'rehearsal.title': 'Trockenlauf: Schritt für Schritt, und was bei einem Abbruch gilt',
  'rehearsal.again': 'Erneut lesen',
  'rehearsal.read': 'Gelesen in der Reihenfolge {order}. {wayBack}',
  'rehearsal.no-keys':
    'Noch ist kein Schlüssel anzulernen: zuerst die Schlüssel auf dem Tisch und den neuen kennzeichnen.',
  'rehearsal.label-new': 'Den neuen Schlüssel kennzeichnen',
  'rehearsal.missing':
    '{count, plural, one {Schlüssel {keys} ist} other {Die Schlüssel {keys} sind}} nicht darin: erneut lesen.',
  'rehearsal.no-new':
    'Noch ist kein neuer Schlüssel gekennzeichnet. Ihn zuerst oben kennzeichnen, damit auch er durchgespielt wird.',
  'rehearsal.working': 'Jeder mögliche Abbruch wird durchgespielt ...',
  'rehearsal.too-much-unknown':
    'Für eine Antwort ist zu viel nicht bekannt. Art der Sitzung, Plätze der Liste oder was sie öffnet angeben.',
  'rehearsal.open': 'Sitzung geöffnet',
  'rehearsal.opened': 'geöffnet',
  'rehearsal.closed': 'Sitzung geschlossen',
  'rehearsal.closed-short': 'geschlossen',
  'rehearsal.cannot-open': 'Nach dieser Regel lässt sich die Sitzung mit dem Vorhandenen nicht öffnen.',
  'rehearsal.better': 'Eine sicherere Reihenfolge: {order}.',
  'rehearsal.take-better': 'Übernehmen',
  'rehearsal.key': 'Schlüssel {key}',
  'rehearsal.earlier': 'Früher',
  'rehearsal.length': 'Dauer der Sitzung: {time}.',
  'rehearsal.stranded':
    '{count, plural, =0 {Wo es auch abbricht, ein Schlüssel hier startet das Fahrzeug noch.} one {Bei # Schritt bleibt das Fahrzeug vielleicht ohne Schlüssel, der es startet.} other {Bei # Schritten bleibt das Fahrzeug vielleicht ohne Schlüssel, der es startet.}}',
  'rehearsal.sure': 'Jede Zeile lesen. Der schlimmste Rückweg oben ist das, was Sie der Kundschaft zusagen.',
  'rehearsal.record': 'Ich habe es gelesen',

  'order.title': 'Reihenfolge, in der die Schlüssel gezeigt werden',
  'order.earlier': 'Schlüssel {key} früher zeigen',
  'why.proven': 'Warum diese Reihenfolge: Jede andere wurde ausgeschlossen',
  'why.best-found': 'Warum diese Reihenfolge: die beste, die gefunden wurde',
  'why.at-open': 'nach dem Öffnen',
  'why.at-key': 'nach Schlüssel {key}',

  'guards.title': 'Vor dem Öffnen',
  'guards.all': 'Vor dem Öffnen: Alles ist geklärt',
  'guards.open':
    '{count, plural, one {Vor dem Öffnen: # Punkt zu klären} other {Vor dem Öffnen: # Punkte zu klären}}',
  'guards.met': 'Geklärt: {guards}.',

  'line-of-steps': 'Die Sitzung als Linie von Schritten',
  'mark.safe': 'wie zuvor',
  'mark.loses': 'verliert {keys}',
  'mark.stranded': 'liegt fest',
  'end-mark.safe': 'alle starten',
  'end-mark.loses': 'manche nicht mehr',
  'end-mark.stranded': 'keiner startet',
  'stop-here.title': '{step}: wenn jetzt etwas passiert',
  'stop-here.goes-on': 'Die Sitzung geht weiter; an ihrem Ende:',
  'stop-here.spoiled': 'Verdorben: {keys}.',
  'cause.of-key': '{cause} ({key})',
  'list-or': ' / ',

  'way.going': 'Um wegzufahren:',
  'way.finished': 'Um die Arbeit zu beenden:',
  'way.goes': 'Das Fahrzeug lässt sich fahren mit {keys}.',
  'way.in': '{way}, {time}.',
  'way.not-proven': 'Es kann einen kürzeren Rückweg geben.',
  'lasting.none': 'keine Angabe',
  'lasting.seconds': '{count, plural, one {{figure} Sekunde} other {{figure} Sekunden}}',
  'lasting.minutes': '{count, plural, one {{figure} Minute} other {{figure} Minuten}}',
}
