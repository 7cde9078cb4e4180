import type { SameCodes } from '../catalogues.ts'
import type { teachingWords as english } from '../en/teaching.ts'

/** The rehearsal: what can go otherwise, the way back, why the order is as it is, what must be settled first. */
export const teachingWords: SameCodes<typeof english> = {
  'cause.supply-lost': 'Utracono zasilanie',
  'cause.link-lost': 'Utracono połączenie',
  'cause.time-out': 'Skończył się czas',
  'cause.closed-early': 'Sesję zamknięto za wcześnie',
  'cause.wrong-code': 'Wprowadzono błędny kod',
  'cause.wrong-key': 'Pokazano klucz innego auta',
  'cause.repeated-key': 'Ten sam klucz pokazano ponownie',
  'cause.key-refused': 'Klucz został odrzucony',
  'cause.key-forgotten': 'Klucza jednak tu nie ma',
  'cause.flat-cell': 'Klucz ma rozładowaną baterię',

  'recovery.start-with': 'Uruchomić auto kluczem {key}',
  'recovery.emergency-start-with':
    'Uruchomić kluczem {key} w miejscu rozruchu awaryjnego, jego bateria jest rozładowana',
  'recovery.wait': 'Czekać',
  'recovery.wait-ignition-on': 'Czekać z włączonym zapłonem',
  'recovery.change-cell': 'Włożyć nową baterię do klucza {key}',
  'recovery.fetch': 'Przywieźć klucz {key}',
  'recovery.enter-code': 'Wprowadzić kod ponownie',
  'recovery.open': 'Otworzyć nową sesję',
  'recovery.show': 'Pokazać klucz {key}',
  'recovery.close': 'Zamknąć sesję',
  'recovery.restore': 'Przywrócić kopię zapasową',
  'recovery-way.use-key': 'Klucz stąd uruchamia auto',
  'recovery-way.reopen': 'Otworzyć nową sesję',
  'recovery-way.fetch': 'Przywieźć klucz',
  'recovery-way.restore': 'Przywrócić kopię zapasową',
  'recovery-way.none': 'Z tym, co jest tutaj, nie ma drogi powrotu',

  'order-reason.other-strands-more': 'Kolejność {other} unieruchamia auto w większej liczbie miejsc: {at}.',
  'order-reason.other-strands-longer': 'Kolejność {other} unieruchamia auto na dłużej: {at}.',
  'order-reason.other-loses-more':
    'Kolejność {other} naraża więcej kluczy, które teraz uruchamiają auto: {at}.',
  'order-reason.other-spoils-more': 'Kolejność {other} może zepsuć więcej nowych kluczy: {at}.',
  'order-reason.other-shows-starting-keys-later':
    'Kolejność {other} nie kosztuje więcej, ale później pokazuje klucz, który uruchamia auto.',
  'order-reason.other-leaves-given-order': 'Kolejność {other} jest równie dobra; zachowano podaną.',
  'order-reason.only-order': 'Jest tylko jedna kolejność.',

  'guard.opens': 'Sesja otwiera się tym, co jest tutaj',
  'guard.code': 'Kod jest pod ręką',
  'guard.backup-proven': 'Kopia zapasowa jest dowiedziona',
  'guard.consent': 'Klient zgodził się, że nieobecne klucze mogą przestać działać',
  'guard.supply': 'Zasilanie jest powyżej progu',
  'guard.all-keys-here': 'Są tu wszystkie klucze auta',
  'guard.idle-time': 'Każdy krok jest szybszy, niż sesja czeka',
  'guard-meet.opens': 'Przynieść to, co ją otwiera: inny przyjęty klucz albo sprzęt, który to potrafi.',
  'guard-meet.code': 'Zdobyć kod zgodną z prawem drogą przed otwarciem. Tutaj nigdy się go nie zapisuje.',
  'guard-meet.backup-proven': 'Odczytać dane dwa razy i porównać, w rozdziale Kopia zapasowa.',
  'guard-meet.consent': 'Wymienić nieobecne klucze i dać klientowi do podpisu, poniżej.',
  'guard-meet.supply': 'Podłączyć zasilacz podtrzymujący, ustalić próg i zanotować odczyt.',
  'guard-meet.all-keys-here': 'Poprosić o wszystkie klucze; czego nie będzie, może przestać działać.',
  'guard-meet.idle-time': 'Ustalić, jak długo sesja czeka, i przygotować klucze.',
  'guard-state.met': 'załatwione',
  'guard-state.not-met': 'niezałatwione',
  'guard-state.not-said': 'nie wiadomo',

  'archetype.replace-all-at-close': 'Zapisuje listę na nowo, utrwala na końcu',
  'archetype.replace-all-each-key': 'Zapisuje listę na nowo z pierwszym kluczem',
  'archetype.replace-all-erased-at-open': 'Opróżnia listę przy otwarciu',
  'archetype.replace-all-list-lost': 'Zapisuje na nowo na końcu; przerwanie gubi listę',
  'archetype.append': 'Dodaje klucze, aż lista będzie pełna',
  'archetype.append-drop-oldest': 'Dodaje klucze; z pełnej listy wypada najstarszy',
  'archetype.append-same-key-twice': 'Dodaje wpisy; jeden klucz może zająć dwa miejsca',
  'archetype.self-add-two-keys': 'Dwa działające klucze wpuszczają jeszcze jeden',
  'archetype.code-gated-hour': 'Otwiera ją kod; błędne próby kosztują godzinę',
  'archetype.code-gated-ignition-on': 'Otwiera ją kod; błędne próby kosztują 20 minut zapłonu',
  'archetype.timed-wait': 'Zapłon włączony i czekanie, bez sprzętu',
  'archetype.all-keys-lost': 'Żaden klucz już nie działa',
  'archetype.numbered-slots': 'Każdy klucz ma numerowane miejsce',
  'archetype.declared-count': 'Podaje się mu, ile będzie kluczy',
  'archetype.pre-coded-key': 'Przyjmuje klucze dostarczone jako gotowe do tego auta',
  'archetype.nothing-known': 'Nic nie wiadomo',
  'archetype-absent.replace-all-at-close':
    'Klucze, których tu nie ma, przestają działać, ale dopiero po zamknięciu sesji.',
  'archetype-absent.replace-all-each-key':
    'Klucze, których tu nie ma, przestają działać, gdy tylko przyjęty zostanie pierwszy klucz.',
  'archetype-absent.replace-all-erased-at-open':
    'Wszystkie klucze przestają działać w chwili otwarcia sesji; znów uruchamiają tylko przyjęte.',
  'archetype-absent.replace-all-list-lost':
    'Klucze, których tu nie ma, przestają działać; jeśli sesja się przerwie, przestają wszystkie.',
  'archetype-absent.append': 'Klucze, których tu nie ma, działają nadal.',
  'archetype-absent.append-drop-oldest':
    'Klucze, których tu nie ma, działają nadal, aż lista będzie pełna; wtedy najstarszy przestaje bez słowa.',
  'archetype-absent.append-same-key-twice':
    'Klucze, których tu nie ma, działają nadal; miejsca kończą się szybciej niż klucze.',
  'archetype-absent.self-add-two-keys': 'Klucze, których tu nie ma, działają nadal.',
  'archetype-absent.code-gated-hour': 'Klucze, których tu nie ma, przestają działać po zamknięciu sesji.',
  'archetype-absent.code-gated-ignition-on':
    'Klucze, których tu nie ma, przestają działać po zamknięciu sesji.',
  'archetype-absent.timed-wait':
    'Klucze, których tu nie ma, przestają działać, gdy tylko przyjęty zostanie pierwszy klucz.',
  'archetype-absent.all-keys-lost': 'Klucze, które znajdą się później, nie uruchomią auta.',
  'archetype-absent.numbered-slots':
    'Klucze, których tu nie ma, działają nadal, chyba że na ich miejsce trafi nowy klucz.',
  'archetype-absent.declared-count': 'Klucze, których tu nie ma, przestają działać po zamknięciu sesji.',
  'archetype-absent.pre-coded-key': 'Klucze, których tu nie ma, działają nadal.',
  'archetype-absent.nothing-known': 'Liczyć się z tym, że klucze, których tu nie ma, przestaną działać.',

  'disturbed.list-rewritten': 'lista przyjętych kluczy była otwarta',
  'disturbed.remote-list-rewritten': 'lista pilotów była otwarta',
  'disturbed.supply-interrupted': 'zasilanie było przerwane lub podtrzymywane',
  'disturbed.cell-changed': 'wymieniono jego baterię',
  'disturbed.case-opened': 'jego obudowa była otwarta',
  'disturbed.blade-cut': 'nacięto jego grot',
  'disturbed.lock-changed': 'wymieniono zamek',
  'disturbed.key-new': 'jest nowy',
}
