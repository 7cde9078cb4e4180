import type { SameCodes } from '../catalogues.ts'
import type { comparisonWords as english } from '../en/faults.ts'

/** Where the rules of the fault comparison come from, what speaks for a class, and what is worth saying of the scans. */
export const comparisonWords: SameCodes<typeof english> = {
  'explanation-source.reset-silence':
    'ogólna praktyka branży 4.5 i 4.6; że restart ucisza sterownik, jest wnioskiem',
  'explanation-source.muted-silence': 'ISO 14229-1 usługa 28; ogólna praktyka branży 4.5 i 4.6',
  'explanation-source.supply-low-supply-codes':
    'ogólna praktyka branży 4.6; znaczenie kodów SAE J2012, z pamięci',
  'explanation-source.supply-low-silence': 'ogólna praktyka branży 4.5',
  'explanation-source.key-refused':
    'ogólna praktyka branży 1.2.13 i 4.6; znaczenie kodów SAE J2012, z pamięci',
  'explanation-source.immobiliser-teaching':
    'ogólna praktyka branży 1.2.13 i 4.6; znaczenie kodów SAE J2012, z pamięci',
  'explanation-source.battery-off-steering':
    'powszechna praktyka, bez źródła; znaczenie kodu SAE J2012, z pamięci',

  'evidence.recorded': '{recording}, {seconds} s',
  'evidence.recorded-detail': '{recording}, {seconds} s, {detail}',
  'evidence.recorded.at': '{recording}, {time}',
  'evidence.recorded-detail.at': '{recording}, {time}, {detail}',
  'evidence.session-opened': 'sesja adaptacji otwarta {at}',
  'evidence.key-refused': 'klucz odrzucony {at}',
  'evidence.supply-fell': 'zasilanie spadło do {minimum}, próg {floor}',
  'evidence.noted': '{words}',
  'evidence.other-failure-type': '{phase}: ten sam kod z innym rodzajem błędu',
  'evidence.reported-as': '{phase}: zgłoszono jako {raw}',

  'fault-finding.no-before-scan':
    'Nie ma skanu sprzed prac: o żadnej usterce nie można powiedzieć, że jest nowa lub stara.',
  'fault-finding.unit-not-read-before':
    '{unit}: nie odczytano przed pracami, więc usterek nie można porównać.',
  'fault-finding.unit-not-read-again': '{unit}: odczytano przed pracami, a później już nie.',
  'fault-finding.cleared-not-retested': '{unit}: po kasowaniu, jeszcze bez nowego testu: {codes}.',
  'fault-finding.fault-code-unreadable':
    '„{code}” nie jest kodem usterki w postaci SAE J2012; porównuje się go tak, jak zapisano.',
  'fault-finding.units-perhaps-one':
    '„{unit}” i „{other}” mogą być jednym sterownikiem; porównuje się je jako dwa.',
  'fault-finding-do.no-before-scan':
    'Powiedzieć o tym przy wydaniu. Następnym razem zeskanować każdy sterownik, zanim czegokolwiek się dotknie.',
  'fault-finding-do.unit-not-read-before': 'Powiedzieć o tym przy wydaniu.',
  'fault-finding-do.unit-not-read-again': 'Zeskanować ten sterownik ponownie.',
  'fault-finding-do.cleared-not-retested':
    'Wyłączyć zapłon, pozwolić autu zasnąć, włączyć zapłon i zeskanować ponownie.',
  'fault-finding-do.cleared-not-retested.cycled':
    'Pozwolić przebiec testom (jechać albo czekać, jak tego chce auto) i zeskanować ponownie.',
  'fault-finding-do.fault-code-unreadable': 'Odczytać go ponownie u źródła.',
  'fault-finding-do.units-perhaps-one': 'Powiedzieć, czy to jeden sterownik.',

  'report-finding.no-code-found': 'Nie znaleziono w nim żadnego kodu usterki ani „brak usterek”.',
  'report-finding.line-too-long':
    'Wiersz ma {length, plural, one {# znak} few {# znaki} many {# znaków} other {# znaku}}; z tego odczytano tylko początek, znaki: {read}.',
  'report-finding.report-too-long':
    'Raport ma {length, plural, one {# znak} few {# znaki} many {# znaków} other {# znaku}}; z tego odczytano tylko początek, znaki: {read}.',
  'report-finding-do.no-code-found': 'Wpisać usterki ręcznie albo dodać raport do zlecenia jako plik.',
  'report-finding-do.line-too-long': 'Obejrzeć resztę samodzielnie.',
  'report-finding-do.report-too-long': 'Pociąć go na części.',
}
