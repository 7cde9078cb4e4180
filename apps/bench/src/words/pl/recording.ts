import type { SameCodes } from '@shearline/jobfile'
import type { recordingWords as english } from '../en/recording.ts'
import { recordingServiceWords } from './recording-services.ts'
import { recordingViewWords } from './recording-view.ts'

/** Recordings and faults. */
export const recordingWords: SameCodes<typeof english> = {
  ...recordingViewWords,
  ...recordingServiceWords,

  'recording.pick': 'Zaimportować nagranie',
  'recording.pick.hint':
    'Albo upuścić je w dowolnym miejscu tej strony. Odczyt odbywa się na tym urządzeniu.',
  'recording.drop': 'Upuścić nagranie',
  'recording.title': 'Nagranie {name}',
  'recording.reading': 'Odczyt nagrania',
  'recording.looking': 'Sprawdzanie, jakiego rodzaju jest to nagranie.',
  'recording.read-so-far': 'odczytano {read} z {whole}',
  'recording.frames-so-far':
    '{count, plural, =0 {jeszcze żadnej ramki} one {# ramka} few {# ramki} many {# ramek} other {# ramki}}',
  'recording.messages-so-far':
    '{count, plural, =0 {jeszcze żadnego komunikatu} one {# komunikat} few {# komunikaty} many {# komunikatów} other {# komunikatu}}',
  'recording.read-percent': 'odczytano {percent} procent',
  'recording.cancel.hint': 'Nic nie zostanie zachowane bez wyraźnego polecenia.',
  'recording.failed': 'Odczyt zatrzymany: {problem} Niczego nie zapisano.',
  'recording.unknown': 'Tego pliku nie można odczytać jako nagrania: {reason}. Niczego nie zapisano.',
  'recording.format': 'Format: {format}, ponieważ {reason}.',
  'recording.size': 'Rozmiar',
  'recording.frames': 'Ramki',
  'recording.messages': 'Komunikaty',
  'recording.messages.of':
    '{count, number}{incomplete, plural, =0 {} one {, nadto # niekompletny} few {, nadto # niekompletne} many {, nadto # niekompletnych} other {, nadto # niekompletnego}}',
  'recording.units': 'Sterowniki, które odpowiedziały',
  'recording.faults': 'Zgłoszone usterki',
  'recording.faults.of':
    '{units, plural, =0 {nie ma w nim listy usterek} one {{faults} z # sterownika} few {{faults} z # sterowników} many {{faults} z # sterowników} other {{faults} z # sterownika}}',
  'recording.vin': 'Usłyszany VIN:',
  'recording.vin.same': 'taki sam jak w rejestrze.',
  'recording.vin.differs': 'Nie ten, który jest w rejestrze ({vin}): zapisanie go będzie temu przeczyć.',
  'recording.not-vin':
    'Sterownik {unit} na pytanie o VIN odpowiedział „{text}”. Jego budowa jest niepoprawna i nie jest zapisywany jako VIN.',
  'recording.clean': 'Udało się odczytać każdy wiersz.',
  'recording.findings':
    '{count, plural, one {# rzecz warta obejrzenia} few {# rzeczy warte obejrzenia} many {# rzeczy wartych obejrzenia} other {# rzeczy wartej obejrzenia}}',
  'recording.left-out':
    '{count, plural, one {# miejsca nie udało się odczytać i je pominięto.} few {# miejsc nie udało się odczytać i je pominięto.} many {# miejsc nie udało się odczytać i je pominięto.} other {# miejsca nie udało się odczytać i je pominięto.}}',
  'recording.left-out.first': 'Pierwsze: {where}, {what}.',
  'recording.more-findings':
    '{count, plural, one {i jeszcze #} few {i jeszcze #} many {i jeszcze #} other {i jeszcze #}}',
  'recording.again': 'Dokładnie to nagranie jest już w rejestrze tego zlecenia.',
  'recording.which': 'Który to skan?',
  'recording.which.hint': 'Decyduje pracująca osoba: nic w pliku nie mówi, czy prace były już wykonane.',
  'recording.no-scan': 'Nie zawiera listy usterek, więc zostaje zachowane tylko jako nagranie.',
  'recording.which.before': 'Przed pracami',
  'recording.which.after': 'Po pracach',
  'recording.which.cleared': 'Po kasowaniu',
  'recording.which.cycled': 'Po wyłączeniu i włączeniu zapłonu',
  'recording.which.keep': 'Tylko zachować',
  'recording.sealed': 'Sam plik',
  'recording.sealed.do': 'Zachować go także, zapieczętowany',
  'recording.sealed.hint': 'Otworzyć może go wtedy: {names}. Jest w nim wszystko, co przeszło przewodem.',
  'recording.sealed.nobody': 'Aby zachować także sam plik, wskazać klucz, który może go otworzyć.',
  'recording.kept-as-is':
    'Co się zachowuje: komunikaty, z zaczernioną treścią usług zabezpieczeń, oraz skrót pliku. Sam plik zostaje tam, gdzie jest.',
  'recording.record': 'Zapisać je',
  'recording.leave': 'Zostawić je',
  'strip.what':
    '{length}, {messages, plural, one {# komunikat} few {# komunikaty} many {# komunikatów} other {# komunikatu}}, {units, plural, one {# sterownik} few {# sterowniki} many {# sterowników} other {# sterownika}}',
  'strip.events':
    '{count, plural, =0 {Brak zdarzeń} one {# zdarzenie} few {# zdarzenia} many {# zdarzeń} other {# zdarzenia}} w ciągu nagrania',
  'event.session-opened':
    '{count, plural, one {# otwarta sesja} few {# otwarte sesje} many {# otwartych sesji} other {# otwartej sesji}}',
  'event.reset': '{count, plural, one {# restart} few {# restarty} many {# restartów} other {# restartu}}',
  'event.muted':
    '{count, plural, one {# wyciszony sterownik} few {# wyciszone sterowniki} many {# wyciszonych sterowników} other {# wyciszonego sterownika}}',
  'event.faults-cleared':
    '{count, plural, one {# kasowanie} few {# kasowania} many {# kasowań} other {# kasowania}}',
  'event.refused': '{count, plural, one {# odmowa} few {# odmowy} many {# odmów} other {# odmowy}}',
  'event.supply-low':
    '{count, plural, one {# spadek zasilania} few {# spadki zasilania} many {# spadków zasilania} other {# spadku zasilania}}',
}
