import type { SameCodes } from '../catalogues.ts'
import type { byHandWords as english } from '../en/by-hand.ts'

/** French: How a stranger checks a document without us. */
export const byHandWords: SameCodes<typeof english> = {
  'doc.by-hand': 'Avec openssl seul',
  'doc.by-hand-how':
    'Enregistrez ce fichier sous le nom document.pdf dans un dossier vide, ouvrez-y un terminal (sous Linux, ou sous macOS avec les GNU core utilities) et saisissez ces lignes. Elles demandent openssl 3 et aucun réseau.',
  'doc.by-hand-commands': 'Commandes',
  'doc.by-hand-answer':
    'Il ne tient que si « It holds » s’affiche ; comparez ensuite l’empreinte affichée en dessous à celle que l’entreprise vous a donnée. Toute autre réponse veut dire que le fichier a été modifié ou n’est pas entier.',
  'doc.by-hand-limits':
    'Cela prouve le sceau et chaque octet du fichier. Que les pages disent ce que dit le registre est montré par « shearline verify » et par la page de vérification, un fichier HTML que l’entreprise peut vous donner.',
}
