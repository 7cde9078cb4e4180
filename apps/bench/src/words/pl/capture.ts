import type { SameCodes } from '@shearline/jobfile'
import type { captureWords as english } from '../en/capture.ts'

/** Taking facts in: camera, codes, letters of a picture, speech, and taking back what was just recorded. */
export const captureWords: SameCodes<typeof english> = {
  'camera.picture': 'Obraz kamery',
  'camera.lamp': 'Latarka',
  'camera.starting': 'Oczekiwanie na kamerę …',
  'camera.refused':
    'Nie wolno użyć kamery. Zezwolić na nią dla tej strony w ustawieniach przeglądarki albo wybrać zdjęcie.',
  'camera.none': 'To urządzenie nie ma kamery. Wybrać zamiast tego zdjęcie.',
  'camera.busy': 'Kamera nie odpowiada: może jej używać inny program. Zamknąć go albo wybrać zdjęcie.',
  'camera.insecure':
    'Przeglądarka nie daje kamery stronie bez bezpiecznego połączenia. Wybrać zamiast tego zdjęcie.',

  'scan.photo': 'Wybrać zdjęcie',
  'scan.photo.looking': 'Przeglądanie zdjęcia …',
  'scan.photo.none':
    'Na tym zdjęciu nie znaleziono kodu. Trzymać kod płasko, blisko i w dobrym świetle, i spróbować ponownie.',
  'scan.no-reader':
    'Nie udało się uruchomić czytnika kodów. Wczytać tę stronę ponownie albo wpisać, co widać.',

  'vin.scan': 'Odczytać kamerą',
  'vin.scan.title': 'Odczytać VIN kamerą',
  'vin.scan.how': 'Ustawić w ramce kod z tabliczki, słupka drzwi lub dokumentu.',
  'vin.scan.found':
    'Odczytano z: {format, select, qr {kod QR} matrix {kod Data Matrix} other {etykieta Code 39}}. Porównać z autem przed przyjęciem.',
  'vin.scan.other': 'Kod na obrazie brzmi „{text}”. To nie VIN; szukanie trwa.',
  'vin.scan.again': 'Spojrzeć ponownie',
  'vin.take': 'Przyjąć ten VIN',
  'vin.letters.camera': 'Nie ma kodu: użyć liter',
  'vin.letters.picture': 'Obraz tabliczki',
  'vin.letters.offer':
    'Na tym obrazie nie ma kodu. Zamiast tego można odczytać jego litery, na tym urządzeniu. Litery odczytane z obrazu są często błędne.',
  'vin.letters.read': 'Odczytać litery',
  'vin.letters.reading': 'Odczyt liter …',
  'vin.letters.stop': 'Przerwać odczyt',
  'vin.letters.none':
    'Nie znaleziono rzędu 17 liter i cyfr. Zrobić zdjęcie na wprost, z bliska i bez odblasku, albo wpisać numer.',
  'vin.letters.failed': 'Nie udało się odczytać liter: {why}',
  'vin.letters.mark': 'Odczytano z obrazu: sprawdzić każdy znak.',
  'vin.letters.doubtful':
    '{count, plural, =0 {Czytnik podaje, że jest pewien wszystkich 17; mimo to może się mylić.} one {Czytnik nie jest pewien # znaku; ma on przerywaną ramkę.} few {Czytnik nie jest pewien # znaków; mają one przerywaną ramkę.} many {Czytnik nie jest pewien # znaków; mają one przerywaną ramkę.} other {Czytnik nie jest pewien # znaku; mają one przerywaną ramkę.}}',
  'vin.letters.signs': '17 znaków: {vin}',
  'vin.letters.next': 'Pokazać inny odczyt',
  'vin.letters.compared': 'Każdy z 17 znaków został porównany z tabliczką',

  'speech.start': 'Powiedzieć',
  'speech.start-named': 'Powiedzieć: {label}',
  'speech.stop': 'Przestać słuchać',
  'speech.stop-named': 'Przestać słuchać: {label}',
  'speech.hearing': 'Słucham …',
  'speech.agree.title': 'Słowa opuściłyby to urządzenie',
  'speech.agree':
    'Ta przeglądarka nie potrafi zamieniać mowy na słowa na urządzeniu. Wysłałaby wypowiedź do swojego producenta, który może ją zachować. Nie wymawiać nazwisk, adresów ani numerów klientów.',
  'speech.agree.no': 'Wolę wpisać',
  'speech.agree.yes': 'Tym razem wysłać moją mowę',
  'speech.failed': 'Niczego nie zrozumiano. Powiedzieć ponownie albo wpisać.',
  'speech.refused':
    'Nie wolno użyć mikrofonu. Zezwolić na niego dla tej strony w ustawieniach przeglądarki albo wpisać.',

  'undo.done': 'Zapisano: {what}',
  'undo.do': 'Cofnąć',
  'undo.close': 'Zamknąć to powiadomienie',
  'undo.reason': 'Cofnięto tuż po zapisaniu.',
}
