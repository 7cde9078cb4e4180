import type { SameCodes } from '../catalogues.ts'
import type { sheetWords as english } from '../en/sheets.ts'

/** Phrases of the sheets beside the handover document: consents, what to bring, refusal, statement of keys, return visit. */
export const sheetWords: SameCodes<typeof english> = {
  'sheet.absent-keys': 'Zgoda: klucze, których tu nie ma',
  'sheet.no-check': 'Zgoda: bez sprawdzenia przed pracami',
  'sheet.bring-this': 'Co zabrać ze sobą',
  'sheet.refusal': 'Notatka: prac nie wykonano',
  'sheet.insurer': 'Oświadczenie o kluczach',
  'sheet.return-visit': 'Ponowna wizyta',
  'sheet-preview.absent-keys':
    '{count, plural, one {Jako nieobecny wymieniono jeden klucz} few {Jako nieobecne wymieniono # klucze} many {Jako nieobecne wymieniono # kluczy} other {Jako nieobecne wymieniono # klucza}}: {names}.',
  'sheet-preview.absent-keys.nothing': 'Żadnego klucza nie wymieniono jako nieobecnego.',
  'sheet-preview.no-check':
    'W rejestrze nie ma, by któryś z obecnych kluczy uruchamiał samochód przed pracami.',
  'sheet-preview.no-check.nothing':
    'Przed pracami jakiś klucz uruchamiał samochód, więc można go było sprawdzić.',
  'sheet-preview.bring-this': 'Kiedy i gdzie: {when}, {place}.',
  'sheet-preview.bring-this.nothing': 'W rejestrze nie ma terminu.',
  'sheet-preview.refusal': '{decision}: {reason}',
  'sheet-preview.refusal.nothing': 'Prac ani nie odmówiono, ani nie wstrzymano.',
  'sheet-preview.insurer':
    '{here, plural, one {Był tu jeden klucz} few {Były tu # klucze} many {Było tu # kluczy} other {Było tu # klucza}}, {absent, plural, =0 {żadnego nie wymieniono jako nieobecnego} one {jeden wymieniono jako nieobecny} few {# wymieniono jako nieobecne} many {# wymieniono jako nieobecne} other {# wymieniono jako nieobecne}}.',
  'sheet-preview.insurer.nothing': 'W rejestrze nie ma żadnego klucza.',
  'sheet-preview.return-visit':
    '{count, plural, =0 {Nic nie jest otwarte; pismo mówi, co zrobiono.} one {Jeden punkt jest otwarty.} few {# punkty są otwarte.} many {# punktów jest otwartych.} other {# punktu jest otwarte.}}',
  'sheet-preview.return-visit.nothing': 'W rejestrze nie ma prac, do których trzeba wrócić.',
  'sheet.running': '{sheet}, zlecenie {job}',
  'sheet.made': '{at}, z rejestru w ówczesnym stanie',
  'sheet.record': 'SHA-256 tego rejestru',
  'sheet.not-a-seal':
    'To pismo nie ma pieczęci. To, co podaje, jest w podpisanym rejestrze zlecenia, który firma przechowuje i wydaje.',
  'sheet.car': 'Samochód',
  'sheet.job': 'Zlecenie',
  'sheet.law': 'To pismo nie narusza praw wynikających z ustawy.',
  'sheet.sign': 'Podpis',
  'sheet.sign-name': 'Imię i nazwisko',
  'sheet.sign-date': 'Miejsce i data',
  'sheet.sign-by': 'Podpis',
  'sheet.signed': 'W rejestrze jako podpisane: {signer}, {how}.',
  'sheet.agreed': 'W rejestrze jako uzgodnione w imieniu: {signer}; w rejestrze nie ma podpisu pod tą zgodą.',
  'sheet.absent-what': 'Co prace z nimi robią',
  'sheet.absent-replace-all':
    'Prace zapisują na nowo listę kluczy, które ten samochód przyjmuje. Potem uruchomią go tylko klucze, które tu są i zostaną ponownie zaadaptowane.',
  'sheet.absent-append':
    'Prace dodają klucze do listy, którą ten samochód przyjmuje. Klucze, których tu nie ma, powinny nadal go uruchamiać; nie da się tego sprawdzić, dopóki ich nie ma.',
  'sheet.absent-oldest':
    'Prace dodają klucze do listy, która jest pełna lub może taka być. Samochód może usunąć najstarszy z nich, a może to być taki, którego tu nie ma.',
  'sheet.absent-slots':
    'Prace umieszczają klucze na numerowanych miejscach. Klucz, którego tu nie ma, a który zajmuje jedno z tych miejsc, nie uruchomi już tego samochodu.',
  'sheet.absent-unknown':
    'Nie wiadomo, jak ten samochód prowadzi swoją listę. Traktuje się to tak, jakby lista była zapisywana na nowo: klucze, których tu nie ma, mogą przestać go uruchamiać.',
  'sheet.absent-named': 'Klucze, których tu nie ma, pod nazwami podanymi przez Państwa:',
  'sheet.absent-others': 'To samo dotyczy klucza, którego nikt tu nie wymienił.',
  'sheet.absent-back':
    'Klucz, który przestanie działać, można później ponownie zaadaptować, gdy zostanie przyniesiony do samochodu. Jest to nowe zlecenie z własną ceną.',
  'sheet.absent-agree': 'Rozumiem to i wyrażam zgodę na wykonanie prac bez tych kluczy.',
  'sheet.nocheck-what': 'Czego nie można wiedzieć',
  'sheet.nocheck-why':
    'Żaden z obecnych tu kluczy nie uruchamia tego samochodu. Dlatego przed pracami nikt nie może zobaczyć, co działało, a co nie.',
  'sheet.nocheck-functions':
    'Zamki, przyciski, kontrolki i inne funkcje można sprawdzić dopiero po pracach. Jeśli któraś wtedy zawiedzie, nie da się powiedzieć, czy przedtem działała.',
  'sheet.nocheck-faults':
    'Usterki znalezione po pracach mogły być już przedtem. Jeśli samochód można odczytać bez klucza, robi się to najpierw i zachowuje.',
  'sheet.nocheck-damage': 'To, co widać z zewnątrz, zapisuje się i fotografuje przed pracami.',
  'sheet.nocheck-agree': 'Rozumiem to i wyrażam zgodę na wykonanie prac bez wcześniejszego sprawdzenia.',
  'sheet.bring-hello': 'Proszę mieć przy samochodzie następujące rzeczy:',
  'sheet.bring-keys':
    'Wszystkie posiadane klucze do tego samochodu, także taki, który nie działa, jest złamany lub tylko otwiera drzwi.',
  'sheet.bring-keys-why':
    'Klucz, którego nie będzie podczas prac, może przestać uruchamiać samochód. Nie musi to być klucz, z którego się korzysta.',
  'sheet.bring-identity': 'Dokument tożsamości ze zdjęciem, oryginał.',
  'sheet.bring-private':
    'Dokument, który wskazuje Państwa jako użytkownika lub właściciela samochodu, oryginał. Jeśli samochód nie należy do Państwa: pisemna zgoda właściciela i sposób kontaktu z nim.',
  'sheet.bring-trade':
    'Zlecenie Państwa firmy z nazwiskiem i numerem do oddzwonienia oraz dokument, który wskazuje, do kogo należy samochód.',
  'sheet.bring-fleet':
    'Zlecenie biura floty z nazwiskiem i numerem do oddzwonienia oraz dowód rejestracyjny samochodu lub jego numer.',
  'sheet.bring-other': 'Uzgodniono także: {what}',
  'sheet.bring-when': 'Kiedy',
  'sheet.bring-where': 'Gdzie',
  'sheet.bring-no-time': 'termin jeszcze do uzgodnienia',
  'sheet.bring-place-car':
    'Samochód stoi tam, gdzie można go obejść i otworzyć drzwi, w miarę możliwości poza drogą i z zasięgiem telefonu w pobliżu.',
  'sheet.bring-not-sent':
    'Proszę nie wysyłać w wiadomościach zdjęć dokumentu tożsamości ani nacięć klucza. Ogląda się je na miejscu.',
  'sheet.bring-message':
    '{firm, select, none {} other {{firm}: }}prace przy kluczach, {vehicle}, {when}, {place}. Proszę zabrać: wszystkie klucze do tego samochodu, działające i nie; dokument tożsamości; {entitlement} Klucz, którego nie będzie, może przestać uruchamiać samochód. Proszę nie wysyłać zdjęć dokumentów ani nacięć kluczy.',
  'sheet.bring-short-private': 'dokument, który wskazuje Państwa jako użytkownika lub właściciela.',
  'sheet.bring-short-trade': 'zlecenie Państwa firmy oraz dokument, który wskazuje, do kogo należy samochód.',
  'sheet.bring-short-fleet': 'zlecenie biura floty oraz dowód rejestracyjny.',
  'sheet.refusal-what': 'Co postanowiono',
  'sheet.refusal-refused': 'Prac nie wykonano. Powód w rejestrze: {reason}',
  'sheet.refusal-held': 'Prace czekają. Powód w rejestrze: {reason}',
  'sheet.refusal-no-blame':
    'Ta notatka mówi, że to, co okazano, nie wystarczyło do wykonania prac. Nikogo o nic nie oskarża.',
  'sheet.refusal-by': 'Decyzja: {at}, {by}.',
  'sheet.refusal-seen': 'Co okazano',
  'sheet.refusal-seen-none': 'Nie zapisano okazania żadnego dokumentu.',
  'sheet.refusal-missing': 'Czego brakuje',
  'sheet.refusal-missing-none': 'Rejestr nie wymienia niczego więcej; proszę zapytać firmę.',
  'sheet.refusal-car': 'Co zrobiono przy samochodzie',
  'sheet.refusal-untouched':
    'Nie otwarto żadnej sesji adaptacji. Nie zmieniliśmy żadnego klucza tego samochodu.',
  'sheet.refusal-touched': 'Przed tą decyzją otwarto sesję adaptacji. Rejestr mówi, co się w niej wydarzyło.',
  'sheet.refusal-scans':
    '{count, plural, =0 {W rejestrze nie ma skanu sterowników.} one {W rejestrze jest jeden skan sterowników; odczyt niczego w samochodzie nie zmienia.} few {W rejestrze są # skany sterowników; odczyt niczego w samochodzie nie zmienia.} many {W rejestrze jest # skanów sterowników; odczyt niczego w samochodzie nie zmienia.} other {W rejestrze jest # skanu sterowników; odczyt niczego w samochodzie nie zmienia.}}',
  'sheet.insurer-what': 'Czym jest to oświadczenie',
  'sheet.insurer-limit':
    'Mówi ono, co tego dnia przy tym samochodzie widziano i sprawdzono. Nie może powiedzieć, czy istnieją dalsze klucze, których nikt nie wymienił, i nie jest oświadczeniem o tym, kto jest właścicielem samochodu.',
  'sheet.insurer-tests':
    '{count, plural, =0 {Żaden test w rejestrze nie jest oznaczony jako wykonany w obecności klienta.} one {# test w rejestrze jest oznaczony jako wykonany w obecności klienta.} few {# testy w rejestrze są oznaczone jako wykonane w obecności klienta.} many {# testów w rejestrze jest oznaczonych jako wykonane w obecności klienta.} other {# testu w rejestrze jest oznaczone jako wykonane w obecności klienta.}}',
  'sheet.insurer-rows': 'Klucze w rejestrze',
  'sheet.insurer-key': 'Klucz',
  'sheet.insurer-about': 'Co to jest',
  'sheet.insurer-before': 'Uruchamiał samochód przedtem',
  'sheet.insurer-after': 'Uruchamia samochód potem',
  'sheet.insurer-not-tried': 'nie sprawdzono',
  'sheet.insurer-absent': 'Klucze wymienione jako nieobecne',
  'sheet.insurer-absent-none': 'Żadnego nie wymieniono.',
  'sheet.return-done': 'Co zrobiono',
  'sheet.return-sealed': 'Rejestr tego zlecenia zapieczętowano {at}, {by}.',
  'sheet.return-not-sealed': 'Rejestr tego zlecenia nie jest jeszcze zapieczętowany.',
  'sheet.return-open': 'Co jest otwarte',
  'sheet.return-open-none': 'Nic, czego wymaga to zlecenie, nie jest otwarte.',
  'sheet.return-broke': 'Sesja adaptacji przerwała się po: {after}, ponieważ {why}.',
  'sheet.return-keys': 'Które klucze uruchamiają teraz samochód',
  'sheet.return-starts':
    '{count, plural, one {Widziano, że uruchamia go klucz {keys}.} few {Widziano, że uruchamiają go klucze {keys}.} many {Widziano, że uruchamiają go klucze {keys}.} other {Widziano, że uruchamiają go klucze {keys}.}}',
  'sheet.return-starts-none': 'Nie widziano, by po pracach uruchamiał go jakikolwiek klucz.',
  'sheet.return-fault': 'Usterka {code} w sterowniku {unit}: {class}',
  'sheet.return-faults-none': 'Żadna usterka nie pozostała otwarta.',
  'sheet.return-faults': 'Usterki do ponownego obejrzenia',
  'sheet.return-bring': 'Na wizytę',
  'sheet.return-bring-all':
    'Wszystkie klucze do tego samochodu, także te, których za pierwszym razem nie było.',
  'sheet.return-bring-file': 'Protokół wydania jako plik, nie tylko na papierze.',
  'sheet.return-bring-changes':
    'Co od tego czasu zrobiono przy samochodzie: akumulator, naprawy, inne klucze.',
}
