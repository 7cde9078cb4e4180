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
}
