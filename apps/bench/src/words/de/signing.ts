import type { SameCodes } from '@shearline/jobfile'
import type { signingWords as english } from '../en/signing.ts'

/** German: Signing by hand or by name: what is signed, by whom, and what became of it. */
export const signingWords: SameCodes<typeof english> = {
  'sign.consent': 'Von der Kundschaft unterschreiben lassen',
  'sign.handover': 'Die Übergabe von der Kundschaft unterschreiben lassen',
  'sign.again': 'Unterschrift neu einholen',
  'sign.again.reason': 'Erneut unterschrieben.',
  'sign.title.consent': 'Einwilligung',
  'sign.title.handover': 'Übergabe',
  'sign.received': 'Von der Kundschaft erhalten',
  'sign.received.why':
    'Unterschreiben, bevor das Dokument versiegelt wird: Dann steht die Unterschrift unter dem Siegel.',
  'sign.shown': 'Was unterschrieben wird',
  'sign.signer': 'Wer unterschreibt',
  'sign.signer.hint': 'Voller Name der Person, die jetzt unterschreibt.',
  'sign.how': 'Wie',
  'sign.how.drawn': 'Von Hand',
  'sign.how.typed': 'Durch Eintippen des Namens',
  'sign.pad.empty':
    'Feld zum Unterschreiben. Noch ist nichts gezeichnet. Stattdessen kann der Name eingetippt werden.',
  'sign.pad.drawn': 'Feld zum Unterschreiben. Eine Unterschrift ist gezeichnet.',
  'sign.clear': 'Wegwischen',
  'sign.not-drawn':
    'Noch ist nichts unterschrieben: oben die Unterschrift zeichnen oder das Eintippen des Namens wählen.',
  'sign.do': 'Ich habe das gelesen und unterschreibe es',
  'sign.do.typed': 'Ich habe das gelesen und unterschreibe es mit meinem Namen',
  'sign.file': 'Unterschrift',
  'sign.by':
    '{how, select, typed {{signer} hat durch Eintippen des Namens unterschrieben, {when}.} other {{signer} hat von Hand unterschrieben, {when}.}}',
  'sign.picture': 'Unterschrift von {signer}',
  'sign.words': 'Der unterschriebene Wortlaut',
  'sign.words.same': 'Der unterschriebene Wortlaut ist der des jetzigen Protokolls.',
  'sign.words.older': 'Das Protokoll hat sich seither geändert: Das ist nicht der unterschriebene Wortlaut.',
  'sign.words.broken':
    'Der aufbewahrte Wortlaut passt nicht zum Hash im Protokoll: Auf diese Unterschrift ist kein Verlass.',
  'sign.deleted': 'Die Zeichnung wurde gelöscht {when}, weil ihre Frist um war.',
  'sign.reading': 'Die Unterschrift wird geöffnet …',
  'sign.no-connection':
    'Die Zeichnung ist nicht auf diesem Gerät, und der Server ist jetzt nicht erreichbar.',
  'sign.not-there':
    'Die Zeichnung ist noch nicht auf dem Server. Sie kommt, wenn das Gerät, das sie aufgenommen hat, sie gesendet hat.',
  'sign.damaged': 'Die aufbewahrten Bytes passen nicht zum Protokoll, deshalb werden sie nicht gezeigt.',
}
