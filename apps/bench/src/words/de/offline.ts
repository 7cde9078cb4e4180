import type { SameCodes } from '@shearline/jobfile'
import type { offlineWords as english } from '../en/offline.ts'

/** German: What is kept without a connection, clocks that differ, and newer versions of the bench. */
export const offlineWords: SameCodes<typeof english> = {
  'clock.ahead':
    'Die Uhr dieses Geräts geht gegenüber dem Server {minutes, plural, one {# Minute} other {# Minuten}} vor. Die Zeiten im Protokoll folgen ihr: bei Gelegenheit richtig stellen.',
  'clock.behind':
    'Die Uhr dieses Geräts geht gegenüber dem Server {minutes, plural, one {# Minute} other {# Minuten}} nach. Die Zeiten im Protokoll folgen ihr: bei Gelegenheit richtig stellen.',
  'clock.other-ahead':
    'Die Uhr von „{name}“ geht {minutes, plural, one {# Minute} other {# Minuten}} vor. Ihre Einträge stehen im Protokoll später, als sie gemacht wurden.',
  'renewal.ready':
    'Eine neue Version ist bereit. Neu laden, wann es passt; alles Eingetragene bleibt erhalten.',
  'renewal.job-open':
    'In einem anderen Fenster dieses Browsers ist ein Auftrag offen. Dort zuerst schließen, dann neu laden.',
  'renewal.reload': 'Neu laden',
  'board.unsent': '{count, plural, one {# Eintrag} other {# Einträge}} hier gespeichert, noch nicht gesendet',
  'sending.reading': 'Sehe nach, was gespeichert ist',
  'sending.full.reading': 'Sehe nach, was auf diesem Gerät gespeichert und was gesendet ist.',
  'sending.upload': 'Sende {name}: {sent} von {whole}',
  'device.whole': 'Die ganze Werkbank liegt auf diesem Gerät: Sie öffnet und arbeitet auch ohne Verbindung.',
  'device.not-whole':
    'Die Werkbank liegt hier noch nicht vollständig. Verbunden bleiben, bis diese Zeile es meldet.',
  'device.room': 'Die Werkbank belegt {used} auf diesem Gerät.',
  'device.droppable':
    'Bei wenig Platz: Bereits gesendete Aufzeichnungen können hier entfernt werden. Einträge und Dokumente bleiben.',
  'device.drop-sent': 'Gesendete Aufzeichnungen entfernen ({size})',
}
