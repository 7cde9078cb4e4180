import type { SameCodes } from '../catalogues.ts'
import type { remoteWords as english } from '../en/remote.ts'

/** Are two remotes of one radio family: the verdict, its reasons, and what was met while measuring. */
export const remoteWords: SameCodes<typeof english> = {
  'remote-verdict.same': 'Ta sama rodzina radiowa',
  'remote-verdict.different': 'Inne radio',
  'remote-verdict.unsure': 'Nie ma pewności',

  'remote-reason.modulation':
    '{same, select, yes {Oba nadają tak: {original}.} other {Oryginał nadaje tak: {original}, nowy tak: {new}.}}',
  'remote-reason.modulation-unknown': 'Nie jest jasne, jak nadaje: oryginał {original}, nowy {new}.',
  'remote-reason.carrier': 'Nośne dzieli {difference}: oryginał {original}, nowy {new}.',
  'remote-reason.carrier-unknown':
    'Częstotliwość środkowa jednego nagrania jest nieznana, więc nie można porównać nośnych.',
  'remote-reason.carrier-drifted':
    'Nośna nowego odbiega o {difference}. Wąski odbiornik w aucie może słyszeć go tylko z bliska, mimo świeżej baterii.',
  'remote-reason.timing':
    '{unmatched, select, both {Każdy ma długości impulsów, których drugi nie ma} other {Długości impulsów różnią się o {percent}\u00a0%}}: oryginał {original} µs, nowy {new} µs.',
  'remote-reason.timing-part':
    'Można porównać tylko część długości impulsów: oryginał {original} µs, nowy {new} µs.',
  'remote-reason.deviation':
    'Dewiacje częstotliwości różnią się o {percent}\u00a0%: oryginał {original}, nowy {new}.',
  'remote-reason.symbol-rate':
    'Szybkości symboli różnią się o {percent}\u00a0%: oryginał {original}, nowy {new} na sekundę.',
  'remote-reason.other-sender-matches':
    'Słabszy nadajnik w jednym nagraniu pasuje do drugiego nagrania: najsilniejszy mógł nie być pilotem.',
  'remote-reason.no-sender':
    '{side, select, original {Oryginał} other {Nowy pilot}}: nie znaleziono nadajnika.',
  'remote-reason.weak':
    '{side, select, original {Oryginał} other {Nowy pilot}}: tylko {snr}\u00a0dB ponad szumem; potrzeba 6 dB.',
  'remote-reason.off-centre':
    '{side, select, original {Oryginał} other {Nowy pilot}}: nośna leży na skraju nagranego zakresu, {offset} od środka.',
  'remote-reason.clipped':
    '{side, select, original {Oryginał} other {Nowy pilot}}: {percent}\u00a0% nagrania jest przesterowane.',
  'remote-reason.foreign-on-top':
    '{side, select, original {Oryginał} other {Nowy pilot}}: nakłada się na niego inny nadajnik.',
  'remote-reason.several-senders':
    '{side, select, original {Oryginał} other {Nowy pilot}}: dwa nadajniki są mniej więcej równie silne.',
  'remote-reason.few-pulses':
    '{side, select, original {Oryginał} other {Nowy pilot}}: za mało impulsów do pomiaru.',

  'remote-finding.no-sender':
    'Nie znaleziono nadajnika. Nagrać ponownie i trzymać przycisk przez dwie sekundy.',
  'remote-finding.weak':
    'Tylko {snrDb}\u00a0dB ponad szumem; potrzeba 6 dB. Przybliżyć pilota i nagrać ponownie.',
  'remote-finding.off-centre':
    'Nośna leży {offset} od środka. Dostroić odbiornik bliżej niej i nagrać ponownie.',
  'remote-finding.clipped':
    '{percent}\u00a0% wartości jest przesterowane. Zmniejszyć wzmocnienie lub odsunąć się i nagrać ponownie.',
  'remote-finding.foreign-on-top': 'Nakłada się inny nadajnik. Poczekać, aż umilknie, i nagrać ponownie.',
  'remote-finding.several-senders':
    'Dwa nadajniki są mniej więcej równie silne. Trzymać pilota blisko odbiornika i nagrać ponownie.',
  'remote-finding.few-pulses':
    'Za mało impulsów do pomiaru. Trzymać przycisk przez dwie sekundy i nagrać ponownie.',
  'remote-finding.rate-unknown': 'Częstotliwość próbkowania jest nieznana. Podać ją poniżej.',
  'remote-finding.rate-unusable':
    'Częstotliwości próbkowania {rate} na sekundę nie da się użyć. Sprawdzić ją poniżej.',
  'remote-finding.format-unknown': 'Format próbek jest nieznany. Wybrać go poniżej.',
  'remote-finding.centre-unknown':
    'Częstotliwość środkowa jest nieznana, więc nośną podaje się tylko względem środka.',
  'remote-finding.empty-recording': 'Liczba próbek w nagraniu: {samples}; za mało do pomiaru.',
  'remote-finding.cut-sample':
    'Ostatnie bajty nie tworzą pełnej próbki i zostały pominięte. Jeśli wartości wyglądają źle, sprawdzić format próbek.',
  'remote-finding.not-numbers': 'Wartości, które nie były liczbami: {values}. Sprawdzić format próbek.',
  'remote-finding.parts-dropped':
    'Nagranie jest długie: pominięto {share}\u00a0% najcichszych części. Jeśli brakuje naciśnięcia, nagrać krócej.',
  'remote-finding.other-sender':
    'Słychać było inny nadajnik, {offset} od środka. Nie szkodzi to, jeśli pilot był najsilniejszy.',
  'remote-finding.some-clipping':
    '{percent}\u00a0% wartości jest przesterowane; tego, co się tu mierzy, to nie psuje.',
  'remote-finding.carrier-wanders':
    'Nośna przesuwa się w nagraniu o {drift}. Sprawdzić baterię i płytkę tego pilota.',
  'remote-finding.sigmf-unreadable': 'Pliku SigMF nie można odczytać. Podać wartości poniżej.',
  'remote-finding.sigmf-field': 'Plik SigMF nie podaje pola {field}. Podać wartość poniżej.',
  'remote-finding.sigmf-datatype':
    'Format próbek SigMF {datatype} nie jest tu znany. Przekształcić nagranie.',
  'remote-finding.sigmf-channels':
    'Liczba kanałów w jednym pliku nagrania: {channels}. Zapisać jeden kanał do osobnego pliku.',
  'remote-finding.sigmf-retuned':
    'Odbiornik przestrojono podczas nagrywania; używa się jego pierwszej częstotliwości środkowej. Lepiej nagrać ponownie.',
}
