import type { SameCodes } from '@shearline/jobfile'
import type { remoteWords as english } from '../en/remote.ts'

/** Is the new remote of the same radio family as the original? */
export const remoteWords: SameCodes<typeof english> = {
  'remote.title': 'Czy nowy pilot jest z tej samej rodziny radiowej?',
  'remote.why':
    'Pilot o innym radiu uruchamia auto, a jego przyciski nic nie robią. Dwa krótkie nagrania powiedzą to, zanim się go zużyje.',
  'remote.open': 'Porównać dwa nagrania radiowe',
  'remote.how':
    'Nagrać oba piloty dowolnym zwykłym odbiornikiem: ten sam odbiornik, jedno podejście, przycisk wciśnięty przez dwie sekundy. Mierzy się tylko wielkości fizyczne. Nadawanej treści się nie czyta ani nie pokazuje.',
  'remote.privacy':
    'Stanowisko nie zachowuje nagrania: jego próbki znikają po pomiarze. Pliki zostają tam, gdzie zapisał je odbiornik; usunąć je tam.',
  'remote.close': 'Zamknąć',
  'remote.original': 'Pilot oryginalny',
  'remote.new': 'Nowy pilot',
  'remote.pick': 'Wybrać jego nagranie',
  'remote.pick-again': 'Wybrać inne',
  'remote.pick.hint': '.cu8, .cs8, .cs16 lub .cf32; albo oba pliki pary SigMF.',
  'remote.pick.no-samples': '{name} tylko opisuje nagranie. Wybierz go razem z plikiem próbek (.sigmf-data).',
  'remote.pick.not-recording':
    '{name} nie jest nagraniem radiowym. Wybierz plik zapisany przez odbiornik albo oba pliki pary SigMF.',
  'remote.forget': 'Usunąć',
  'remote.measuring': 'Pomiar: {name}',
  'remote.measured':
    '{name}, {seconds} przy {rate} próbek na sekundę{centre, select, none {} other {, środek {centre}}}',
  'remote.failed': 'Pomiar zatrzymany: {problem}',
  'remote.ask.change': 'Czytać z innymi wartościami',
  'remote.rate': 'Próbki na sekundę',
  'remote.rate.unit': 'tysiące',
  'remote.centre': 'Częstotliwość środkowa',
  'remote.centre.hint': 'Bez niej nie można porównać nośnych.',
  'remote.format': 'Format próbek',
  'remote.format.cu8': '8 bitów, bez znaku (cu8)',
  'remote.format.cs8': '8 bitów, ze znakiem (cs8)',
  'remote.format.cs16': '16 bitów (cs16)',
  'remote.format.cs16be': '16 bitów, najpierw starszy bajt',
  'remote.format.cf32': '32 bity, zmiennoprzecinkowe (cf32)',
  'remote.format.cf32be': '32 bity, zmiennoprzecinkowe, najpierw starszy bajt',
  'remote.measure': 'Zmierzyć',

  'remote.verdict.same.next':
    'Po adaptacji jego przyciski mogą działać. Samo radio nie dowodzi, że auto go przyjmie.',
  'remote.verdict.different.next':
    'Jeszcze go nie zużywać: jego przyciski najpewniej nic w tym aucie nie zrobią. Najpierw porównać numery części.',
  'remote.verdict.unsure.next':
    'Nagrać oba jeszcze raz: ten sam odbiornik, jedno podejście, z bliska, przycisk wciśnięty przez dwie sekundy.',
  'remote.points.same': 'Pasuje',
  'remote.points.unsure': 'Nie rozstrzyga',
  'remote.points.different': 'Różni się',
  'remote.reasons': 'Dlaczego',
  'remote.drift': 'Słaby zasięg mimo świeżej baterii?',

  'remote.values': 'Zmierzono',
  'remote.value': 'Wartość',
  'remote.value.carrier': 'Nośna',
  'remote.value.modulation': 'Kluczowanie',
  'remote.value.deviation': 'Dewiacja w każdą stronę',
  'remote.value.rate': 'Symbole na sekundę',
  'remote.value.pulses': 'Impulsy, µs',
  'remote.value.gaps': 'Przerwy, µs',
  'remote.value.burst': 'Paczka',
  'remote.value.repeats': 'Paczki; powtórzenia',
  'remote.value.width': 'Szerokość (99 % mocy)',
  'remote.value.snr': 'Ponad szumem',
  'remote.value.clipped': 'Przesterowanie',
  'remote.modulation.OOK': 'kluczowanie włącz–wyłącz (OOK)',
  'remote.modulation.2-FSK': 'dwa tony (2-FSK)',
  'remote.modulation.unsure': 'niejasne',

  'remote.pictures': 'Obrazy',
  'remote.pictures.content':
    'Narysowane tak, by żaden obraz nie mógł oddać nadanej treści: szczyty trzymane są przez całe grupy impulsów.',
  'remote.spectrum': 'Widmo podczas nadawania',
  'remote.spectrum.key':
    'Częstotliwość biegnie w prawo, siła w górę. Cienka linia: eter, gdy pilot milczy. Linia przerywana: nośna lub tony.',
  'remote.spectrum.apart': 'Leżą za daleko od siebie na jedną skalę: każdy ma własną.',
  'remote.spectrum.says': '{name}: nośna {carrier}, szerokość {width}, {snr}\u00a0dB ponad szumem.',
  'remote.waterfall': 'Wodospad',
  'remote.waterfall.key': 'Czas biegnie w prawo, częstotliwość w górę; im silniej, tym pełniejszy kolor.',
  'remote.waterfall.range': 'od {low} do {high}',
  'remote.waterfall.says':
    '{name}: {bursts, plural, one {# paczka} few {# paczki} many {# paczek} other {# paczki}} w {seconds} wokół {carrier}.',
  'remote.burst': 'Po jednej paczce, z równym początkiem',
  'remote.burst.key':
    'Czas biegnie w prawo, siła w górę. Obrys najdłuższej paczki; przerwy wewnątrz są zamknięte.',
  'remote.burst.says': '{name}: długość {length}.',
  'remote.pulse': 'Średni impuls każdego, z równym początkiem',
  'remote.pulse.key':
    'Czas biegnie w prawo, siła w górę. Szesnaście lub więcej impulsów nałożonych na siebie.',
  'remote.pulse.says': '{name}: średnia z impulsów: {pulses}; zwykłe długości {lengths} µs.',
  'remote.pulse.none': '{name}: brak, bo dwa tony nie mają impulsów albo jest ich za mało.',

  'remote.bands': 'Co jest dozwolone tam, gdzie jeździ auto',
  'remote.bands.note': 'Tylko informacja; rozstrzyga prawo miejscowe i żaden wynik od niej nie zależy.',
  'remote.region': 'Obszar',
  'remote.region.europe': 'Europa',
  'remote.region.north-america': 'Ameryka Północna',
  'remote.region.japan': 'Japonia',
  'remote.region.south-korea': 'Korea Południowa',
  'remote.region.china': 'Chiny',
  'remote.region.australia-new-zealand': 'Australia, Nowa Zelandia',
  'remote.band.usual': 'Piloty są tu zwykłe',
  'remote.band.limit': 'Granica',
  'remote.band.range': 'od {low} do {high} MHz',
  'remote.band.source': 'Źródło: {source}',
  'remote.band.memory': 'Z pamięci, niesprawdzone ze źródłem',
  'remote.band.none': '{carrier} nie leży w żadnym znanym tu paśmie tego obszaru.',
  'remote.band.field': 'Przy {carrier} to {microvolts} µV/m ({decibels} dBµV/m) w odległości 3 m.',

  'remote.keep': 'Zachować wynik w zleceniu',
  'remote.keep.note': 'Wynik, powody i główne wartości; bez nagrania i bez obrazu.',
  'remote.key.original': 'Oryginał to klucz',
  'remote.key.new': 'Nowy pilot to klucz',
  'remote.record': 'Zapisać wynik',
  'remote.recorded': 'Zapisano.',

  'fact.remote-compared':
    'Radio: {fresh, select, none {nowy pilot} other {klucz {fresh}}} wobec {original, select, none {oryginału} other {klucza {original}}}: {verdict}',
}
