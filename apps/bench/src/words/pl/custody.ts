import type { SameCodes } from '@shearline/jobfile'
import type { custodyWords as english } from '../en/custody.ts'

/** Kinds of fact about what was agreed, what is kept how long, who saw it, and the devices. */
export const custodyWords: SameCodes<typeof english> = {
  'fact.call-taken':
    'Zgłoszenie przyjęte {channel, select, phone {telefonicznie} message {wiadomością} visit {osobiście} other {przez biuro}}; auto {starts, select, true {uruchamia się} false {nie uruchamia się} other {może się uruchomi, a może nie}}; zabrać ze sobą: {bring}',
  'fact.appointment-made': 'Termin {day} o {from} UTC, {place}',
  'fact.appointment-ended':
    'Termin {outcome, select, kept {dotrzymany} moved {przełożony} other {odwołany}}: {because}',
  'fact.quote-given': 'Podano wycenę: {amount}',
  'fact.policy-answered': 'Odpowiedź na regułę „{question}”: {answer} ({pack})',
  'fact.plan-accepted': 'Plan przyjęty, {signer}, kolejność {order}, {plan}…',
  'fact.step-done':
    'Krok {outcome, select, done {wykonany} failed {nieudany} other {pominięty}}: {step} ({because})',
  'fact.signature-drawn':
    'Podpis: {signer}, {what, select, consent {zgoda} plan {plan} quote {wycena} handover {wydanie} other {przyjęcie do wiadomości}}',
  'fact.photo-attached':
    'Zdjęcie: {shows, select, key {klucz} vin {VIN} odometer {licznik przebiegu} lamps {kontrolki} damage {uszkodzenia} equipment {sprzęt} identity {dokument tożsamości} other {coś innego}}; {words}',
  'fact.vehicle-handed-over': 'Pojazd wydany, odbiera: {to}; klucze: {keys}',
  'fact.purpose-ended': '{what}: już niepotrzebne. {because}',
  'fact.hold-placed': 'Niczego nie wolno usuwać: {reason}',
  'fact.hold-lifted': 'Znowu wolno usuwać: {reason}',
  'fact.deletion-proven':
    '{what}: {count, plural, one {usunięto # rzecz} few {usunięto # rzeczy} many {usunięto # rzeczy} other {usunięto # rzeczy}}. {why}',
  'fact.secret-sealed':
    'Zapieczętowano: {what}, {count, plural, =0 {hasłem} one {otworzyć może # osoba} few {otworzyć mogą # osoby} many {otworzyć może # osób} other {otworzyć może # osoby}}, {blob}…',
  'fact.secret-opened': 'Zapieczętowane dane {blob}… otwarto: {reason}',
  'fact.device-enrolled': 'Urządzenie {name} ({device}) przyjęte, zatwierdza: {by}',
  'fact.device-key-rotated': 'Nowy klucz podpisu: to urządzenie to teraz {name} ({device}). {because}',
  'fact.device-revoked':
    'Urządzenie {device} nie jest już zaufane ({because, select, retired {wycofane} replaced {wymienione} lost {zgubione} stolen {skradzione} other {jego klucz może być w obcych rękach}}): {reason}',
  'fact.newer-version':
    'Nowsza wersja zapisała „{kind}” w postaci, której ta wersja nie potrafi odczytać. Zapis zachowano bez zrozumienia; zaktualizować Shearline.',
}
