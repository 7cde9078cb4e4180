import type { SameCodes } from '@shearline/jobfile'
import type { factWords as english } from '../en/facts.ts'

/** Every kind of fact as one sentence, as it stands on record. */
export const factWords: SameCodes<typeof english> = {
  'fact.job-opened': 'Zlecenie otwarte: {title}, {place} ({zone})',
  'fact.keys-said':
    'Klucze, które podobno istnieją: {count, plural, =0 {żaden} one {# klucz} few {# klucze} many {# kluczy} other {# klucza}}; nie ma ich tutaj: {absent}',
  'fact.note-written': 'Notatka: {text}',
  'fact.authority-seen':
    '{role}: {document}, {issuer}, końcówka {last}; oryginał: {original}; zgodność: {matched}',
  'fact.authority-decided': '{decision}: {reason}',
  'fact.consent-given': '{what}. Zgoda: {signer}',
  'fact.vin-read':
    'VIN {vin}, {source}{picture, select, letters {; odczytano z liter na zdjęciu} code {; odczytano z kodu na zdjęciu} other {}}',
  'fact.recording-attached':
    'Nagranie {name}: {format}, {size}, {messages, plural, one {# komunikat} few {# komunikaty} many {# komunikatów} other {# komunikatu}}',
  'fact.scan-attached':
    'Skan {phase}: {units, plural, one {# sterownik} few {# sterowniki} many {# sterowników} other {# sterownika}}, {faults, plural, =0 {brak usterek} one {# usterka} few {# usterki} many {# usterek} other {# usterki}}',
  'fact.unit-named': 'Sterownik {unit} odpowiada za: {role}',
  'fact.fault-acknowledged': 'Usterka {code} sterownika {unit} przyjęta do wiadomości, {signer}: {words}',
  'fact.clear-requested': 'Usterki skasowane: {units}',
  'fact.supply-set': 'Próg zasilania {volts} ({source}), {battery}',
  'fact.supply-read': 'Zasilanie {volts}, {during}',
  'fact.key-labelled': 'Klucz {key}, {colour}: {form}, {origin}',
  'fact.key-count-read':
    'Auto przechowuje {count, plural, one {# wpis} few {# wpisy} many {# wpisów} other {# wpisu}} {when, select, before {przed pracami} other {po pracach}}',
  'fact.key-count-none':
    'Auto nie pokazuje liczby kluczy {when, select, before {przed pracami} other {po pracach}}: {because}',
  'fact.function-tested': 'Klucz {key}, {function}: {outcome} {phase, select, before {przed} other {po}}',
  'fact.difference-explained': 'Wyjaśniono: {reason}',
  'fact.blank-chosen':
    'Surówka {item}: {fits, select, true {porównana, pasuje} false {porównana, nie pasuje} other {nieporównana}}',
  'fact.blank-used':
    'Surówka {item}: {outcome, select, used {użyta} spoiled {zepsuta} other {z powrotem w furgonetce}}',
  'fact.rule-chosen': '{kind}. Skąd wiadomo: {source}',
  'fact.rehearsal-read': 'Próba przeczytana, kolejność {order}. {wayBack}',
  'fact.backup-proven':
    'Kopia zapasowa, {what}: {same, select, true {dwa równe odczyty, {first}…} other {dwa odczyty różnią się, {first}… i {second}…}}',
  'fact.backup-waived': 'Bez kopii zapasowej: {because}',
  'fact.session-opened': 'Sesja otwarta, {rehearsed, select, true {po próbie} other {bez próby}}',
  'fact.key-taught': 'Klucz {key} zaadaptowany; liczba według auta: {count}; zasilanie: {volts}',
  'fact.session-closed': 'Sesja zamknięta; liczba według auta: {count}',
  'fact.broke-off': 'Zatrzymanie po: {after}, {why}',
  'fact.break-off-mended': 'Przerwanie usunięte: {how}',
  'fact.caution-read': 'Ostrzeżenie przeczytane: {caution}',
  'fact.price-agreed': 'Cena uzgodniona: {amount}',
  'fact.warranty-given':
    'Gwarancja: {months, plural, one {# miesiąc} few {# miesiące} many {# miesięcy} other {# miesiąca}}',
  'fact.retention-set':
    'Usunięcie ustalone dla {count, plural, one {# klasy} few {# klas} many {# klas} other {# klasy}} ({pack})',
  'fact.corrected': '{action, select, withdrawn {Wycofano} other {Zastąpiono}}: {reason}',
  'fact.document-sealed':
    'Dokument zapieczętowany, obejmuje {count, plural, one {# zapis} few {# zapisy} many {# zapisów} other {# zapisu}}, {root}…',
  'fact.unknown':
    'Nowsza wersja zapisała „{kind}”. Zapis zachowano bez zrozumienia; zaktualizować Shearline.',
  'fact.erased': 'Treść „{kind}” usunięto po upływie jej czasu. Jej miejsce w rejestrze pozostaje.',
  'fact.unreadable': 'Treść „{kind}” nie pasuje do swojego rodzaju. Jest zachowana i nie jest liczona.',
}
