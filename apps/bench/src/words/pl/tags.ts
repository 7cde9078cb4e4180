import type { SameCodes } from '@shearline/jobfile'
import type { tagWords as english } from '../en/tags.ts'

/** Tags that tell keys apart: printing them and finding a key by its tag. */
export const tagWords: SameCodes<typeof english> = {
  'tags.find': 'Znaleźć klucz po zawieszce',
  'tags.find.how': 'Ustawić zawieszkę klucza w ramce.',
  'tags.find.other': 'To jest kod, ale nie zawieszka klucza. Szukanie trwa.',
  'tags.find.code': 'Albo wpisać cztery znaki z zawieszki',
  'tags.find.code.hint': 'Stoją pod kwadratowym kodem.',
  'tags.find.do': 'Znaleźć',
  'tags.find.unknown':
    'Żaden klucz tego zlecenia nie ma kodu {code}. Odczytać go ponownie; 0, 1, I, L, O i U nigdy się nie drukuje.',
  'tags.chosen': 'Ten w ręce',
  'tags.found': 'W ręce: {key}',
  'tags.found.is':
    '{origin, select, new {{taught, select, true {Nowy klucz, zaadaptowany w tym zleceniu.} other {Nowy klucz, jeszcze niezaadaptowany.}}} other {{taught, select, true {Klucz klienta, zaadaptowany w tym zleceniu.} other {Klucz klienta.}}}}',
  'tags.found.go': 'Pokazać jego kartę',
  'tags.elsewhere': 'To nie klucz z tego stołu',
  'tags.elsewhere.job': 'To klucz {key} innego zlecenia. Trzymać go z dala od kluczy tego zlecenia.',
  'tags.elsewhere.gone':
    'Zawieszka mówi: klucz {key} tego zlecenia, a takiego klucza nie ma teraz w rejestrze.',
  'tags.elsewhere.open': 'Otworzyć tamto zlecenie',
  'tags.print': 'Wydrukować zawieszki',
  'tags.print.what':
    'Po jednej zawieszce na klucz: jego litera i kolor, numer zlecenia i kod, po którym znajdzie go kamera. Nie ma na niej auta, nazwiska ani adresu: zgubiona zawieszka nikomu nie powie, do czego klucz pasuje.',
  'tags.print.keys': 'Do których kluczy?',
  'tags.print.used': 'Miejsca arkusza już zużyte',
  'tags.print.used.hint': 'Liczba miejsc na arkuszu: {count}, licząc rząd po rzędzie.',
  'tags.print.make': 'Utworzyć arkusz',
  'tags.print.busy': 'Tworzenie arkusza …',
  'tags.print.ready': 'Arkusz jest gotowy: zapisać go i wydrukować w pełnym rozmiarze.',
  'tags.print.save': 'Zapisać arkusz',
  'tags.sheet.title': 'Zawieszki kluczy, zlecenie {job}',
}
