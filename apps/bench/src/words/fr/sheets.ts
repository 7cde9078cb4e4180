import type { SameCodes } from '@shearline/jobfile'
import type { sheetWords as english } from '../en/sheets.ts'

/** French: Sheets beside the handover document, and the row of a register. */
export const sheetWords: SameCodes<typeof english> = {
  'sheets.title': 'Feuilles',
  'sheets.show': 'Consentements, avis et attestations à remettre',
  'sheets.looking': 'Recherche de ce qui est au registre ...',
  'sheets.about': 'Chacune est faite sur cet appareil d’après ce qui est au registre, sans connexion.',
  'sheets.language': 'Langue de qui la lit',
  'sheets.make': 'Créer',
  'sheets.make-named': 'Créer : {sheet}',
  'sheets.busy': 'Création de la feuille ...',
  'sheets.others': 'Feuilles pour lesquelles le registre ne contient rien',
  'sheets.open': 'Ouvrir',
  'sheets.open-named': 'Ouvrir : {sheet}',
  'sheets.save': 'Enregistrer',
  'sheets.save-named': 'Enregistrer : {sheet}',
  'sheets.message': 'Comme message',
  'sheets.copy': 'Copier le message',
  'sheets.copied': 'Copié. Le mettre dans un message à la personne cliente.',
  'sheets.not-copied':
    'Ce navigateur ne permet pas de copier. Sélectionner les mots et les copier à la main.',
  'sheets.register': 'Ligne pour un registre',
  'sheets.register-about':
    'Ce qu’un registre des travaux sur clés peut contenir de cette intervention. Les champs que veut un dispositif viennent d’un jeu de règles que le bureau choisit.',
  'sheets.register-csv': 'En tableau (CSV)',
  'sheets.register-json': 'En données (JSON)',
}
