import type { SameCodes } from '@shearline/jobfile'
import type { vaultWords as english } from '../en/vault.ts'

/** The vault: who can open vehicle secrets, sealing two reads, opening with a reason. */
export const vaultWords: SameCodes<typeof english> = {
  'vault.recipients': 'Kto może otworzyć dane poufne pojazdu',
  'vault.recipients.about':
    'Kopie zapasowe danych pojazdu są pieczętowane na tym urządzeniu, zanim zostaną zachowane lub wysłane. Otworzyć je mogą tylko osoby mające te klucze.',
  'vault.recipients.none':
    'Jeszcze nikt: dopóki nikogo nie ma, nie można tu zapieczętować żadnej kopii zapasowej.',
  'vault.recipients.office': 'Biuro pieczętuje także dla tych kluczy',
  'vault.recipients.office.about':
    'Przejąć klucz tylko wtedy, gdy wiadomo, czyj jest: kto go ma, otworzy odtąd wszystko, co tu zostanie zapieczętowane.',
  'vault.recipients.take': 'Przejąć',
  'vault.recipients.take-named': 'Przejąć klucz: {name}',
  'vault.recipients.key': 'Klucz publiczny',
  'vault.recipients.key.hint': 'Zaczyna się od age1. Nigdy nie podawać tu klucza prywatnego.',
  'vault.recipients.name': 'Czyj to klucz',
  'vault.recipients.add': 'Dodać ten klucz',
  'vault.recipients.remove': 'Usunąć',
  'vault.recipients.remove-named': 'Usunąć {name}',
  'vault.seal.no-recipient':
    'Nie wskazano żadnego klucza, który mógłby otworzyć zapieczętowaną kopię zapasową.',
  'vault.seal.to-device': 'Wskazać go na stronie urządzenia',
  'vault.seal.about':
    'Oba pliki są porównywane i jeden jest pieczętowany na tym urządzeniu; zachowuje się i wysyła tylko postać zapieczętowaną. Może ją otworzyć: {names}.',
  'vault.seal.first': 'Wybrać pierwszy odczyt',
  'vault.seal.second': 'Wybrać drugi odczyt',
  'vault.seal.none': 'jeszcze nie wybrano',
  'vault.seal.picked': '{name}, {count, plural, one {# bajt} few {# bajty} many {# bajtów} other {# bajtu}}',
  'vault.seal.same-file': 'To dwa razy ten sam plik. Odczytać pamięć drugi raz, do innego pliku.',
  'vault.seal.do': 'Porównać i zapieczętować',
  'vault.seal.busy': 'Porównywanie i pieczętowanie…',
  'vault.digest.first': 'Pierwszy odczyt (skrót z kluczem)',
  'vault.digest.second': 'Drugi odczyt (skrót z kluczem)',
  'vault.sealed-file': 'zapieczętowana kopia zapasowa',
  'vault.secrets': 'Zapieczętowane w tym zleceniu',
  'vault.secret':
    '{what}, {count, plural, one {# bajt} few {# bajty} many {# bajtów} other {# bajtu}}, zapieczętowano {when}',
  'vault.secret.opened': 'Otwarto {when}, {by}: {reason}',
  'vault.open': 'Otworzyć',
  'vault.open.reason': 'Dlaczego jest otwierane',
  'vault.open.reason.hint': 'Trafia do rejestru, zanim cokolwiek zostanie otwarte.',
  'vault.open.identity': 'Klucz prywatny',
  'vault.open.identity.hint': 'Plik tak, jak go wydrukowano lub zachowano. Nie jest przechowywany.',
  'vault.open.identity.file': 'Weź z pliku',
  'vault.open.identity.show': 'Pokaż klucz',
  'vault.open.identity.hide': 'Ukryj klucz',
  'vault.open.identity.no-key': 'Plik „{name}” jest za duży jak na klucz prywatny.',
  'vault.open.passphrase': 'Hasło tego klucza, jeśli je ma',
  'vault.open.do': 'Zapisać powód i otworzyć',
  'vault.open.save': 'Zapisać otwarty plik',
  'vault.open.right':
    'To ten sam plik, który odnotowano przy pieczętowaniu. Usunąć zapisany plik, gdy tylko spełni swoje zadanie.',
  'vault.open.wrong': 'To NIE jest plik, który odnotowano przy pieczętowaniu.',
  'vault.open.not-here': 'Zapieczętowanego pliku nie ma ani tutaj, ani na serwerze.',
}
