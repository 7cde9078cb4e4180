import type { SameCodes } from '@shearline/jobfile'
import type { teachingGuideWords as english } from '../en/teaching-guide.ts'

/** The session guide, "it stopped", the way back, the tests after it, and the four numbers. */
export const teachingGuideWords: SameCodes<typeof english> = {
  'teach.open': 'Otworzyć sesję',
  'teach.open.again': 'Otworzyć kolejną sesję',
  'teach.open.record': 'Sesja jest otwarta',
  'teach.is-closed': 'Sesja jest zamknięta.',
  'teach.is-stopped': 'Sesja nie jest otwarta.',
  'teach.rehearsed':
    'Przećwiczona kolejność: {order}. Zasilacz podtrzymujący włączony, klucze, których się nie adaptuje, z dala od auta.',
  'teach.not-rehearsed':
    'Próby nie przeczytano. Otwierać sesję tylko wtedy, gdy wiadomo, co obowiązuje po zatrzymaniu.',
  'teach.key': 'Pokazać autu klucz {key}',
  'teach.key.record': 'Klucz {key} jest przyjęty',
  'teach.taught': 'Klucz {key} jest zaadaptowany',
  'teach.count': 'Liczba, którą pokazuje auto',
  'teach.count.hint': 'Zostawić puste, jeśli nie pokazuje żadnej.',
  'teach.not-all': 'Nie wszystkie zaplanowane klucze są już zaadaptowane.',
  'teach.close': 'Zamknąć sesję',
  'teach.close.early': 'Zamknąć ją, zanim wszystkie klucze są zaadaptowane',
  'teach.close.record': 'Sesja jest zamknięta',

  'guide.title': 'Sesja, krok po kroku',
  'guide.count': 'Krok {step} z {of}',
  'guide.keys': 'Przyjęte klucze: {count} z {of}',
  'guide.other': 'Tego klucza nie ma pod ręką albo jest odrzucany?',
  'guide.first': 'Najpierw klucz {key}',
  'guide.say.open':
    'Powiedzieć: „Otwieram teraz listę kluczy auta. Proszę nie ruszać drzwi ani żadnego innego klucza, dopóki nie powiem.”',
  'guide.say.show':
    'Powiedzieć: „Teraz klucz {key}. {left, plural, =0 {To ostatni.} one {Po nim będzie jeszcze jeden.} few {Po nim będą jeszcze #.} many {Po nim będzie jeszcze #.} other {Po nim będzie jeszcze #.}} Proszę trzymać pozostałe z dala od auta.”',
  'guide.say.close':
    'Powiedzieć: „Wszystkie klucze są przyjęte. Zamykam listę; potem, przed podpisem, zobaczą Państwo, jak działa każdy klucz.”',
  'meter.time': 'W sesji',
  'meter.supply': 'Zasilanie',
  'meter.count': 'Auto liczy',
  'meter.none': 'nie odczytano',
  'meter.above': 'powyżej {floor}',
  'meter.below': 'poniżej {floor}!',
  'meter.no-floor': 'nie ustalono progu',
  'meter.ago': '{time} temu',
  'take-back': 'Cofnąć',

  'stopped.button': 'stanęło',
  'stopped.title': 'Zatrzymało się po: {after}',
  'stopped.after-opening': 'otwarcie',
  'stopped.after-key': 'klucz {key}',
  'stopped.why': 'Skończyło się, ponieważ',
  'stopped.goes-on': 'Albo coś innego, a sesja jest nadal otwarta',
  'stopped.leave-out': 'Pominąć go i iść dalej albo spróbować ponownie.',
  'stopped.went-on': 'Sesja poszła dalej.',
  'stopped.record': 'Zapisać, że się zatrzymało',
  'stopped.record-other': 'Zapisać to',
  'stopped.not': 'Nie zatrzymało się',

  'mend.title': 'Zatrzymało się po: {after}',
  'mend.why': 'Co zatrzymało: {why}.',
  'mend.first': 'Najpierw sprawdzić każdy klucz: co auto teraz przyjmuje, wiadomo tylko z prób.',
  'mend.how': 'Jak to naprawiono',
  'mend.how.hint': 'Co robił każdy klucz i co z tym zrobiono.',
  'recover.by-rule': 'Według reguły:',
  'recover.not-known':
    'Reguła nie mówi, co zostaje tu po zatrzymaniu. Sprawdzić każdy klucz i podać poniżej, jak to naprawiono.',
  'recover.goal': 'Co jest teraz potrzebne?',
  'recover.none':
    'Z tym, co jest tutaj, nie ma żadnej. Potrzebny jest inny klucz, kopia zapasowa lub inny sprzęt.',
  'recover.count': 'Droga powrotu, krok {step} z {of}',
  'recover.done': 'Gotowe',
  'recover.step-done': '(gotowe)',
  'recover.failed': 'Nie udało się',
  'recover.failed.because': 'Nie udało się.',
  'recover.starts': 'Uruchamia się',
  'recover.starts-not': 'Nie uruchamia się',
  'recover.reopen': 'Otworzyć nową sesję',
  'recover.reopen.then':
    'Przewodnik idzie wtedy dalej, klucz po kluczu. Na końcu sprawdza się ponownie każdy klucz.',
  'recover.try-all': 'Sprawdzić każdy klucz',
  'recover.mended': 'Naprawione',
  'recover.how.reopened': 'Po: {after}; otwarto nową sesję, jak wymaga reguła.',
  'recover.how.tried': 'Po: {after}; przebyto drogę powrotu i ponownie sprawdzono każdy klucz.',
  'recover.otherwise': 'Naprawione inaczej',
  'recover.otherwise.more': 'Podać na piśmie, jak to naprawiono',
  'recover.mistake': 'Nie zatrzymało się?',
  'way.step': 'Droga powrotu {place}: {step}',

  'wait.not-begun': 'Czekanie się nie zaczęło: {time}.',
  'wait.left': 'zostało; razem {time}. Liczy się dalej także po zamknięciu tej strony.',
  'wait.over': 'Czas minął.',
  'wait.no-figure': 'od tej chwili; nie wiadomo, ile to trwa',
  'wait.begin': 'Zapłon jest włączony: liczyć od teraz',
  'wait.begin-again': 'Zapłon był wyłączony: liczyć ponownie od teraz',
  'wait.ignition-on': 'Zapłon włączony, czekanie się zaczyna',
  'wait.ignition.runs': 'Przy wyłączonym zapłonie czas biegnie dalej.',
  'wait.ignition.pauses': 'Przy wyłączonym zapłonie czas stoi.',
  'wait.ignition.restarts': 'Po wyłączeniu zapłonu czas zaczyna się od nowa.',
  'wait.ignition.unknown': 'Zostawić zapłon włączony: inaczej czas może się nie liczyć.',
  'code.refused': 'Kod został odrzucony',
  'code.because': 'Auto go odrzuciło.',
  'code.tries':
    '{count, plural, =0 {Jeszcze żadnej błędnej próby.} one {# błędna próba.} few {# błędne próby.} many {# błędnych prób.} other {# błędnej próby.}}',
  'code.most':
    'Każe czekać po {count, plural, one {# błędnej próbie} few {# błędnych próbach} many {# błędnych próbach} other {# błędnej próby}}.',
  'code.most-unknown': 'Po ilu każe czekać, nie wiadomo: następną traktować jak ostatnią.',

  'retest.title': 'Każdy klucz ponownie',
  'retest.count': 'Każdy klucz ponownie: {done} z {of}',
  'retest.why': 'Sesja się zatrzymała. Co auto teraz przyjmuje, wiadomo tylko po sprawdzeniu każdego klucza.',
  'retest.starts': 'uruchamia',
  'retest.not': 'nie uruchamia',
  'retest.starts-named': 'Klucz {key} uruchamia auto',
  'retest.not-named': 'Klucz {key} nie uruchamia auta',
  'least.title':
    '{count, plural, one {Ten test dowodzi} few {Te # testy dowodzą} many {Te # testów dowodzi} other {Te # testu dowodzi}} zlecenia; wykonano {done}',
  'least.why': 'Najmniej testów, które obejmują wszystko, co prace mogły naruszyć. Wpisać je do tabeli.',
  'least.open': 'jeszcze do zrobienia',
  'tally.title': 'Klucze i wpisy',
  'tally.said': 'Podobno istnieją',
  'tally.bench': 'Na stole',
  'tally.before': 'Zapisane przedtem',
  'tally.after': 'Zapisane potem',
  'tally.identities':
    '{keys, plural, one {# klucz} few {# klucze} many {# kluczy} other {# klucza}} na stole: dla auta {identities, plural, one {# tożsamość} few {# tożsamości} many {# tożsamości} other {# tożsamości}}.',
  'tally.unaccounted':
    '{count, plural, =0 {Każdy wcześniejszy wpis jest wyjaśniony.} one {# wcześniejszy wpis nie jest żadnym kluczem stąd.} few {# wcześniejsze wpisy nie są żadnym kluczem stąd.} many {# wcześniejszych wpisów nie jest żadnym kluczem stąd.} other {# wcześniejszego wpisu nie jest żadnym kluczem stąd.}}',
  'tally.expected':
    'Oczekiwane po pracach: {count, plural, one {# wpis} few {# wpisy} many {# wpisów} other {# wpisu}}.',
}
