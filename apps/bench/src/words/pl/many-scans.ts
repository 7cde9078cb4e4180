import type { SameCodes } from '@shearline/jobfile'
import type { manyScansWords as english } from '../en/many-scans.ts'

/** Many scans in one picture, and a report that was shared to the bench. */
export const manyScansWords: SameCodes<typeof english> = {
  'faults.columns': 'Kolumny',
  'faults.columns.moments': '{count, plural, one {# chwila} few {# chwile} many {# chwil} other {# chwili}}',
  'faults.columns.scans':
    '{count, plural, one {skan} few {każdy z # skanów} many {każdy z # skanów} other {każdy z # skanu}}',
  'faults.scan-head': '{phase}, {day} {time}',
  'faults.filter.changed': 'Zmienione ({count, number})',
  'report.was-kept': 'Co zachowano',

  'title.shared': 'Udostępniony raport · Shearline',
  'shared.title': 'Udostępniono raport',
  'shared.title.none': 'Brak udostępnionego raportu',
  'shared.which':
    'Do którego zlecenia należy? Nic nie zostanie zachowane, dopóki nie obejrzy się, co zrozumiano.',
  'shared.none':
    'Nic tu nie czeka. Raport udostępniony przez inną aplikację czeka tutaj, aż powiesz, do którego zlecenia należy.',
  'shared.text': 'udostępniony tekst',
  'shared.discard': 'Odrzucić {name}',
  'shared.no-job':
    'Nie ma jeszcze żadnego zlecenia. Otworzyć je, potem udostępnić ponownie lub wrócić na tę stronę.',
  'shared.waiting': 'Do tego zlecenia udostępniono raport: {name}.',
  'shared.read': 'Odczytać teraz',
  'shared.failed':
    'Nic nie udało się przejąć: to, co udostępniono, jest puste, większe niż {most}, albo na tym urządzeniu brak miejsca. Udostępnij mniejszy plik albo otwórz go w zleceniu.',
}
