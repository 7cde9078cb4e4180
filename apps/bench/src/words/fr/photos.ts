import type { SameCodes } from '@shearline/jobfile'
import type { photoWords as english } from '../en/photos.ts'

/** French: Photos: taking, what they show, seeing them whole, deletion. */
export const photoWords: SameCodes<typeof english> = {
  'photo.title': 'Photos',
  'photo.identity.title': 'Image d’un document',
  'photo.take': 'Prendre une photo',
  'photo.take.of': 'Prendre une photo : {what}',
  'photo.take.key': 'Photo',
  'photo.shutter': 'Déclencher',
  'photo.again': 'La reprendre',
  'photo.keep': 'Garder cette photo',
  'photo.preview': 'La photo telle qu’elle sera gardée',
  'photo.kept-how':
    'Elle reste dans l’établi, chiffrée, et hors de la galerie. Le lieu, l’heure et l’appareil qu’un fichier peut porter sont laissés de côté.',
  'photo.what': 'Que montre-t-elle ?',
  'photo.which-key': 'Quelle clé ?',
  'photo.shows.key': 'une clé',
  'photo.shows.key-named': 'clé {key}',
  'photo.shows.vin': 'le VIN',
  'photo.shows.odometer': 'le compteur kilométrique',
  'photo.shows.lamps': 'des voyants allumés',
  'photo.shows.damage': 'un dommage',
  'photo.shows.equipment': 'du matériel',
  'photo.shows.identity': 'une pièce d’identité',
  'photo.shows.other': 'une pièce, ou autre chose',
  'photo.shows.with': '{what} : {words}',
  'photo.words': 'En quelques mots',
  'photo.words.hint': 'Quelle pièce, quel côté, ce qu’il faut y voir.',
  'photo.identity':
    'Ne garder l’image d’un document que si les règles suivies en demandent une. Elle a sa propre date de suppression.',
  'photo.unreadable':
    '« {name} » ne peut pas être lu ici comme image. Choisir un fichier JPEG, PNG ou WebP, ou la prendre avec la caméra.',
  'photo.file': 'photo',
  'photo.open': 'Montrer la photo : {what}',
  'photo.close': 'Fermer',
  'photo.about': 'Versée au registre {when} par {by}, {size}.',
  'photo.reading': 'Ouverture …',
  'photo.missing': 'Pas ici',
  'photo.missing.no-connection':
    'Cette photo n’est pas sur cet appareil, et le serveur est injoignable pour le moment.',
  'photo.missing.not-there':
    'Cette photo n’est pas encore sur le serveur. Elle viendra quand l’appareil qui l’a prise l’aura envoyée.',
  'photo.missing.damaged':
    'Les octets de cette photo ne correspondent pas au registre ; ils ne sont donc pas montrés.',
  'photo.deleted':
    'Supprimée {when} parce que son délai était écoulé. Le registre prouve toujours qu’elle était là.',
  'photo.deleted.short': 'Supprimée',
}
