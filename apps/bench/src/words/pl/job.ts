import type { SameCodes } from '@shearline/jobfile'
import type { jobWords as english } from '../en/job.ts'

/** The job page: cylinder, chapters, next step, if it stops, corrections, call, authority, VIN. */
export const jobWords: SameCodes<typeof english> = {
  'job.page': 'Zlecenie; nagrania można upuścić w dowolnym miejscu tej strony',
  'job.reading': 'Odczyt zlecenia ...',
  'job.unknown': 'Tego zlecenia tu nie ma',
  'job.unknown.what':
    'Ani to urządzenie, ani serwer nie zna zlecenia {job}. Jeśli otwarto je na innym urządzeniu, niech tamto najpierw je wyśle.',
  'job.to-board': 'Do zleceń',
  'job.since': 'od {when}',

  'cylinder.title': 'Na czym stoi zlecenie',
  'cylinder.turned': 'Wszystkie siedem na linii: wkładka się obraca.',
  'cylinder.glance': 'zapadki na linii: {count} z {of}',
  'standing.in-line': 'na linii',
  'standing.low': 'nisko, {done} z {of}',
  'standing.high': 'sprzeczność',

  'next.title': 'Następny krok',
  'chapter.wanted': 'brakuje: {count}',
  'chapter.nothing': 'gotowe',
  'wanted.tapped': '{name}: {standing}',
  'wanted.here':
    '{count, plural, one {W tym rozdziale brakuje jeszcze # rzeczy} few {W tym rozdziale brakuje jeszcze # rzeczy} many {W tym rozdziale brakuje jeszcze # rzeczy} other {W tym rozdziale brakuje jeszcze # rzeczy}}',
  'wanted.nothing': 'Tej zapadce niczego nie brakuje.',
  'wanted.elsewhere': '{name}, w rozdziale: {chapter}',
  'part.more': 'Zapisać ponownie',

  'record.count':
    '{count, plural, one {# zapis w rejestrze} few {# zapisy w rejestrze} many {# zapisów w rejestrze} other {# zapisu w rejestrze}}',
  'record.withdraw': 'Wycofać',
  'record.withdraw-named': 'Wycofać: {what}',
  'record.corrected': '{action, select, withdrawn {Wycofuje} other {Zastępuje}} {by}: {reason}',
  'withdraw.title': 'Wycofać to?',
  'withdraw.reason': 'Dlaczego jest to niesłuszne',
  'withdraw.hint':
    'Pozostaje w rejestrze, przekreślone, z nazwiskiem i powodem. Nic nigdy nie znika po cichu.',

  'stops.title': 'Jeśli tu się zatrzyma',
  'stops.title-stopped': 'Zatrzymało się. Co teraz obowiązuje',
  'stops.untouched': 'Niczego nie zmieniono: każdy klucz, który uruchamiał auto, nadal je uruchamia.',
  'stops.closed': 'Sesja jest zamknięta: to, co zaadaptowano, jest zapisane w aucie.',
  'stops.same':
    '{count, plural, one {Klucz {starts} uruchamia} few {Klucze {starts} uruchamiają} many {Klucze {starts} uruchamiają} other {Klucze {starts} uruchamiają}} auto jak przedtem{absent, plural, =0 {; żaden nie wypada.} one {; jeden klucz, którego tu nie ma, już nie.} few {; # klucze, których tu nie ma, już nie.} many {; # kluczy, których tu nie ma, już nie.} other {; # klucza, którego tu nie ma, już nie.}}',
  'stops.more':
    '{count, plural, one {Klucz {starts} uruchamia} few {Klucze {starts} uruchamiają} many {Klucze {starts} uruchamiają} other {Klucze {starts} uruchamiają}} auto{absent, plural, =0 {; żaden nie wypada.} one {; jeden klucz, którego tu nie ma, już nie.} few {; # klucze, których tu nie ma, już nie.} many {; # kluczy, których tu nie ma, już nie.} other {; # klucza, którego tu nie ma, już nie.}}',
  'stops.dropped':
    'Na pewno uruchamia auto tylko: {starts}; niepewne: {lost}{absent, plural, =0 {.} one {, a także jeden klucz, którego tu nie ma.} few {, a także # klucze, których tu nie ma.} many {, a także # kluczy, których tu nie ma.} other {, a także # klucza, którego tu nie ma.}}',
  'stops.stranded': 'O żadnym kluczu stąd nie wiadomo na pewno, że uruchamia auto.',
  'stops.not-rehearsed':
    'W rejestrze nie ma reguły adaptacji lub jej próby, więc auto traktuje się jak przy zastąpieniu wszystkich: klucze, których tu nie ma, mogą przestać działać.',
  'way-back.not-needed': 'Droga powrotu nie jest potrzebna.',
  'way-back.reopen': 'Droga powrotu: otworzyć nową sesję.',
  'way-back.restore': 'Droga powrotu: przywrócić kopię zapasową.',
  'way-back.none': 'Żadna droga powrotu nie jest znana.',

  'line.said':
    '{count, plural, =0 {Podobno nie ma żadnego klucza} one {Podobno jest # klucz} few {Podobno są # klucze} many {Podobno jest # kluczy} other {Podobno jest # klucza}}',
  'line.absent': 'nie ma tutaj: {names}',
  'line.seen': '{document} …{last}',
  'line.vin':
    'VIN …{tail}, {count, plural, one {# odczyt} few {# odczyty} many {# odczytów} other {# odczytu}}',
  'line.vin-differs': 'Odczyty VIN różnią się',
  'line.keys':
    '{count, plural, one {# klucz oznaczony} few {# klucze oznaczone} many {# kluczy oznaczonych} other {# klucza oznaczonego}}',
  'line.rest': '{volts} w spoczynku',
  'line.scanned': 'skan wstępny wykonany',
  'line.rehearsed': 'próba przeczytana',
  'line.floor': 'próg {volts}',
  'line.backup': 'dwa równe odczyty, {hash}…',
  'line.backup-differs': 'oba odczyty różnią się',
  'line.no-backup': 'Bez kopii zapasowej: {reason}',
  'line.new-keys':
    '{count, plural, one {nowy klucz {keys}} few {nowe klucze {keys}} many {nowe klucze {keys}} other {nowe klucze {keys}}}',
  'line.taught': 'zaadaptowane: {keys}',
  'line.count': 'auto liczy {count}',
  'line.minimum': 'najniżej {volts}',
  'line.broke': 'zatrzymanie po: {after}',
  'line.closed': 'sesja zamknięta',
  'line.proven': 'każda funkcja ma odpowiedź',
  'line.open':
    '{count, plural, one {# funkcja otwarta} few {# funkcje otwarte} many {# funkcji otwartych} other {# funkcji otwartej}}',
  'line.failing':
    '{count, plural, one {# nie działa} few {# nie działają} many {# nie działa} other {# nie działa}}',
  'line.faults':
    '{count, plural, =0 {Brak usterek} one {# usterka} few {# usterki} many {# usterek} other {# usterki}}',
  'line.attention': 'do rozstrzygnięcia: {count}',
  'line.price': 'cena uzgodniona',
  'line.sealed': 'zapieczętowano {time}, {by}',
  'line.corrections':
    '{count, plural, one {# poprawka} few {# poprawki} many {# poprawek} other {# poprawki}}',

  'call.keys': 'Istniejące klucze',
  'call.keys.again': 'Klient mówi teraz co innego',
  'call.count': 'Ile kluczy istnieje według klienta',
  'call.count.hint': 'Wszystkie, gdziekolwiek są.',
  'call.absent': 'Klucze, których tu nie będzie, słowami klienta',
  'call.absent.hint': 'Po jednym: „zapasowy w domu”, „zgubiony na plaży”.',
  'call.notes': 'Notatki',
  'call.note.add': 'Napisać notatkę',
  'call.note': 'Notatka',

  'authority.identity': 'Tożsamość osoby',
  'authority.entitlement': 'Prawo do zamówienia klucza',
  'authority.identity.usual': 'paszport|prawo jazdy|dowód osobisty',
  'authority.entitlement.usual':
    'dowód rejestracyjny|zlecenie pisemne|pismo finansującego|pismo ubezpieczyciela|umowa leasingu',
  'authority.again': 'Okazano inny dokument',
  'authority.document': 'Rodzaj dokumentu',
  'authority.issuer': 'Kto go wydał',
  'authority.last': 'Ostatnie znaki jego numeru',
  'authority.last.hint': 'Najwyżej sześć. Całego numeru ani obrazów się nie przechowuje.',
  'authority.original': 'Okazano oryginał?',
  'authority.matched': 'Czy się zgadza?',
  'authority.matched.identity': 'Zdjęcie i nazwisko zgadzają się z osobą na miejscu.',
  'authority.matched.entitlement': 'Wymienia to auto i tę osobę lub firmę.',
  'authority.by': 'Kto sprawdza',
  'authority.seen': '{document}, {issuer}, końcówka {last}, sprawdzenie: {by}.',
  'authority.how':
    '{original, select, true {Oryginał} other {Nie oryginał}}, {matched, select, true {zgadza się} other {nie zgadza się}}.',
  'authority.decision': 'Odmówić lub wstrzymać',
  'authority.stop': 'Coś się nie zgadza',
  'authority.decide': 'Decyzja',
  'authority.decide.held': 'Wstrzymać prace',
  'authority.decide.refused': 'Odmówić prac',
  'authority.decide.released': 'Kontynuować prace',

  'consent-title.absent-keys-stop': 'Nieobecne klucze mogą przestać działać',
  'consent-title.no-check-before': 'Wcześniejsze sprawdzenie nie było możliwe',
  'consent-title.clear-faults': 'Kasowanie usterek',
  'consent.again': 'Podpisać ponownie',
  'consent.given': 'Zgoda: {signer}. Wymienione klucze: {keys}.',
  'consent.absent': 'Klucze, które mogą przestać działać, słowami klienta',
  'consent.absent.hint': 'Odczytać je na głos, zanim klient wyrazi zgodę.',
  'consent.signer': 'Imię i nazwisko osoby wyrażającej zgodę',
  'consent.signer.hint': 'Osoba na miejscu, nie firma.',
  'consent.record': 'Zgoda jest: zapisać',

  'vin.title': 'Numer identyfikacyjny pojazdu (VIN)',
  'vin.again': 'Odczytać z innego źródła',
  'vin.source': 'Skąd odczytano',
  'vin.from':
    '{source}{picture, select, letters { (litery ze zdjęcia)} code { (kod ze zdjęcia)} other {}}{count, plural, one {} few {, # razy} many {, # razy} other {, # raza}}',
  'vin.text': 'VIN',
  'vin.text.hint': '17 znaków; liter I, O i Q nigdy się nie używa.',
  'vin.length': '{count} z 17 znaków',
  'vin.well-formed': 'Budowa poprawna.',
  'vin.not-well-formed': 'Budowa niepoprawna.',
  'vin.check.ok': 'Cyfra kontrolna się zgadza.',
  'vin.check.other': 'Cyfra kontrolna powinna brzmieć {expected}; wymaga jej tylko Ameryka Północna.',
  'vin.repairs': 'Podobne odczyty, które pasują. Spojrzeć jeszcze raz przed wyborem:',
  'vin.agree': 'Wszystkie źródła są zgodne.',
  'vin.malformed':
    'Odczyt powyżej ma niepoprawną budowę: VIN ma 17 znaków i nigdy I, O ani Q. Spojrzeć jeszcze raz, potem wycofać poniżej błędny odczyt.',
  'vin.conflict':
    'Różnica między źródłami: {count, plural, one {# znak} few {# znaki} many {# znaków} other {# znaku}}, w ramce powyżej. Spojrzeć jeszcze raz, potem wycofać poniżej błędny odczyt.',
  'vin.too-few': 'Tylko jedno źródło: drugie musi się z nim zgadzać.',
}
