import type { SameCodes } from '../catalogues.ts'
import type { powerWords as english } from '../en/power.ts'

/** Whether the car's supply holds: verdict, why, warnings, the watch, and what is left after the work. */
export const powerWords: SameCodes<typeof english> = {
  'power-verdict.go': 'Można: akumulator utrzyma plan.',
  'power-verdict.connect-supply': 'Najpierw podłączyć zasilacz co najmniej {amperes}\u00a0A.',
  'power-verdict.stop': 'Stop: nie zaczynać.',

  'power-reason.holds':
    'Prawdopodobieństwo spadku poniżej {floorVolts}: {chancePercent}\u00a0%. Najniżej należy się spodziewać około {lowestVolts}.',
  'power-reason.holds-with-supply':
    'Z zasilaczem prawdopodobieństwo spadku poniżej {floorVolts} wynosi {chancePercent}\u00a0%. Najniżej należy się spodziewać około {lowestVolts}.',
  'power-reason.crosses-floor':
    'Przy tym opisie prawdopodobieństwo spadku poniżej {floorVolts} wynosi {chancePercent}\u00a0%; przyjmuje się {acceptedPercent}\u00a0%.',
  'power-reason.supply-too-small': 'Zasilacz według opisu nie wystarcza.',
  'power-reason.supply-volts-too-low': 'Zasilacz jest ustawiony poniżej progu.',
  'power-reason.no-supply-enough':
    'Żaden zasilacz do 200 A nie utrzyma progu. Sprawdzić próg albo najpierw wymienić lub naładować akumulator.',
  'power-reason.known-bad':
    'Wiadomo, że akumulator jest zły. Pracować z akumulatora pomocniczego albo zlecić założenie nowego.',
  'power-reason.dead-cell':
    '{restVolts} to tyle, ile zostaje, gdy cela jest martwa. Sprawdzić akumulator pod obciążeniem, naładować go osobno albo użyć akumulatora pomocniczego.',
  'power-reason.not-twelve-volts':
    '{restVolts} to nie akumulator 12 V w spoczynku. Wyłączyć silnik i prostowniki, potem odczytać ponownie.',
  'power-reason.frozen':
    'Przy {celsius} °C i tym naładowaniu elektrolit jest zamarznięty. Nie ładować, nie łączyć kablami rozruchowymi i nie obciążać: najpierw niech odtaje.',

  'power-warning.rest-volts-missing':
    'Bez woltów w spoczynku naładowanie może być dowolne. Odczytać je na zaciskach, zanim cokolwiek się włączy.',
  'power-warning.rested-too-short':
    'Spoczynek trwał krótko: odczyt może być zawyżony. Ufać dolnemu końcowi pasma.',
  'power-warning.hours-at-rest-missing':
    'Nie wiadomo, jak długo trwał spoczynek: odczyt może być zawyżony. Zapytać, kiedy auto ostatnio jechało.',
  'power-warning.above-full':
    '{restVolts} to więcej, niż ten akumulator pokazuje w spoczynku. Upewnić się, że nic go nie ładuje, i odczytać jego etykietę.',
  'power-warning.deeply-discharged':
    '{restVolts} leży poniżej każdej tabeli: pusty i być może uszkodzony. Sprawdzić go, zanim się mu zaufa.',
  'power-warning.kind-missing':
    'Rodzaj akumulatora jest nieznany: pasmo obejmuje wszystkie. Odczytać jego etykietę.',
  'power-warning.capacity-missing': 'Pojemność jest nieznana i przyjęta szeroko. Odczytać jego etykietę.',
  'power-warning.age-missing': 'Wiek jest nieznany: pasmo obejmuje od nowego do dziewięciu lat.',
  'power-warning.temperature-missing': 'Temperatura jest nieznana: pasmo obejmuje od -10 do 30 °C.',
  'power-warning.second-rate-unusable': 'Dwie wartości na etykiecie przeczą sobie; jedną pominięto.',
  'power-warning.step-load-missing':
    'Obciążenie w kroku „{step}” jest nieznane: przyjęto od 5 do 40 A. Podać, co jest włączone.',
  'power-warning.may-be-frozen':
    'Na dolnym końcu pasma elektrolit może być zamarznięty. Obejrzeć obudowę; do zamarzniętego akumulatora niczego nie podłączać.',
  'power-warning.lithium-below-zero':
    'Poniżej 0 °C akumulator litowy może odmówić ładowania lub sam się odciąć. Ogrzać go albo pozwolić, by całość przejął zasilacz.',
  'power-warning.charger-not-supply':
    'Prostownik to nie zasilacz: przechodzi w ładowanie podtrzymujące i pozwala napięciu siąść. Na jego prąd się nie liczy.',
  'power-warning.supply-amperes-missing':
    'Prąd zasilacza jest nieznany: przyjęto od 5 do 30 A. Odczytać jego etykietę.',
  'power-warning.support-writes':
    'Utrzyma się bez niego; mimo to powszechną praktyką jest podłączenie zasilacza przed pierwszym zapisem.',
  'power-warning.clamp-to-chassis':
    'Przy nadzorze akumulatora ujemny zacisk podłącza się do karoserii lub masy silnika, nie do bieguna.',
  'power-warning.setting-overruled': 'Instrukcja producenta pojazdu ma pierwszeństwo przed ustawieniem.',
  'power-warning.floor-above-target': 'Cel leży poniżej progu: za cel przyjęto próg.',
  'power-warning.start-doubtful':
    'Po pracach auto uruchamia się tylko w {chancePercent}\u00a0% możliwych przypadków. Naładować przed odjazdem albo mieć pod ręką urządzenie rozruchowe.',

  'power-level.steady': 'Stabilnie',
  'power-level.falling': 'Spada: nie wystarczy do końca planu',
  'power-level.amber': 'Poniżej progu',
  'power-level.stop': 'Zatrzymać teraz',

  'power-watch.no-readings': 'Jeszcze żadnego odczytu: to jest prognoza.',
  'power-watch.readings-left-out':
    'Niektóre odczyty nie są użytecznymi woltami lub czasami i zostały pominięte. Sprawdzić miernik.',
  'power-watch.does-not-fit':
    'Żaden akumulator według opisu nie wyjaśnia tych odczytów. Prąd pobiera coś jeszcze: sprawdzić, zanim pójdzie się dalej.',
  'power-watch.plan-overrun': 'Prace wyszły poza koniec planu; przyjęto, że ostatnie obciążenie trwa dalej.',

  'power-start.starts': 'Uruchomi się',
  'power-start.doubtful': 'Może się nie uruchomić: naładować albo mieć pod ręką urządzenie rozruchowe',
  'power-start.does-not-start': 'W tym stanie się nie uruchomi',
  'power-start.unknown': 'Nie wiadomo: odczytać wolty po odłączeniu zasilacza',

  'power-drain.asleep': 'Uśpione',
  'power-drain.waiting': 'Jeszcze nie śpi. Odczytać ponownie, do 60 minut po zamknięciu',
  'power-drain.awake':
    'Coś nie daje autu zasnąć. Odłączyć od gniazda, zabrać klucze, wszystko zamknąć, odczytać ponownie',
  'power-drain.not-measured': 'Niezmierzone',

  'power-cell.good': 'Dobra',
  'power-cell.replace-soon': 'Wkrótce wymienić',
  'power-cell.replace': 'Wymienić',
  'power-cell.test-loaded': 'Niedowiedzione: odczytać, gdy pilot nadaje',
  'power-cell.read-again': 'Niemożliwe: sprawdzić zakres, biegunowość i liczbę baterii',

  'power-meter.empty': 'pusty wiersz',
  'power-meter.no-number': 'wiersz bez liczby',
  'power-meter.several-numbers': 'wiersz z kilkoma liczbami',
  'power-meter.overload': 'poza zakresem',
  'power-meter.alternating': 'prąd przemienny: przełączyć na stały',
  'power-meter.other-unit': 'inna wielkość niż wolty',
}
