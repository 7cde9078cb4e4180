import type { SameCodes } from '@shearline/jobfile'
import type { teachingRehearsalWords as english } from '../en/teaching-rehearsal.ts'

/** The rehearsal: order, guards, the line of steps, what a stop leaves and the way back. */
export const teachingRehearsalWords: SameCodes<typeof english> = {
  'rehearsal.title': 'Próba: krok po kroku, i co obowiązuje po zatrzymaniu',
  'rehearsal.again': 'Przeczytać ponownie',
  'rehearsal.read': 'Przeczytano w kolejności {order}. {wayBack}',
  'rehearsal.no-keys': 'Nie ma jeszcze klucza do adaptacji: najpierw oznaczyć klucze na stole i nowy klucz.',
  'rehearsal.label-new': 'Oznaczyć nowy klucz',
  'rehearsal.missing':
    '{count, plural, one {Nie ma w niej klucza {keys}} few {Nie ma w niej kluczy {keys}} many {Nie ma w niej kluczy {keys}} other {Nie ma w niej kluczy {keys}}}: przeczytać ponownie.',
  'rehearsal.no-new':
    'Nowy klucz nie jest jeszcze oznaczony. Najpierw oznaczyć go powyżej, aby i on był w próbie.',
  'rehearsal.working': 'Sprawdzanie każdego sposobu, w jaki może się zatrzymać ...',
  'rehearsal.too-much-unknown':
    'Zbyt wiele nie wiadomo, by odpowiedzieć. Podać rodzaj sesji, miejsca na liście lub co ją otwiera.',
  'rehearsal.open': 'Sesja otwarta',
  'rehearsal.opened': 'otwarta',
  'rehearsal.closed': 'Sesja zamknięta',
  'rehearsal.closed-short': 'zamknięta',
  'rehearsal.cannot-open': 'Według tej reguły sesji nie da się otworzyć tym, co jest tutaj.',
  'rehearsal.better': 'Bezpieczniejsza kolejność: {order}.',
  'rehearsal.take-better': 'Przyjąć ją',
  'rehearsal.key': 'Klucz {key}',
  'rehearsal.earlier': 'Wcześniej',
  'rehearsal.length': 'Długość sesji: {time}.',
  'rehearsal.stranded':
    '{count, plural, =0 {Gdziekolwiek się zatrzyma, jakiś klucz stąd nadal uruchamia auto.} one {Na # kroku auto może zostać bez klucza, który je uruchamia.} few {Na # krokach auto może zostać bez klucza, który je uruchamia.} many {Na # krokach auto może zostać bez klucza, który je uruchamia.} other {Na # kroku auto może zostać bez klucza, który je uruchamia.}}',
  'rehearsal.sure':
    'Przeczytać każdy wiersz. Najgorsza z powyższych dróg powrotu jest tym, co obiecuje się klientowi.',
  'rehearsal.record': 'Przeczytane',

  'order.title': 'Kolejność pokazywania kluczy',
  'order.earlier': 'Pokazać klucz {key} wcześniej',
  'why.proven': 'Dlaczego ta kolejność: każda inna została wykluczona',
  'why.best-found': 'Dlaczego ta kolejność: najlepsza ze znalezionych',
  'why.at-open': 'po otwarciu',
  'why.at-key': 'po kluczu {key}',

  'guards.title': 'Przed otwarciem',
  'guards.all': 'Przed otwarciem: wszystko załatwione',
  'guards.open':
    '{count, plural, one {Przed otwarciem: # rzecz do załatwienia} few {Przed otwarciem: # rzeczy do załatwienia} many {Przed otwarciem: # rzeczy do załatwienia} other {Przed otwarciem: # rzeczy do załatwienia}}',
  'guards.met': 'Załatwione: {guards}.',

  'line-of-steps': 'Sesja jako linia kroków',
  'mark.safe': 'jak przedtem',
  'mark.loses': 'traci {keys}',
  'mark.stranded': 'unieruchomione',
  'end-mark.safe': 'wszystkie uruchamiają',
  'end-mark.loses': 'niektóre przestają',
  'end-mark.stranded': 'żaden nie uruchamia',
  'stop-here.title': '{step}: jeśli teraz coś się stanie',
  'stop-here.goes-on': 'Sesja idzie dalej; na jej końcu:',
  'stop-here.spoiled': 'Zepsute: {keys}.',
  'cause.of-key': '{cause} ({key})',
  'list-or': ' / ',

  'way.going': 'Aby odjechać:',
  'way.finished': 'Aby dokończyć prace:',
  'way.goes': 'Autem można jechać z kluczem: {keys}.',
  'way.in': '{way}, {time}.',
  'way.not-proven': 'Może istnieć krótsza droga.',
  'lasting.none': 'brak wartości',
  'lasting.seconds':
    '{count, plural, one {{figure} sekunda} few {{figure} sekundy} many {{figure} sekund} other {{figure} sekundy}}',
  'lasting.minutes':
    '{count, plural, one {{figure} minuta} few {{figure} minuty} many {{figure} minut} other {{figure} minuty}}',
}
