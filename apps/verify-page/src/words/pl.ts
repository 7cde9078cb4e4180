/** @module The Polish words of the verify page. Names stand where they need no case ending. */
import type { SameCodes } from '@shearline/jobfile'
import type { en as english } from './en.ts'

export const pl: SameCodes<typeof english> = {
  'page.language': 'Język',
  'page.title': 'Sprawdzić protokół wydania',
  'page.lead':
    'Proszę upuścić tu dokument albo paczkę, którą wydała firma. Sprawdzenie odbywa się w tej stronie: nic nie opuszcza tego urządzenia i nie potrzeba połączenia.',
  'page.drop': 'Tu upuścić plik',
  'page.choose': 'Wybrać plik',
  'page.another': 'Sprawdzić inny plik',
  'page.kinds': 'Zapieczętowany dokument (PDF), rejestr (JSON) albo paczka (ZIP)',
  'page.foot':
    'Ta strona wykonuje te same sprawdzenia co polecenie „shearline verify”. Proszę przechowywać ją razem z dokumentami: działa tak długo, jak działają przeglądarki.',
  'page.no-signatures':
    'Ta przeglądarka nie potrafi sprawdzać podpisów Ed25519, więc ta strona niczego tu nie dowiedzie. Proszę otworzyć ją w nowszej przeglądarce.',
  'busy.read': 'Sprawdzanie: {name}, odczytano {share} % ...',
  'busy.stop': 'Zatrzymać',
  'busy.stopped': 'Zatrzymano. Niczego nie dowiedziono.',
  'busy.failed': 'Nie udało się odczytać pliku: {why} Proszę wybrać go ponownie.',
  'verdict.holds': 'Zgadza się',
  'verdict.holds-means':
    'Plik {name} jest bajt po bajcie tym, co zapieczętowano, i mówi to, co mówi jego rejestr.',
  'verdict.holds-bundle':
    'Plik {name} jest bajt po bajcie tym, co spakowano, i każdy zapis w nim jest dowiedziony.',
  'verdict.holds-record':
    'Każdy zapis w pliku {name} jest dowiedziony. To sam rejestr: nie ma stron do porównania.',
  'verdict.fails': 'Nie zgadza się',
  'verdict.fails-means':
    '{count, plural, one {Jedna rzecz nie zgadza się w pliku {name}.} few {# rzeczy nie zgadzają się w pliku {name}.} many {# rzeczy nie zgadza się w pliku {name}.} other {# rzeczy nie zgadza się w pliku {name}.}} Proszę na nim nie polegać.',
  'mark.holds': 'zgadza się',
  'mark.fails': 'nie zgadza się',
  'mark.unknown': 'nie wiadomo',
  'check.line': '{check}: {mark}',
  'check.seal': 'Pieczęć',
  'check.seal.holds':
    'Jej podpis jest prawidłowy: urządzenie wymienione niżej zapieczętowało dokładnie tę listę części.',
  'check.seal.fails': 'Nie ma pieczęci, której podpis byłby prawidłowy.',
  'check.bytes': 'Każdy bajt',
  'check.bytes.holds':
    'Każdy bajt poza miejscem pieczęci jest tym zapieczętowanym (bajtów: {bytes}), a pieczęć jest taka, jak ją zapisano.',
  'check.bytes.fails':
    '{count, plural, =0 {Części pliku są tymi zapieczętowanymi, ale koniec pliku nie jest taki, jak zapisano pieczęć.} one {Jedna część pliku nie jest tą zapieczętowaną (wszystkich: {all}).} few {# części pliku nie są tymi zapieczętowanymi (wszystkich: {all}).} many {# części pliku nie jest tymi zapieczętowanymi (wszystkich: {all}).} other {# części pliku nie jest tymi zapieczętowanymi (wszystkich: {all}).}}',
  'check.bytes.unknown': 'Bez prawidłowej pieczęci nikt nie może powiedzieć, które bajty należą do pliku.',
  'check.zip.holds': 'Każdy bajt pliku ZIP jest tym spakowanym, a lista plików jest podpisana.',
  'check.zip.fails': 'Plik ZIP albo lista jego plików nie jest tym, co spakowano.',
  'check.facts': 'Zapisy i podpisy',
  'check.facts.holds':
    '{facts, plural, one {Jedyny zapis jest podpisany i powiązany} few {Wszystkie # zapisy są podpisane i powiązane} many {Wszystkie # zapisów jest podpisanych i powiązanych} other {Wszystkie # zapisu jest podpisane i powiązane}}; {signatures, plural, one {jeden podpis jest prawidłowy} few {# podpisy są prawidłowe} many {# podpisów jest prawidłowych} other {# podpisu jest prawidłowe}}.',
  'check.facts.fails':
    '{facts, plural, one {Jest jeden zapis} few {Są # zapisy} many {Jest # zapisów} other {Jest # zapisu}}; {signatures, plural, one {jeden podpis jest prawidłowy} few {# podpisy są prawidłowe} many {# podpisów jest prawidłowych} other {# podpisu jest prawidłowe}}. Co się nie zgadza, podano niżej.',
  'check.facts.unknown': 'Nie udało się odczytać żadnego zapisu.',
  'check.hashes': 'Skróty',
  'check.hashes.holds':
    '{hashes, plural, one {Jeden skrót obliczono na nowo i jest prawidłowy} few {# skróty obliczono na nowo i są prawidłowe} many {# skrótów obliczono na nowo i są prawidłowe} other {# skrótu obliczono na nowo i są prawidłowe}}.',
  'check.hashes.fails':
    '{hashes, plural, one {Jeden skrót obliczono na nowo i jest prawidłowy} few {# skróty obliczono na nowo i są prawidłowe} many {# skrótów obliczono na nowo i są prawidłowe} other {# skrótu obliczono na nowo i są prawidłowe}}; inne nie są.',
  'check.pages': 'Strony i rejestr',
  'check.pages.holds': 'Wydrukowane strony mówią to, co mówi podpisany rejestr, znak po znaku.',
  'check.pages.fails': 'Wydrukowane strony nie mówią tego, co mówi podpisany rejestr.',
  'check.pages.unknown':
    'To wiadomo tylko wtedy, gdy każdy bajt jest tym zapieczętowanym, rejestr jest dowiedziony, a ta strona do sprawdzania jest w wersji, która sporządziła dokument.',
  'wrong.title': 'Co się nie zgadza i gdzie',
  'wrong.note': 'Do wiadomości',
  'wrong.notes': 'Co warto wiedzieć',
  'who.title': 'Czyja to pieczęć',
  'who.device': 'Urządzenie',
  'who.print': 'Odcisk klucza (SHA-256)',
  'who.packed': 'Spakowano przez',
  'who.means':
    'Prawidłowa pieczęć dowodzi, że niczego nie zmieniono, odkąd ten klucz zapieczętował dokument. Czyj to klucz, może powiedzieć tylko firma: proszę porównać odcisk z odciskiem otrzymanym od firmy inną drogą.',
  'who.compare': 'Odcisk otrzymany od firmy',
  'who.same': 'To ten sam odcisk: ten klucz należy do tego, od kogo on pochodzi.',
  'who.other': 'To inny odcisk: dokumentu nie zapieczętowano znanym Państwu kluczem.',
  'who.short':
    'Proszę wpisać wszystkie 64 znaki; {count, plural, one {wpisano # znak} few {wpisano # znaki} many {wpisano # znaków} other {wpisano # znaku}}.',
  'strip.title': 'Plik od pierwszego do ostatniego bajtu',
  'strip.alt':
    '{count, plural, one {Jedna część} few {# części} many {# części} other {# części}} w kolejności pliku; {changed, plural, =0 {żadnej nie zmieniono} one {jedną zmieniono} few {# zmieniono} many {# zmieniono} other {# zmieniono}}. Lista poniżej wymienia każdą.',
  'strip.seal': 'miejsce pieczęci',
  'strip.parts':
    '{count, plural, one {Jedna część} few {# części} many {# części} other {# części}}, bajt po bajcie',
  'strip.part': 'Część',
  'strip.from': 'Pierwszy bajt',
  'strip.to': 'Ostatni bajt',
  'strip.state': 'Stan',
  'facts.title':
    '{count, plural, one {Jeden zapis} few {# zapisy} many {# zapisów} other {# zapisu}} rejestru',
  'facts.fact': 'Zapis',
  'facts.at': 'Zapisano (UTC)',
  'facts.by': 'Przez',
  'file.title': 'Plik',
  'file.name': 'Nazwa',
  'file.bytes': 'Bajty',
  'file.job': 'Zlecenie',
}
