import type { SameCodes } from '../catalogues.ts'
import type { byHandWords as english } from '../en/by-hand.ts'

/** How a stranger checks a document without us. */
export const byHandWords: SameCodes<typeof english> = {
  'doc.by-hand': 'Samym openssl',
  'doc.by-hand-how':
    'Proszę zapisać ten plik jako document.pdf w pustym folderze, otworzyć tam powłokę (w systemie Linux albo w macOS z podstawowymi narzędziami GNU) i wprowadzić te wiersze. Potrzebują openssl 3 i żadnej sieci.',
  'doc.by-hand-commands': 'Polecenia',
  'doc.by-hand-answer':
    'Zgadza się tylko wtedy, gdy wyświetli się „It holds” (zgadza się); wtedy proszę porównać odcisk pod spodem z odciskiem otrzymanym od firmy. Wszystko inne oznacza, że plik zmieniono lub nie jest kompletny.',
  'doc.by-hand-limits':
    'To dowodzi pieczęci i każdego bajtu pliku. Że strony podają to, co podaje rejestr, pokazuje „shearline verify” oraz strona sprawdzająca, plik HTML, który może dać firma.',
}
