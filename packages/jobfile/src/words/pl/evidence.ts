import type { SameCodes } from '../catalogues.ts'
import type {
  explanationWords as englishExplanations,
  faultWords as englishFaults,
  readingWords as englishReadings,
} from '../en/evidence.ts'

/** Where readings come from and when they were taken. */
export const readingWords: SameCodes<typeof englishReadings> = {
  'vin-source.glass': 'szyba',
  'vin-source.plate': 'tabliczka',
  'vin-source.document': 'dokument',
  'vin-source.bus': 'samo auto',
  'battery.flooded': 'akumulator kwasowo-ołowiowy z ciekłym elektrolitem',
  'battery.efb': 'wzmocniony akumulator kwasowo-ołowiowy (EFB)',
  'battery.agm': 'akumulator kwasowo-ołowiowy z matą szklaną (AGM)',
  'battery.gel': 'żelowy akumulator kwasowo-ołowiowy',
  'battery.lithium': 'akumulator litowy',
  'battery.unknown': 'rodzaj akumulatora nieznany',
  'during.rest': 'w spoczynku',
  'during.session': 'podczas sesji',
  'during.after': 'po pracach',
  'rule.replace-all':
    'Sesja zastępująca wszystkie klucze: lista przyjętych kluczy miała być zapisana na nowo',
  'rule.append': 'Dodanie klucza: nowe klucze miały być dodane do listy',
  'rule.append-drop-oldest':
    'Dodanie klucza: nowe klucze miały być dodane, a z pełnej listy wypada najstarszy wpis',
  'rule.numbered-slots': 'Miejsca numerowane: każdy klucz miał trafić na własne miejsce',
  'rule.unknown': 'Reguła adaptacji nie była znana i potraktowano ją jak zastąpienie wszystkich kluczy',
  'break.supply': 'utracono zasilanie',
  'break.link': 'utracono połączenie',
  'break.time-out': 'skończył się czas',
  'break.key-refused': 'klucz został odrzucony',
  'break.ignition-off': 'zapłon został wyłączony',
  'break.operator': 'zatrzymała ją osoba wykonująca prace',
  'break.unknown': 'powód nie jest znany',
}

/** Why the work may have raised a fault, by the rule of the fault comparison. */
export const explanationWords: SameCodes<typeof englishExplanations> = {
  'explanation.reset-silence': 'Prace zrestartowały sterownik, który wymienia ten kod; przez chwilę milczał.',
  'explanation.muted-silence':
    'Prace nakazały sterownikowi, który wymienia ten kod, milczeć przez pewien czas.',
  'explanation.supply-low-supply-codes': 'Podczas prac zasilanie było niskie lub przerwane.',
  'explanation.supply-low-silence':
    'Podczas prac zasilanie było niskie lub przerwane; sterowniki milkną wtedy jeden po drugim.',
  'explanation.key-refused': 'Podczas prac pokazano klucz, którego samochód nie znał.',
  'explanation.immobiliser-teaching': 'Podczas prac immobilizer był w swojej sesji.',
  'explanation.battery-off-steering':
    'Akumulator był odłączony; układ kierowniczy odnajduje środek, gdy kierownicę obróci się od oporu do oporu.',
}

/** Fault classes for a customer: a heading, and what may be said of them and no more. */
export const faultWords: SameCodes<typeof englishFaults> = {
  'phase.before': 'przed pracami',
  'phase.after': 'po pracach',
  'phase.cleared': 'po kasowaniu',
  'phase.cycled': 'po wyłączeniu i włączeniu zapłonu',
  'fault-class.there-before-still': 'Już przed pracami i nadal',
  'fault-class.there-before-gone': 'Już przed pracami, bez zgłoszenia w ostatnim skanie',
  'fault-class.there-before-back': 'Już przed pracami, po kasowaniu znowu',
  'fault-class.raised-by-work': 'Wskutek prac',
  'fault-class.new-unexplained': 'Nowe, bez wyjaśnienia',
  'fault-class.permanent': 'Trwałe',
  'fault-class.not-comparable': 'Bez możliwości porównania',
  'fault-means.there-before-still':
    'Samochód zgłosił je, zanim czegokolwiek dotknięto, i ponownie w ostatnim skanie. Nie przyniosły ich prace.',
  'fault-means.there-before-gone':
    'Samochód zgłosił je, zanim czegokolwiek dotknięto, a w ostatnim skanie już nie. To, że kod zniknął, nie dowodzi, że jego przyczyna jest usunięta.',
  'fault-means.there-before-back':
    'Samochód zgłosił je, zanim czegokolwiek dotknięto. Skasowano je i wróciły.',
  'fault-means.raised-by-work':
    'Przedtem ich nie było. Pojawiły się wraz z pracami, z podanego powodu. Ostatnia kolumna mówi, czy zniknęły.',
  'fault-means.new-unexplained':
    'Przed pracami ich nie było, a rejestr nie zawiera dla nich żadnego powodu. Mogą mieć związek z pracami albo nie.',
  'fault-means.permanent':
    'Kasuje je tylko sam samochód, gdy przejdą jego własne testy. Nie skasuje ich żaden sprzęt (SAE J1979, usługa 0A).',
  'fault-means.not-comparable':
    'Sterownika nie odczytano zarówno przed pracami, jak i po nich, albo pokazał za mało. Nie można nic powiedzieć o tym, co się zmieniło.',
  'claim.failing-now': 'obecna w chwili skanu',
  'claim.pending': 'oczekująca',
  'claim.confirmed': 'potwierdzona',
  'claim.failed-this-cycle': 'wystąpiła w tym cyklu',
  'claim.failed-since-clear': 'wystąpiła od kasowania',
  'claim.warning-lamp': 'żąda swojej kontrolki',
  'claim.permanent': 'na liście trwałych',
  'claim.not-tested-since-clear': 'nietestowana od kasowania',
  'claim.not-tested-this-cycle': 'nietestowana w tym cyklu',
  'claim.unit-not-read': 'sterownika nie odczytano',
  'claim.absent': 'niezgłoszona',
  'claim.absent-but-untested': 'niezgłoszona, ale jeszcze nietestowana',
  'claim.none': 'zgłoszona',
}
