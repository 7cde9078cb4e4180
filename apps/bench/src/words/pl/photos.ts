import type { SameCodes } from '@shearline/jobfile'
import type { photoWords as english } from '../en/photos.ts'

/** Photos: taking, what they show, seeing them whole, deletion. */
export const photoWords: SameCodes<typeof english> = {
  'photo.title': 'Zdjęcia',
  'photo.identity.title': 'Obraz dokumentu',
  'photo.take': 'Zrobić zdjęcie',
  'photo.take.of': 'Zdjęcie: {what}',
  'photo.take.key': 'Zdjęcie',
  'photo.shutter': 'Wykonać zdjęcie',
  'photo.again': 'Zrobić je ponownie',
  'photo.keep': 'Zachować to zdjęcie',
  'photo.preview': 'Zdjęcie w postaci, w jakiej zostanie zachowane',
  'photo.kept-how':
    'Zostaje na stanowisku, zaszyfrowane i poza galerią. Miejsce, czas i aparat, które może nieść plik, zostają pominięte.',
  'photo.what': 'Co przedstawia?',
  'photo.which-key': 'Który klucz?',
  'photo.shows.key': 'klucz',
  'photo.shows.key-named': 'klucz {key}',
  'photo.shows.vin': 'numer VIN',
  'photo.shows.odometer': 'licznik przebiegu',
  'photo.shows.lamps': 'zapalone kontrolki',
  'photo.shows.damage': 'uszkodzenia',
  'photo.shows.equipment': 'sprzęt',
  'photo.shows.identity': 'dokument tożsamości',
  'photo.shows.other': 'część lub coś innego',
  'photo.shows.with': '{what}: {words}',
  'photo.words': 'W kilku słowach',
  'photo.words.hint': 'Która część, która strona, co ma być widać.',
  'photo.identity':
    'Obraz dokumentu zachowywać tylko tam, gdzie żądają tego obowiązujące reguły. Ma on własną datę usunięcia.',
  'photo.unreadable':
    'Nie można tu odczytać „{name}” jako obrazu. Wybrać plik JPEG, PNG lub WebP albo zrobić zdjęcie kamerą.',
  'photo.file': 'zdjęcie',
  'photo.open': 'Pokazać zdjęcie: {what}',
  'photo.close': 'Zamknąć',
  'photo.about': 'Dołączono do rejestru {when}, {by}, {size}.',
  'photo.reading': 'Otwieranie …',
  'photo.missing': 'Nie ma tutaj',
  'photo.missing.no-connection': 'Tego zdjęcia nie ma na tym urządzeniu, a serwer jest teraz nieosiągalny.',
  'photo.missing.not-there':
    'Tego zdjęcia nie ma jeszcze na serwerze. Pojawi się, gdy wyśle je urządzenie, które je zrobiło.',
  'photo.missing.damaged': 'Bajty tego zdjęcia nie pasują do rejestru, więc się ich nie pokazuje.',
  'photo.deleted': 'Usunięto {when}, bo minął jego czas. Rejestr nadal dowodzi, że tu było.',
  'photo.deleted.short': 'Usunięto',
}
