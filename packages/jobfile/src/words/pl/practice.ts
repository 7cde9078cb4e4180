import type { SameCodes } from '../catalogues.ts'
import type { practiceWords as english } from '../en/practice.ts'

/** Training at the practice car: exercises, what came of an action, and why points were lost. */
export const practiceWords: SameCodes<typeof english> = {
  'practice.one-more-key': 'Jeszcze jeden klucz',
  'practice.one-more-key.story':
    'Działają dwa klucze, a klient chce trzeciego. Auto dodaje klucz i zachowuje pozostałe. Potem sprawdzić każdy klucz.',
  'practice.forgotten-at-home': 'Klucz został w domu',
  'practice.forgotten-at-home.story':
    'Auto zapisuje listę na nowo przy zamknięciu sesji. Drugi klucz leży w domu, pół godziny stąd. Zapisany jest trzeci klucz, którego nikt nie ma.',
  'practice.dies-after-second-key': 'Sesja pada po drugim kluczu',
  'practice.dies-after-second-key.story':
    'Zimny poranek, słaby akumulator, brak kopii zapasowej. Lista zapisuje się na nowo z każdym kluczem. Sprawić, by dojechali do domu.',
  'practice.erased-and-cut': 'Lista wymazana, potem znika łącze',
  'practice.erased-and-cut.story':
    'Auto otwiera sesję tylko działającym kluczem i w tej chwili zapomina wszystkie klucze. Pod ręką jest dowiedziona kopia zapasowa listy, a jeden pilot ma rozładowaną baterię.',
  'practice.clone-on-the-ring': 'Dwa klucze, które są jednym',
  'practice.clone-on-the-ring.story':
    'Auto chce dwóch różnych działających kluczy, zanim przyjmie trzeci. Na kółku wiszą dwa klucze; jeden z nich to klon.',
  'practice.list-is-full': 'Lista jest pełna',
  'practice.list-is-full.story':
    'Cztery miejsca, cztery zapisane klucze, dwa z nich dawno zgubione. Przyjmując kolejny, auto bez słowa usuwa najstarszy.',

  'practice.misread-code': 'Kod źle odczytano',
  'practice.misread-code.story':
    'Sesja otwiera się tylko kodem, a ktoś wziął 1 za 7. Każda błędna próba kosztuje dwadzieścia minut. Akumulator nie jest najlepszy.',

  'practice.did.supply-on': 'Zasilacz ustawiony na {amperes}\u00a0A: {volts}\u00a0V.',
  'practice.did.scanned':
    '{faults, plural, =0 {Brak zapisanych usterek} one {# zapisana usterka} few {# zapisane usterki} many {# zapisanych usterek} other {# zapisanej usterki}}; {units, plural, one {odpowiedział # sterownik} few {odpowiedziały # sterowniki} many {odpowiedziało # sterowników} other {odpowiedziało # sterownika}}.',
  'practice.did.cleared': 'Pamięci usterek skasowane; sterownik poduszek powietrznych zostawiono w spokoju.',
  'practice.did.cycled': 'Zapłon wyłączony i znów włączony.',
  'practice.did.session-opened': 'Sesja jest otwarta.',
  'practice.did.session-refused': 'Auto nie otwiera sesji.',
  'practice.did.session-wants-code': 'Auto chce najpierw kodu.',
  'practice.did.code-accepted': 'Auto przyjmuje kod.',
  'practice.did.code-refused':
    'Auto odrzuca kod{minutes, plural, =0 {.} one { i nie przyjmie innego przez # minutę.} few { i nie przyjmie innego przez # minuty.} many { i nie przyjmie innego przez # minut.} other { i nie przyjmie innego przez # minuty.}}',
  'practice.did.code-wait':
    'Auto jeszcze czeka: przyjmie kod za {minutes, plural, one {# minutę} few {# minuty} many {# minut} other {# minuty}}.',
  'practice.did.code-not-wanted': 'To auto nie pyta o kod.',
  'practice.did.stopped': 'Sesja została zatrzymana.',
  'practice.did.no-session': 'Żadna sesja nie jest otwarta.',
  'practice.did.session-closed':
    'Sesja jest zamknięta; {stored, plural, one {zapisany jest # klucz} few {zapisane są # klucze} many {zapisanych jest # kluczy} other {zapisane jest # klucza}}.',
  'practice.did.session-too-few':
    'Zaadaptowano za mało kluczy: sesja skończyła się bez zamknięcia; {stored, plural, one {zapisany jest # klucz} few {zapisane są # klucze} many {zapisanych jest # kluczy} other {zapisane jest # klucza}}.',
  'practice.did.no-backup': 'Nie ma kopii zapasowej.',
  'practice.did.restored':
    'Zachowana lista wróciła; {stored, plural, one {zapisany jest # klucz} few {zapisane są # klucze} many {zapisanych jest # kluczy} other {zapisane jest # klucza}}.',
  'practice.did.waited':
    '{minutes, plural, one {# minutę} few {# minuty} many {# minut} other {# minuty}} później: {volts}\u00a0V.',
  'practice.did.no-such-key': 'Nie ma tu klucza {key}.',
  'practice.did.show-taken': 'Klucz {key} przyjęty: zaadaptowane w tej sesji: {taught}.',
  'practice.did.show-no-session': 'Pokazano klucz {key}, ale żadna sesja nie jest otwarta.',
  'practice.did.show-not-accepted': 'Klucz {key} nie został przyjęty.',
  'practice.did.show-same-key': 'Ta sesja zna już klucz {key}.',
  'practice.did.show-list-full': 'Klucz {key} nie został przyjęty: lista jest pełna.',
  'practice.did.start-started': 'Klucz {key} uruchamia auto.',
  'practice.did.start-key-not-accepted':
    'Klucz {key} nie jest przyjmowany. Auto zapisuje z tego powodu kod usterki.',
  'practice.did.start-battery-too-weak':
    'Klucz {key} jest przyjmowany, ale akumulator jest za słaby, by zakręcić rozrusznikiem: {volts}\u00a0V.',
  'practice.did.start-not-on-the-bench': 'Klucza {key} tu nie ma.',
  'practice.did.button-works': 'Przyciski klucza {key} działają.',
  'practice.did.button-dead': 'Przyciski klucza {key} nic nie robią.',
  'practice.did.fetched': 'Klucz {key} przywieziono. Zajęło to pół godziny.',
  'practice.did.cell-new': 'Klucz {key} ma nową baterię.',
  'practice.did.incident-supply-lost': 'Zasilanie zniknęło! Sesja się skończyła; teraz {volts}\u00a0V.',
  'practice.did.incident-link-lost': 'Łącze z autem zerwane! Sesja się skończyła.',

  'practice.mark.stranded': 'Żaden klucz tutaj nie uruchamia auta: klient utknął.',
  'practice.mark.session-open': 'Sesję pozostawiono otwartą.',
  'practice.mark.key-does-not-start': 'Klucz {key} nie uruchamia auta.',
  'practice.mark.start-not-proven': 'Nikt nie próbował uruchomić auta kluczem {key}.',
  'practice.mark.buttons-not-proven': 'Nikt nie sprawdził przycisków klucza {key}.',
  'practice.mark.no-scan-before': 'Brak skanu usterek przed pracami.',
  'practice.mark.no-scan-after': 'Brak skanu usterek po pracach.',
  'practice.mark.no-supply': 'Słaby akumulator, a przed sesją brak zasilacza.',
}
