import type { SameCodes } from '@shearline/jobfile'
import type { shellWords as english } from '../en/shell.ts'

/** Header, board, new job, this device, and what goes wrong. ICU message format. */
export const shellWords: SameCodes<typeof english> = {
  'app.name': 'Shearline',
  'app.device': 'Urządzenie',
  'app.skip': 'Przejść do treści strony',
  'app.loading': 'Chwileczkę ...',
  'title.board': 'Zlecenia · Shearline',
  'title.new': 'Nowe zlecenie · Shearline',
  'title.job': 'Zlecenie · Shearline',
  'title.device': 'To urządzenie · Shearline',
  yes: 'Tak',
  no: 'Nie',
  cancel: 'Anulować',
  close: 'Zamknąć',
  record: 'Zapisać',
  reason: 'Powód',
  'reason.writing': 'Powód na piśmie',
  'amount.more': 'Zwiększyć',
  'amount.less': 'Zmniejszyć',
  'amount.unit': '{label} ({unit})',
  'names.add': 'Dodać',
  'names.remove': 'Usunąć {name}',
  'saved.here': 'zachowane tutaj',
  'saved.sent': 'wysłane',

  'sending.sent': 'Zachowano, wszystko wysłane',
  'sending.sending': 'Zachowano, wysyłanie: {count}',
  'sending.waiting': 'Zachowano, do wysłania: {count}',
  'sending.refused': 'Zachowano, nie przyjęto',
  'sending.full.sent': 'Wszystko z tego urządzenia jest też na serwerze.',
  'sending.full.sending':
    'Wszystko jest zachowane na tym urządzeniu. Teraz wysyłane: {facts, plural, one {# zapis} few {# zapisy} many {# zapisów} other {# zapisu}}{blobs, plural, =0 {} one { i # nagranie} few { i # nagrania} many { i # nagrań} other { i # nagrania}}.',
  'sending.full.waiting':
    'Wszystko jest zachowane na tym urządzeniu. Do wysłania: {facts, plural, one {# zapis} few {# zapisy} many {# zapisów} other {# zapisu}}{blobs, plural, =0 {} one { i # nagranie} few { i # nagrania} many { i # nagrań} other { i # nagrania}}. Stanowisko samo próbuje ponownie, także po ponownym uruchomieniu.',
  'sending.full.refused':
    'Wszystko jest zachowane na tym urządzeniu i tu zostaje. Serwer nie przyjął: {facts, plural, one {# zapis} few {# zapisy} many {# zapisów} other {# zapisu}}{blobs, plural, =0 {} one { i # nagranie} few { i # nagrania} many { i # nagrań} other { i # nagrania}}.',
  'sending.refusal': '{what} ({code})',
  'sending.try': 'Spróbować wysłać teraz',

  'board.day':
    '{open, plural, =0 {Nic otwartego} one {# zlecenie otwarte} few {# zlecenia otwarte} many {# zleceń otwartych} other {# zlecenia otwartego}}{ready, plural, =0 {} one {, # na linii} few {, # na linii} many {, # na linii} other {, # na linii}}',
  'board.new': 'Nowe zlecenie',
  'board.earlier': 'Wcześniejsze dni',
  'board.invented': 'zmyślone',
  'board.where': '{place} · {when}',
  'board.empty.title': 'Jeszcze nie ma zleceń',
  'board.empty.what':
    'Otworzyć je, gdy przyjdzie zgłoszenie. Każde zlecenie pokazuje się tu jako wkładka zamka, z jedną rzeczą do zrobienia w następnej kolejności.',
  'board.empty.call': 'Nowe zlecenie: jakie auto, gdzie, dla kogo.',
  'board.empty.arrive':
    'Przy aucie: odczytać VIN, oznaczyć każdy klucz, zeskanować, zanim czegokolwiek się dotknie.',
  'board.empty.seal': 'Gdy wszystkie siedem zapadek stoi na linii: zapieczętować dokument i wydać.',

  'new.title': 'Nowe zlecenie',
  'new.name': 'Nazwa zlecenia',
  'new.name.hint': 'Aby łatwo je odnaleźć: „Mały dostawczy, zgubiony klucz”.',
  'new.vehicle': 'Auto, jak nazywa je klient',
  'new.vehicle.hint': 'Wystarczą rodzaj i kolor. Później rozstrzyga VIN.',
  'new.place': 'Gdzie stoi',
  'new.place.hint': 'Czasy tego zlecenia pokazuje się w strefie {zone}, strefie tego urządzenia.',
  'new.work': 'Co jest potrzebne',
  'new.customer': 'Kto zamawia',
  'new.language': 'Język klienta',
  'new.language.hint': 'W nim pisane są formularze zgody i protokół wydania.',
  'new.open': 'Otworzyć zlecenie',

  'device.title': 'To urządzenie',
  'device.by': 'Imię i nazwisko pracującej osoby',
  'device.by.hint': 'Stoi w rejestrze obok każdego jej zapisu.',
  'device.name': 'Nazwa tego urządzenia',
  'device.name.hint': 'Co czytają inni: „tablet w furgonetce 2”.',
  'device.keep': 'Zachować',
  'device.language': 'Język tego stanowiska',
  'device.language.hint': 'To, co dostaje klient, pisane jest w języku ustalonym w każdym zleceniu.',
  'device.light': 'Światło',
  'device.light.hint':
    'Wysoki kontrast to czerń na bieli z grubymi krawędziami, na słońce i dla słabych oczu.',
  'theme.auto': 'Jak urządzenie',
  'theme.light': 'Jasny',
  'theme.dark': 'Ciemny',
  'theme.sun': 'Wysoki kontrast',
  'device.sending': 'Zachowane i wysłane',
  'device.kept': 'Zachowane tutaj',
  'device.key':
    'Ta przeglądarka podpisuje swoje zapisy kluczem, który nie może jej opuścić. Inni znają urządzenie po:',
  'device.facts':
    '{count, plural, =0 {Tym urządzeniem jeszcze niczego nie zapisano.} one {Tym urządzeniem sporządzono # zapis.} few {Tym urządzeniem sporządzono # zapisy.} many {Tym urządzeniem sporządzono # zapisów.} other {Tym urządzeniem sporządzono # zapisu.}}',
  'device.lasting': 'Przeglądarka obiecała zachować ten magazyn.',
  'device.not-lasting':
    'Przeglądarka może porzucić ten magazyn, gdy dysk się zapełni. Poprosić ją o zachowanie; zwykle się zgadza, gdy stanowisko jest często używane lub zainstalowane.',
  'device.ask-lasting': 'Poprosić przeglądarkę o zachowanie',

  'by.title': 'Kto pracuje?',
  'by.go-on': 'Dalej',
  'by.needed': 'Niczego nie zapisano: rejestr potrzebuje imienia i nazwiska pracującej osoby.',

  'mishap.title': 'Ta strona zawiodła',
  'mishap.kept': 'Wszystko, co pokazano jako zachowane, nadal jest zachowane na tym urządzeniu.',
  'mishap.reload': 'Wczytać stronę ponownie',
  'problem.fact': 'Nie zapisano, wartość w „{path}” nie pasuje. {what}',
  'problem.cannot-sign':
    'Ta przeglądarka nie potrafi podpisywać zapisów. Użyć aktualnej wersji przeglądarki lub innej.',
  'problem.refused': '{what} {doNext}',
  'problem.unreachable':
    'Serwer jest teraz nieosiągalny. Wszystko, co zapisano, zostaje zachowane tutaj; spróbować ponownie, gdy będzie połączenie.',
  'problem.full':
    'To urządzenie jest pełne, więc niczego nie zapisano. Zwolnić trochę miejsca i zapisać ponownie.',
  'problem.other': 'To się nie udało: {what}',
}
