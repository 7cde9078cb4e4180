import type { SameCodes } from '../catalogues.ts'
import type { pictureWords as english } from '../en/pictures.ts'

/** Phrases of the handover document that its second edition added: photos, life lines, how the supply was left, the square code. */
export const pictureWords: SameCodes<typeof english> = {
  'doc.code-alt':
    'Kwadratowy kod do zeskanowania. Zawiera SHA-256 rejestru i odcisk klucza pieczętującego, oba wydrukowane poniżej.',
  'doc.code-about':
    'Proszę zeskanować ten kod, aby porównać maszynowo: zawiera SHA-256 rejestru i odcisk klucza, jak wydrukowano poniżej. Nie otwiera żadnej strony i nie wymaga sieci.',
  'doc.key-photo': 'Zdjęcie w rejestrze, SHA-256 zaczyna się od {hash}.',
  'doc.key-photo-alt':
    'Zdjęcie klucza {key}: {form}, zawieszka: {colour}. Rejestr wskazuje je przez jego SHA-256.',
  'doc.key-cell-rest': 'Bateria pastylkowa, {rest}\u00a0V w spoczynku: {verdict}.',
  'doc.key-cell-loaded': 'Bateria pastylkowa, {loaded}\u00a0V podczas nadawania: {verdict}.',
  'doc.key-cell-both':
    'Bateria pastylkowa, {rest}\u00a0V w spoczynku i {loaded}\u00a0V podczas nadawania: {verdict}.',
  'doc.key-cell-replaced': 'Baterię wymieniono.',
  'doc.fault-strand': 'Linia życia',
  'doc.fault-strand-alt': '{code}, linia życia: {life}',
  'doc.fault-strand-legend':
    'Linia życia biegnie przez skany ({phases}), od pierwszego do ostatniego. Pełny krążek: zgłoszona. Pierścień: sterownik odpowiedział i jej nie zgłosił. Krótka kreska: nie odczytano.',
  'doc.power-verdict': 'Obliczono przed pracami',
  'doc.power-supply-first': 'Najpierw podłączyć zasilacz.',
  'doc.power-drain': 'Prąd po zamknięciu',
  'doc.power-drain-read':
    '{milliamperes}\u00a0mA, {minutes, plural, one {# minutę} few {# minuty} many {# minut} other {# minuty}} po zamknięciu. {state}.',
  'doc.power-removed': 'Zasilacz podtrzymujący',
  'doc.power-removed-state':
    '{removed, select, yes {odłączony przed ostatnim odczytem po pracach} other {nadal podłączony przy ostatnim odczycie po pracach}}',
  'doc.handed': 'Wydano',
  'doc.handed-to': '{at}, odbiorca: {to}. Klucze: {keys}',
  'doc.handed-to-unnamed': '{at}, odbiorca: {to}. W rejestrze nie ma, które klucze.',
  'doc.handed-not': 'brak w rejestrze w chwili sporządzenia tego dokumentu',
  'doc.stopped-button-away':
    'Uruchamianie samochodu i zamykanie go przyciskiem adaptuje się osobno: klucz, który nie uruchamia samochodu, może nadal zamykać lub otwierać go przyciskiem. Kluczem, którego tu nie ma, nie da się tego sprawdzić.',
  'doc.consent-unsigned': '{about}. Udzielono w imieniu: {signer}; w rejestrze nie ma podpisu pod tą zgodą.',
  'doc.consent-keys-unsigned':
    '{about}: {names}. Udzielono w imieniu: {signer}; w rejestrze nie ma podpisu pod tą zgodą.',
  'doc.signatures': 'Podpisy w rejestrze',
  'doc.signatures-none': 'W rejestrze nie ma podpisu.',
  'doc.signature-signer': 'Imię i nazwisko',
  'doc.signature-for': 'Czego dotyczy',
  'doc.signature-how': 'Jak',
  'doc.signature-when': 'Kiedy',
  'doc.signature-kept': 'Początek SHA-256',
  'doc.signature-for.consent': 'Zgoda',
  'doc.signature-for.plan': 'Plan prac',
  'doc.signature-for.quote': 'Wycena',
  'doc.signature-for.handover': 'Odbiór samochodu i kluczy',
  'doc.signature-for.acknowledgement': 'Przyjęcie usterek do wiadomości',
  'doc.signature-drawn': 'odręcznie',
  'doc.signature-typed': 'wpisane z klawiatury',
  'doc.signatures-limit':
    'Samych podpisów tu nie wydrukowano; rejestr wskazuje każdy przez jego SHA-256. Pokazuje on, co i kiedy wprowadzono, a nie czyja to była ręka.',
  'doc.supply-readings': 'Pomiary',
  'doc.price-tax': 'Rejestr nie mówi, czy ta cena zawiera podatek.',
  'doc.span-day': '{date}, od {from} do {to} ({zone})',
  'doc.span-days': 'od {from} do {to}',
}
