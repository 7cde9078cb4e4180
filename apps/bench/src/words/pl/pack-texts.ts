import type { SameCodes } from '@shearline/jobfile'
import type { packTextWords as english } from '../en/pack-texts.ts'

export const packTextWords: SameCodes<typeof english> = {
  'pack-text.neutral': 'ustawienie neutralne',
  'pack-text.example-eu': 'przykład: Unia Europejska, według prawa niemieckiego',
  'pack-text.example-uk': 'przykład: Wielka Brytania',
  'pack-text.example-us': 'przykład: Stany Zjednoczone',
  'pack-text.anywhere': 'dowolny',
  'pack-text.eu-germany': 'Unia Europejska (Niemcy)',
  'pack-text.uk': 'Wielka Brytania',
  'pack-text.us': 'Stany Zjednoczone (stany się różnią)',
  'pack-text.common-practice': 'powszechna praktyka; sprawdź swoje prawo',
  'pack-text.eu-papers':
    'Dyrektywa 1999/37/WE, artykuły 3 i 4: dowód rejestracyjny w jednej lub dwóch częściach; rozporządzenie (UE) 2018/858, załącznik X, zmienione rozporządzeniem delegowanym (UE) 2021/1244: prace dotyczące zabezpieczeń trafiają do rejestru (z pamięci, sprawdź)',
  'pack-text.de-owner':
    'BGB §§ 903 i 985: decyduje właściciel, nie posiadacz; część II dokumentów często leży u właściciela (z pamięci, sprawdź)',
  'pack-text.de-trader':
    'GewO § 14: działalność się zgłasza, więc można pokazać jej zgłoszenie (z pamięci, sprawdź)',
  'pack-text.de-invoice':
    'UStG § 14b ust. 1: osiem lat od końca roku, a więc do dziewięciu (z pamięci, sprawdź)',
  'pack-text.de-authority':
    'BGB §§ 195 i 199 ust. 1: trzy lata od końca roku, a więc do czterech (z pamięci, sprawdź); RODO, art. 5 ust. 1 lit. e',
  'pack-text.de-identity':
    'RODO, art. 5 ust. 1 lit. c i e: bez podanego okresu, tak krótko jak cel; PAuswG § 20 ust. 2 o kopiach (z pamięci, sprawdź)',
  'pack-text.gdpr-no-period': 'RODO, art. 5 ust. 1 lit. e: bez podanego okresu, decyduje firma',
  'pack-text.gdpr-security': 'RODO, art. 5 ust. 1 lit. f; bez podanego okresu, decyduje firma',
  'pack-text.de-rest': 'BGB §§ 195 i 199 ust. 1 (z pamięci, sprawdź)',
  'pack-text.de-contract':
    'Dyrektywa 2011/83/UE, artykuły 6–9 i 16 (pilne wizyty, towary na zamówienie); BGB §§ 312b, 312d i 312g; EGBGB, artykuł 246a (z pamięci, sprawdź)',
  'pack-text.eu-radio': 'ERC/REC 70-03, załącznik 1; ETSI EN 300 220-2',
  'pack-text.radio-every-region': 'nie wybrano regionu: pokazane są wiersze wszystkich',
  'pack-text.uk-one-and-one':
    'wytyczne branżowe: jeden dokument tożsamości i jeden dokument uprawnienia, oryginały, zapisany numer zamiast kopii; V5C sam mówi, że nie dowodzi własności',
  'pack-text.uk-fleet':
    'wytyczne branżowe: zamiast dokumentów wystarcza pismo floty lub numer sprawy ubezpieczyciela',
  'pack-text.uk-invoice':
    'Podręcznik HMRC VATREC3032: sześć lat; rok więcej na koniec okresu rozliczeniowego',
  'pack-text.uk-authority': 'UK GDPR, art. 5 ust. 1 lit. e: bez podanego okresu; zwykle trzy lata',
  'pack-text.uk-identity': 'UK GDPR, art. 5 ust. 1 lit. c i e: bez podanego okresu, tak krótko jak cel',
  'pack-text.uk-no-period': 'UK GDPR, art. 5 ust. 1 lit. e: bez podanego okresu, decyduje firma',
  'pack-text.uk-security': 'UK GDPR, art. 5 ust. 1 lit. f; bez podanego okresu, decyduje firma',
  'pack-text.uk-rest': 'Limitation Act 1980, sekcja 5: sześć lat dla umowy (z pamięci, sprawdź)',
  'pack-text.uk-contract':
    'Consumer Contracts (Information, Cancellation and Additional Charges) Regulations 2013, przepisy 10, 28, 29 i 36 (28 i 36 z pamięci, sprawdź)',
  'pack-text.uk-radio': 'Wymaganie interfejsu Ofcom IR 2030, zgodne z ERC/REC 70-03 (z pamięci, sprawdź)',
  'pack-text.us-registry':
    'formularze rejestru bezpieczeństwa pojazdów: tożsamość i jeden dowód własności, sprawdzone osobiście przed pracą; California Business and Professions Code, sekcje 6980.53–6980.55',
  'pack-text.us-order':
    'rejestr bezpieczeństwa pojazdów: podpisane zlecenie z numerem VIN, miejscem i osobą, która zezwala',
  'pack-text.us-no-papers':
    'zasada stowarzyszenia o pewnej identyfikacji: w razie wątpliwości tylko w obecności policji, akta przechowywane trzy lata',
  'pack-text.us-invoice':
    '26 U.S.C. 6501(a): trzy lata od złożenia, a więc do czterech (z pamięci, sprawdź); Maryland: faktury trzy lata',
  'pack-text.us-authority':
    'zasada stowarzyszenia: trzy lata; California Business and Professions Code 6980.55: dwa',
  'pack-text.us-contract':
    '16 CFR part 429: czas na odstąpienie przy sprzedaży poza lokalem sprzedawcy (z pamięci, sprawdź); stany dodają własne przepisy',
  'pack-text.us-radio': '47 CFR 15.231 i 15.249',
  'pack-text.band-overview': 'teksty serwisowe o zdalnym ryglowaniu według regionu',
  'pack-text.band-europe': 'ERC/REC 70-03, załącznik 1; norma badań ETSI EN 300 220-2',
  'pack-text.ask-ook-or-fsk': 'ASK/OOK lub FSK',
  'pack-text.ask-or-fsk': 'ASK lub FSK',
  'pack-text.ask-or-fsk-older': 'ASK lub FSK, starsze',
  'pack-text.ask-or-fsk-arib': 'ASK lub FSK (ARIB STD-T93)',
  'pack-text.fsk-two-way': 'FSK, niektóre piloty dwukierunkowe i dalekiego zasięgu',
  'pack-text.limit-433': '10 mW e.r.p. przy czasie nadawania do 10 %, albo 1 mW e.r.p. i -13 dBm/10 kHz',
  'pack-text.limit-434': '10 mW e.r.p. w kanałach do 25 kHz',
  'pack-text.limit-868-0': '25 mW e.r.p. przy czasie nadawania do 1 %, albo nasłuch przed nadawaniem',
  'pack-text.limit-868-7': '25 mW e.r.p. przy czasie nadawania do 0,1 %, albo nasłuch przed nadawaniem',
  'pack-text.limit-869-4': '500 mW e.r.p. przy czasie nadawania do 10 %',
  'pack-text.limit-869-7': '5 mW e.r.p., albo 25 mW e.r.p. przy czasie nadawania do 1 %',
  'pack-text.limit-us-control':
    'tylko sygnały sterujące; pole w 3 m od 3750 µV/m przy 260 MHz do 12500 µV/m przy 470 MHz; wyłączenie w ciągu 5 s',
  'pack-text.limit-us-902': 'pole w 3 m do 50 mV/m',
}
