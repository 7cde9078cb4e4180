import type { SameCodes } from '@shearline/jobfile'
import type { captureWords as english } from '../en/capture.ts'

/** French: Taking facts in: camera, codes, letters of a picture, speech, and taking back what was just recorded. */
export const captureWords: SameCodes<typeof english> = {
  'camera.picture': 'L’image de la caméra',
  'camera.lamp': 'Lampe',
  'camera.starting': 'En attente de la caméra …',
  'camera.refused':
    'La caméra ne peut pas être utilisée. L’autoriser pour cette page dans les réglages du navigateur, ou choisir une photo.',
  'camera.none': 'Cet appareil n’a pas de caméra. Choisir plutôt une photo.',
  'camera.busy':
    'La caméra ne répond pas : un autre programme l’utilise peut-être. Le fermer, ou choisir une photo.',
  'camera.insecure':
    'Le navigateur ne donne pas de caméra à une page sans connexion sécurisée. Choisir plutôt une photo.',

  'scan.photo': 'Choisir une photo',
  'scan.photo.looking': 'Recherche dans la photo …',
  'scan.photo.none':
    'Aucun code n’a été trouvé dans cette photo. Tenir le code à plat, de près et bien éclairé, et réessayer.',
  'scan.no-reader':
    'Le lecteur de codes n’a pas pu démarrer. Recharger cette page, ou saisir ce que l’on voit.',

  'vin.scan': 'Le lire avec la caméra',
  'vin.scan.title': 'Lire le VIN avec la caméra',
  'vin.scan.how': 'Tenir dans le cadre le code de la plaque, du montant de porte ou du document.',
  'vin.scan.found':
    'Lu sur {format, select, qr {un code QR} matrix {un code Data Matrix} other {une étiquette Code 39}}. Le comparer au véhicule avant de le prendre.',
  'vin.scan.other': 'Le code de l’image dit « {text} ». Ce n’est pas un VIN ; la recherche continue.',
  'vin.scan.again': 'Chercher encore',
  'vin.take': 'Prendre ce VIN',
  'vin.letters.camera': 'Pas de code : utiliser les lettres',
  'vin.letters.picture': 'L’image de la plaque',
  'vin.letters.offer':
    'Il n’y a pas de code dans cette image. Ses lettres peuvent être lues à la place, sur cet appareil. Les lettres lues sur une image sont souvent fausses.',
  'vin.letters.read': 'Lire les lettres',
  'vin.letters.reading': 'Lecture des lettres …',
  'vin.letters.stop': 'Arrêter la lecture',
  'vin.letters.none':
    'Aucune suite de 17 lettres et chiffres n’a été trouvée. Prendre l’image bien en face, de près et sans reflet, ou la saisir.',
  'vin.letters.failed': 'Les lettres n’ont pas pu être lues : {why}',
  'vin.letters.mark': 'Lu sur une image : vérifier chaque signe.',
  'vin.letters.doubtful':
    '{count, plural, =0 {Le lecteur se dit sûr des 17 ; il peut quand même se tromper.} one {Le lecteur n’est pas sûr de # signe ; il est encadré de tirets.} other {Le lecteur n’est pas sûr de # signes ; ils sont encadrés de tirets.}}',
  'vin.letters.signs': 'Les 17 signes : {vin}',
  'vin.letters.next': 'Montrer une autre lecture',
  'vin.letters.compared': 'J’ai comparé chacun des 17 signes à la plaque',

  'speech.start': 'Le dire',
  'speech.start-named': 'Le dire : {label}',
  'speech.stop': 'Ne plus écouter',
  'speech.stop-named': 'Ne plus écouter : {label}',
  'speech.hearing': 'Écoute …',
  'speech.agree.title': 'Vos paroles quitteraient cet appareil',
  'speech.agree':
    'Ce navigateur ne sait pas transformer la parole en mots sur l’appareil. Il enverrait ce que vous dites à son éditeur, qui peut le garder. Ne dire aucun nom, adresse ou numéro de la clientèle.',
  'speech.agree.no': 'Je vais le saisir',
  'speech.agree.yes': 'Envoyer ma parole cette fois',
  'speech.failed': 'Rien n’a été compris. Parler de nouveau, ou saisir.',
  'speech.refused':
    'Le micro ne peut pas être utilisé. L’autoriser pour cette page dans les réglages du navigateur, ou saisir.',

  'undo.done': 'Consigné : {what}',
  'undo.do': 'Reprendre',
  'undo.close': 'Fermer cet avis',
  'undo.reason': 'Repris aussitôt après avoir été consigné.',
}
