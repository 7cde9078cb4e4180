import type { SameCodes } from '@shearline/jobfile'
import type { sheetWords as english } from '../en/sheets.ts'

/** Sheets beside the handover document, and the row of a register. */
export const sheetWords: SameCodes<typeof english> = {
  'sheets.title': 'Pisma',
  'sheets.show': 'Zgody, notatki i oświadczenia do wydania',
  'sheets.looking': 'Sprawdzanie, co jest w rejestrze ...',
  'sheets.about': 'Każde powstaje na tym urządzeniu z tego, co jest w rejestrze, bez połączenia.',
  'sheets.language': 'Język osoby, która je czyta',
  'sheets.make': 'Utworzyć',
  'sheets.make-named': 'Utworzyć: {sheet}',
  'sheets.busy': 'Tworzenie pisma ...',
  'sheets.others': 'Pisma, dla których w rejestrze nic nie ma',
  'sheets.open': 'Otworzyć',
  'sheets.open-named': 'Otworzyć: {sheet}',
  'sheets.save': 'Zapisać',
  'sheets.save-named': 'Zapisać: {sheet}',
  'sheets.message': 'Jako wiadomość',
  'sheets.copy': 'Skopiować wiadomość',
  'sheets.copied': 'Skopiowano. Wstawić do wiadomości dla klienta.',
  'sheets.not-copied': 'Ta przeglądarka nie pozwala tego skopiować. Zaznaczyć słowa i skopiować je ręcznie.',
  'sheets.register': 'Wiersz do ewidencji',
  'sheets.register-about':
    'Co ewidencja prac przy kluczach może zawierać z tego zlecenia. Jakich pól wymaga dany system, określa pakiet wybrany przez biuro.',
  'sheets.register-csv': 'Jako tabela (CSV)',
  'sheets.register-json': 'Jako dane (JSON)',
}
