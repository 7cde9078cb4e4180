import type { SameCodes } from '@shearline/jobfile'
import type { recordingWords as english } from '../en/recording.ts'
import { recordingServiceWords } from './recording-services.ts'
import { recordingViewWords } from './recording-view.ts'

/** French: Recordings and faults. */
export const recordingWords: SameCodes<typeof english> = {
  ...recordingViewWords,
  ...recordingServiceWords,

  'recording.pick': 'Importer un enregistrement',
  'recording.pick.hint': 'Ou le déposer n’importe où sur cette page. Il est lu sur cet appareil.',
  'recording.drop': 'Déposer l’enregistrement',
  'recording.title': 'Enregistrement {name}',
  'recording.reading': 'Lecture de l’enregistrement',
  'recording.looking': 'Recherche de la nature de cet enregistrement.',
  'recording.read-so-far': '{read} lus sur {whole}',
  'recording.frames-so-far': '{count, plural, =0 {pas encore de trame} one {# trame} other {# trames}}',
  'recording.messages-so-far':
    '{count, plural, =0 {pas encore de message} one {# message} other {# messages}}',
  'recording.read-percent': '{percent} pour cent lus',
  'recording.cancel.hint': 'Rien n’est gardé avant que vous le disiez.',
  'recording.failed': 'La lecture s’est arrêtée : {problem} Rien n’a été consigné.',
  'recording.unknown':
    'Ce fichier ne peut pas être lu comme un enregistrement : {reason}. Rien n’a été consigné.',
  'recording.format': 'Format : {format}, parce que {reason}.',
  'recording.size': 'Taille',
  'recording.frames': 'Trames',
  'recording.messages': 'Messages',
  'recording.messages.of':
    '{count, number}{incomplete, plural, =0 {} one {, # autre incomplet} other {, # autres incomplets}}',
  'recording.units': 'Calculateurs qui ont répondu',
  'recording.faults': 'Défauts signalés',
  'recording.faults.of':
    '{units, plural, =0 {aucune liste de défauts dedans} one {{faults} par # calculateur} other {{faults} par # calculateurs}}',
  'recording.vin': 'VIN entendu :',
  'recording.vin.same': 'le même qu’au registre.',
  'recording.vin.differs': 'Pas celui du registre ({vin}) : consigné, il y figurera en contradiction.',
  'recording.not-vin':
    'Le calculateur {unit} a répondu « {text} » pour un VIN. Sa forme est incorrecte et il n’est pas consigné comme tel.',
  'recording.clean': 'Chaque ligne a pu être lue.',
  'recording.findings': '{count, plural, one {# point à regarder} other {# points à regarder}}',
  'recording.left-out':
    '{count, plural, one {# endroit n’a pas pu être lu et est laissé de côté.} other {# endroits n’ont pas pu être lus et sont laissés de côté.}}',
  'recording.left-out.first': 'Le premier à {where} : {what}.',
  'recording.more-findings': '{count, plural, one {et # de plus} other {et # de plus}}',
  'recording.again': 'Ce même enregistrement est déjà au registre de cette intervention.',
  'recording.which': 'De quel scan s’agit-il ?',
  'recording.which.hint': 'À vous de décider : rien dans le fichier ne dit si le travail était fait.',
  'recording.no-scan':
    'Il ne contient aucune liste de défauts ; il est donc gardé comme simple enregistrement.',
  'recording.which.before': 'Avant le travail',
  'recording.which.after': 'Après le travail',
  'recording.which.cleared': 'Après l’effacement',
  'recording.which.cycled': 'Après un cycle de contact',
  'recording.which.keep': 'Seulement le garder',
  'recording.kept-as-is':
    'Ce qui est gardé : ses messages, le contenu des services de sécurité étant masqué, et l’empreinte du fichier. Le fichier lui-même reste où il est.',
  'recording.sealed': 'Le fichier lui-même',
  'recording.sealed.do': 'Le garder aussi, scellé',
  'recording.sealed.hint': 'Pourront alors l’ouvrir : {names}. Tout ce qui est passé sur le fil s’y trouve.',
  'recording.sealed.nobody': 'Pour garder aussi le fichier lui-même, désigner une clé qui peut l’ouvrir.',
  'recording.record': 'Consigner',
  'recording.leave': 'Laisser',
  'strip.what':
    '{length}, {messages, plural, one {# message} other {# messages}}, {units, plural, one {# calculateur} other {# calculateurs}}',
  'strip.events':
    '{count, plural, =0 {Aucun événement} one {# événement} other {# événements}} le long de l’enregistrement',
  'event.session-opened': '{count, plural, one {# session ouverte} other {# sessions ouvertes}}',
  'event.reset': '{count, plural, one {# redémarrage} other {# redémarrages}}',
  'event.muted':
    '{count, plural, one {# calculateur réduit au silence} other {# calculateurs réduits au silence}}',
  'event.faults-cleared': '{count, plural, one {# effacement} other {# effacements}}',
  'event.refused': '{count, plural, one {# refus} other {# refus}}',
  'event.supply-low': '{count, plural, one {# tension basse} other {# tensions basses}}',
}
