import type { SameCodes } from '@shearline/jobfile'
import type { reportWords as english } from '../en/reports.ts'

/** Reports kept beside what was understood, and what was confirmed before clearing. */
export const reportWords: SameCodes<typeof english> = {
  'report.kept-beside':
    'Raport zostaje zachowany obok tej listy jako tekst. Najpierw zamazuje się w nim kody otwierające, numery telefonów i adresy e-mail.',
  'report.kept.title': 'Raporty w rejestrze',
  'report.kept.one': 'Skan {phase}, {day} {time}: {name}',
  'report.kept.pasted': 'wklejony tekst',
  'report.kept.loading': 'Pobieranie raportu.',
  'report.kept.gone':
    'Raportu tu nie ma: usunięto go, bo minął jego czas, albo to urządzenie nie ma połączenia.',
  'clear.airbag':
    'Kody poduszek powietrznych sprzed prac zostają, podobnie jak wszystko inne w ich sterowniku. Nikt nie kasuje ich po to, by zgasła kontrolka.',
  'fact.clear-acknowledged.scan-saved': 'Potwierdzono: najpierw każdy kod jest w rejestrze.',
  'fact.clear-acknowledged.airbag': 'Potwierdzono: kody poduszek powietrznych sprzed prac zostają.',
  'fact.clear-acknowledged.emissions': 'Potwierdzono: gotowość emisyjna zaczyna się od nowa.',
  'fact.clear-acknowledged.permanent': 'Potwierdzono: kody trwałe zostają, aż skasuje je auto.',
}
