import type { SameCodes } from '@shearline/jobfile'
import type { signingWords as english } from '../en/signing.ts'

/** French: Signing by hand or by name: what is signed, by whom, and what became of it. */
export const signingWords: SameCodes<typeof english> = {
  'sign.consent': 'Le faire signer par la personne cliente',
  'sign.handover': 'Faire signer la remise par la personne cliente',
  'sign.again': 'Reprendre la signature',
  'sign.again.reason': 'Signé de nouveau.',
  'sign.title.consent': 'Consentement',
  'sign.title.handover': 'Remise',
  'sign.received': 'Reçu par la personne cliente',
  'sign.received.why': 'Signer avant que le document soit scellé : la signature est alors sous le sceau.',
  'sign.shown': 'Ce qui est signé',
  'sign.signer': 'Qui signe',
  'sign.signer.hint': 'Nom complet de la personne qui signe maintenant.',
  'sign.how': 'Comment',
  'sign.how.drawn': 'À la main',
  'sign.how.typed': 'En saisissant le nom',
  'sign.pad.empty': 'Espace pour signer. Rien n’est encore tracé. Le nom peut être saisi à la place.',
  'sign.pad.drawn': 'Espace pour signer. Une signature est tracée.',
  'sign.clear': 'L’effacer',
  'sign.not-drawn': 'Rien n’est encore signé : tracer la signature ci-dessus, ou choisir de saisir le nom.',
  'sign.do': 'J’ai lu ceci et je le signe',
  'sign.do.typed': 'J’ai lu ceci et je le signe de mon nom',
  'sign.file': 'signature',
  'sign.by':
    '{how, select, typed {{signer} a signé en saisissant le nom, {when}.} other {{signer} a signé à la main, {when}.}}',
  'sign.picture': 'Signature de {signer}',
  'sign.words': 'Le texte qui a été signé',
  'sign.words.same': 'Le texte signé est celui du registre actuel.',
  'sign.words.older': 'Le registre a changé depuis : ce n’est pas le texte qui a été signé.',
  'sign.words.broken':
    'Le texte gardé ne correspond pas à l’empreinte du registre : ne pas se fier à cette signature.',
  'sign.deleted': 'Le tracé a été supprimé {when} parce que son délai était écoulé.',
  'sign.reading': 'Ouverture de la signature …',
  'sign.no-connection': 'Le tracé n’est pas sur cet appareil, et le serveur est injoignable pour le moment.',
  'sign.not-there':
    'Le tracé n’est pas encore sur le serveur. Il viendra quand l’appareil qui l’a pris l’aura envoyé.',
  'sign.damaged': 'Les octets gardés ne correspondent pas au registre ; ils ne sont donc pas montrés.',
}
