import type { SameCodes } from '@shearline/jobfile'
import type { signingWords as english } from '../en/signing.ts'

/** Signing by hand or by name: what is signed, by whom, and what became of it. */
export const signingWords: SameCodes<typeof english> = {
  'sign.consent': 'Dać to klientowi do podpisu',
  'sign.handover': 'Dać klientowi do podpisu wydanie',
  'sign.again': 'Pobrać podpis ponownie',
  'sign.again.reason': 'Podpisano ponownie.',
  'sign.title.consent': 'Zgoda',
  'sign.title.handover': 'Wydanie',
  'sign.received': 'Odebrane przez klienta',
  'sign.received.why': 'Podpisać, zanim dokument zostanie zapieczętowany: wtedy podpis jest pod pieczęcią.',
  'sign.shown': 'Co się podpisuje',
  'sign.signer': 'Kto podpisuje',
  'sign.signer.hint': 'Pełne imię i nazwisko osoby, która teraz podpisuje.',
  'sign.how': 'Jak',
  'sign.how.drawn': 'Odręcznie',
  'sign.how.typed': 'Przez wpisanie nazwiska',
  'sign.pad.empty': 'Miejsce na podpis. Jeszcze niczego nie narysowano. Zamiast tego można wpisać nazwisko.',
  'sign.pad.drawn': 'Miejsce na podpis. Podpis jest narysowany.',
  'sign.clear': 'Wyczyścić',
  'sign.not-drawn': 'Jeszcze niczego nie podpisano: narysować podpis powyżej albo wybrać wpisanie nazwiska.',
  'sign.do': 'Po przeczytaniu podpisuję',
  'sign.do.typed': 'Po przeczytaniu podpisuję swoim nazwiskiem',
  'sign.file': 'podpis',
  'sign.by':
    '{how, select, typed {{signer}: podpis przez wpisanie nazwiska, {when}.} other {{signer}: podpis odręczny, {when}.}}',
  'sign.picture': 'Podpis: {signer}',
  'sign.words': 'Słowa, które podpisano',
  'sign.words.same': 'Słowa, które podpisano, są tymi, które są teraz w rejestrze.',
  'sign.words.older': 'Rejestr od tego czasu się zmienił: to nie są słowa, które podpisano.',
  'sign.words.broken': 'Zachowane słowa nie pasują do skrótu w rejestrze: nie polegać na tym podpisie.',
  'sign.deleted': 'Rysunek usunięto {when}, bo minął jego czas.',
  'sign.reading': 'Otwieranie podpisu …',
  'sign.no-connection': 'Rysunku nie ma na tym urządzeniu, a serwer jest teraz nieosiągalny.',
  'sign.not-there':
    'Rysunku nie ma jeszcze na serwerze. Pojawi się, gdy wyśle go urządzenie, które go przyjęło.',
  'sign.damaged': 'Zachowane bajty nie pasują do rejestru, więc się ich nie pokazuje.',
}
