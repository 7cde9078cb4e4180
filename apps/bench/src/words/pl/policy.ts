import type { SameCodes } from '@shearline/jobfile'
import type { policyWords as english } from '../en/policy.ts'

/** Rules of place and firm (policy packs), the car and its place, cautions where they matter, custody. */
export const policyWords: SameCodes<typeof english> = {
  'title.rules': 'Reguły · Shearline',
  'title.keeping': 'Do usunięcia · Shearline',
  'board.find': 'Znaleźć zlecenie',
  'board.find.hint': 'Słowa z nazwy, miejsca lub auta albo końcówka VIN.',
  'board.found':
    '{count, plural, =0 {Żadne zlecenie nie pasuje} one {# zlecenie pasuje} few {# zlecenia pasują} many {# zleceń pasuje} other {# zlecenia pasuje}}',
  'board.more':
    '{count, plural, one {jeszcze # zlecenie} few {jeszcze # zlecenia} many {jeszcze # zleceń} other {jeszcze # zlecenia}}',
  'rules.title': 'Reguły miejsca i firmy',
  'rules.law':
    'Reguły to dane, nie porada. Sprawdzić prawo miejscowe; gdzie stanowi inaczej, ma pierwszeństwo.',
  'rules.by': 'To zlecenie przebiega według: {pack}.',
  'rules.which': 'Reguły, według których się pracuje',
  'rules.choose': 'Pracować według tych reguł',
  'rules.other': 'Pracować według innych reguł',
  'rules.not-here': 'Reguł „{pack}” nie ma na tym urządzeniu. Czego żądają, jest w rejestrze i stoi poniżej.',
  'rules.identity-any': 'Tożsamość, jedno z: {documents}.',
  'rules.entitlement-any': 'Prawo do zamówienia klucza, jedno z: {documents}.',
  'rules.or': '; ',
  'rules.label': '{name}, {region}, {dated}',
  'rules.source': 'Źródło: {source} ({basis}).',
  'rules.why-not': 'Dlaczego nie',
  'rules.because': 'Odpowiedź „nie”: {why}',
  'rules.record-no': 'Zapisać „nie” z tym powodem',
  'rules.link': 'Reguły',
  'rules.page': 'Reguły miejsca i firmy',
  'rules.page.what':
    'Pakiet mówi, co wykazuje, że ktoś może mieć klucz, co i jak długo się przechowuje, co trzeba powiedzieć klientowi przy drodze i jakie pasma radiowe są zwykłe. Wziąć kopię któregoś, zmienić ją zgodnie z własnym prawem i według niej pracować.',
  'rules.usual': 'nowe zlecenia zaczynają się od niego',
  'rules.make-usual': 'Zaczynać od niego nowe zlecenia',
  'rules.make-usual-named': 'Zaczynać nowe zlecenia od: {name}',
  'rules.copy': 'Zmienić kopię',
  'rules.copy-named': 'Zmienić kopię: {name}',
  'rules.edit': 'Zmienić',
  'rules.edit-named': 'Zmienić: {name}',
  'rules.save': 'Zapisać jako plik',
  'rules.save-named': 'Zapisać jako plik: {name}',
  'rules.forget': 'Zapomnieć',
  'rules.forget-named': 'Zapomnieć: {name}',
  'rules.where': '{region}; sprawdzono {dated}',
  'rules.read-file': 'Odczytać pakiet z pliku',
  'rules.read-file.hint': 'Plik w formacie JSON, jak zapisuje go „Zapisać jako plik”.',
  'rules.read': 'Odczytano: {name}. Jest zachowany na tym urządzeniu.',
  'rules.not-json': 'Plik nie jest w formacie JSON, więc niczego nie odczytano: {what}',
  'rules.troubles':
    '{count, plural, one {Jedno miejsce jest błędne} few {# miejsca są błędne} many {# miejsc jest błędnych} other {# miejsca jest błędne}}, więc niczego nie odczytano:',
  'rules.trouble': '{what}. {doNext}',
  'rules.form.name': 'Nazwa reguł',
  'rules.form.region': 'Gdzie obowiązują',
  'rules.form.dated': 'Dzień, w którym porównano je z prawem',
  'rules.form.dated.hint': 'Na przykład 2026-11-28.',
  'rules.form.authority': 'Co wykazuje, że ktoś może mieć klucz',
  'rules.form.identity': 'Tożsamość, dowolne z',
  'rules.form.entitlement': 'Prawo do zamówienia klucza, dowolne z',
  'rules.form.checks': 'Pyta się także',
  'rules.form.own': 'Własne pytania',
  'rules.form.own.hint': 'Każde chce odpowiedzi „tak” albo „nie” z powodem.',
  'rules.form.source': 'Skąd to pochodzi',
  'rules.form.retention': 'Co i jak długo się przechowuje',
  'rules.form.days': '{name}: dni',
  'rules.form.stalled': 'Dni, po których zlecenie bez końca uznaje się za zakończone',
  'rules.form.contract': 'Co mówi się klientowi prywatnemu przed pracami',
  'rules.form.radio': 'Pasma radiowe obszaru',
  'rules.form.radio.none': 'bez obszaru',
  'rules.form.keep': 'Zachować te reguły',
  'rules.own-suffix': '{name} (własne)',

  'site.title': 'Auto i jego miejsce',
  'site.why': 'Te cztery odpowiedzi rozstrzygają, które ostrzeżenia są tu ważne.',

  'cautions.here':
    '{count, plural, one {Przeczytać to przed dalszą pracą} few {Przeczytać te # przed dalszą pracą} many {Przeczytać tych # przed dalszą pracą} other {Przeczytać te # przed dalszą pracą}}',

  'keeping.title': 'Do usunięcia',
  'keeping.link': 'Do usunięcia',
  'keeping.what':
    'Co to urządzenie wie o każdym zleceniu, w zestawieniu z terminami. Usuwanie, wraz z dowodem, odbywa się na komputerze, który ma rejestr: „shearline retention delete”.',
  'keeping.reading':
    'Przeglądanie {count, plural, one {# zlecenia} few {# zleceń} many {# zleceń} other {# zlecenia}} ...',
  'keeping.none': 'Dziś nic nie jest do usunięcia.',
  'keeping.since': 'od {day}',
  'keeping.items': '{count, plural, one {# rzecz} few {# rzeczy} many {# rzeczy} other {# rzeczy}}',
  'keeping.rule':
    '{days, plural, one {# dzień} few {# dni} many {# dni} other {# dnia}} od {trigger, select, sealed {zapieczętowania} handed_over {wydania} warranty_ended {końca gwarancji} purpose_ended {ustania celu} other {zapisania}}; {source}',
  'keeping.held': 'Wstrzymane, więc zostaje: {reason}',
  'keeping.stalled': 'Zlecenie nigdy się nie skończyło; liczone od ostatniego zapisu.',

  'custody.title': 'Co się przechowuje i do kiedy',
  'custody.pack': 'Terminy: {pack}.',
  'custody.class':
    '{count, plural, =0 {nic nie jest przechowywane} one {# rzecz przechowywana} few {# rzeczy przechowywane} many {# rzeczy przechowywanych} other {# rzeczy przechowywanej}}',
  'custody.not-running': 'jego czas jeszcze się nie zaczął',
  'custody.until': 'do {day}',
  'custody.due': 'do usunięcia od {day}',
  'custody.deleted':
    '{count, plural, one {# usunięta} few {# usunięte} many {# usuniętych} other {# usuniętej}}',
  'custody.hold': 'Niczego nie pozwalać usuwać',
  'custody.hold.why': 'Dlaczego i na czyje żądanie',
  'custody.hold.place': 'Wstrzymać wszystko z tego zlecenia',
  'custody.hold.stands': 'Z tego zlecenia niczego nie wolno usuwać: {reason} ({by}, {day}).',
  'custody.hold.lift': 'Zakończyć to wstrzymanie',
  'custody.deletion':
    '{what}: {count, plural, one {# rzecz} few {# rzeczy} many {# rzeczy} other {# rzeczy}}, {day}, {by}. {why}{keys, select, true { Klucze szyfrujące są zniszczone.} other {}}',

  'doubts.title': 'Co się nie zgadza w tym rejestrze',
  'doubts.clock.before-its-predecessor':
    'Zapis urządzenia {device} ma czas wcześniejszy niż zapis przed nim.',
  'doubts.clock.before-what-it-names': 'Zapis urządzenia {device} ma czas wcześniejszy niż to, co wymienia.',
  'doubts.clock.written-after-receipt': 'Zapis urządzenia {device} ma czas późniejszy niż jego nadejście.',
  'doubts.clock.in-the-future': 'Zapis urządzenia {device} ma czas z przyszłości.',
  'doubts.clock.other': 'Zegar urządzenia {device} nie zgadza się z rejestrem.',
  'doubts.device-revoked':
    '{count, plural, one {Jeden zapis pochodzi} few {# zapisy pochodzą} many {# zapisów pochodzi} other {# zapisu pochodzi}} z urządzenia, któremu się już nie ufa ({devices}). Zapisać ponownie na zaufanym urządzeniu to, co jest prawdą.',
  'doubts.not-witnessed':
    '{count, plural, one {Jeden zapis pochodzi} few {# zapisy pochodzą} many {# zapisów pochodzi} other {# zapisu pochodzi}} z urządzenia, którego klucz może być w obcych rękach ({devices}). Tylko ten klucz wskazuje, kiedy powstał.',
  'doubts.own-revoked':
    'Firma nie ufa już temu urządzeniu ({because, select, retired {wycofane} replaced {wymienione} lost {zgłoszone jako zgubione} stolen {zgłoszone jako skradzione} other {jego klucz może być w obcych rękach}}). Tego, co teraz zapisze, się nie przyjmuje. Pracować na innym urządzeniu.',

  'handed.title': 'Wydano',
  'handed.to': 'Komu',
  'handed.to.hint': 'Nazwisko lub funkcja osoby, która odebrała auto i klucze.',
  'handed.keys': 'Klucze wydane razem z autem',
  'handed.first': 'Najpierw zapieczętować dokument; to następuje po nim.',
  'handed.record': 'Wydano',
  'handed.again': 'Zapisać kolejne wydanie',
  'handed.done':
    'Odbiera: {to}, {day}, {time}; {count, plural, =0 {nie wymieniono kluczy} one {klucz {keys}} few {klucze {keys}} many {klucze {keys}} other {klucze {keys}}}.',

  'hand.title': 'Przekazać to zlecenie innej osobie z zespołu',
  'hand.how':
    'Kto ma stanowisko z tym samym serwerem, otwiera ten adres lub skanuje go kamerą: zlecenie otworzy się tam ze wszystkim, co dotąd wysłano.',
  'hand.here-only':
    'To stanowisko otwarto pod adresem, który rozumie tylko to urządzenie ({address}). Dać poniższy plik albo najpierw otworzyć stanowisko pod adresem własnej sieci.',
  'hand.qr': 'Adres tego zlecenia jako kod QR',
  'hand.unsent':
    '{count, plural, one {# zapis jest} few {# zapisy są} many {# zapisów jest} other {# zapisu jest}} jeszcze tylko na tym urządzeniu. Najpierw wysłać albo dać także plik.',
  'hand.all-sent': 'Wszystko z tego zlecenia jest wysłane.',
  'hand.bundle': 'Zapisać całe zlecenie jako plik',
  'hand.bundle.how':
    'Bez sieci: plik zawiera każdy zapis i każdy plik zlecenia, który jest na tym urządzeniu. Każdy może go dowieść przez „shearline verify”, także po latach; służy do czytania, praca idzie dalej pod powyższym adresem.',
  'hand.bundle.unsealed':
    'Zlecenie nie jest jeszcze opieczętowane: każdy zapis w pliku jest podpisany, ale nic w nim nie pokazuje, że żadnego nie brakuje. Aby dowieść całości, najpierw opieczętować dokument.',
}
