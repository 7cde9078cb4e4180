import type { SameCodes } from '@shearline/jobfile'
import type { offlineWords as english } from '../en/offline.ts'

/** What is kept without a connection, clocks that differ, and newer versions of the bench. */
export const offlineWords: SameCodes<typeof english> = {
  'clock.ahead':
    'Zegar tego urządzenia śpieszy się względem serwera o {minutes, plural, one {# minutę} few {# minuty} many {# minut} other {# minuty}}. Czasy w rejestrze idą za nim: ustawić go przy okazji.',
  'clock.behind':
    'Zegar tego urządzenia spóźnia się względem serwera o {minutes, plural, one {# minutę} few {# minuty} many {# minut} other {# minuty}}. Czasy w rejestrze idą za nim: ustawić go przy okazji.',
  'clock.other-ahead':
    'Zegar urządzenia „{name}” śpieszy się o {minutes, plural, one {# minutę} few {# minuty} many {# minut} other {# minuty}}. Jego zapisy stoją w rejestrze później, niż powstały.',
  'renewal.ready':
    'Nowa wersja jest gotowa. Można wczytać ponownie w dowolnej chwili; wszystko, co zapisano, zostaje.',
  'renewal.job-open':
    'W innym oknie tej przeglądarki jest otwarte zlecenie. Zamknąć je tam najpierw, potem wczytać ponownie.',
  'renewal.reload': 'Wczytać ponownie',
  'board.unsent':
    '{count, plural, one {# zapis zachowany tutaj, jeszcze niewysłany} few {# zapisy zachowane tutaj, jeszcze niewysłane} many {# zapisów zachowanych tutaj, jeszcze niewysłanych} other {# zapisu zachowanego tutaj, jeszcze niewysłanego}}',
  'sending.reading': 'Sprawdzanie, co jest zachowane',
  'sending.full.reading': 'Sprawdzanie, co jest zachowane na tym urządzeniu, a co wysłane.',
  'sending.upload': 'Wysyłanie {name}: {sent} z {whole}',
  'device.whole': 'Całe stanowisko jest zachowane na tym urządzeniu: otwiera się i działa bez połączenia.',
  'device.not-whole':
    'Stanowisko nie jest tu jeszcze zachowane w całości. Utrzymać połączenie, aż ten wiersz o tym powie.',
  'device.room': 'Stanowisko zajmuje {used} na tym urządzeniu.',
  'device.droppable':
    'Gdy brakuje miejsca: nagrania już wysłane można stąd usunąć. Zapisy i dokumenty zostają.',
  'device.drop-sent': 'Usunąć wysłane nagrania ({size})',
}
