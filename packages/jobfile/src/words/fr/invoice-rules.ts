import type { SameCodes } from '../catalogues.ts'
import type { invoiceRuleWords as english } from '../en/invoice-rules.ts'

/** French: What an invoice breaks, and where. */
export const invoiceRuleWords: SameCodes<typeof english> = {
  'invoice-rule.currency-not-hundredths':
    '{currency} ne se compte pas en centièmes, comme la norme le demande.',
  'invoice-rule.due-not-said':
    'Il y a quelque chose à payer, et ni un jour ni des conditions ne disent quand.',
  'invoice-rule.account-missing': 'Le paiement se fait par virement, et aucun compte n’est indiqué.',
  'invoice-rule.outside-beside-others':
    'Des lignes hors du champ de la taxe ne peuvent figurer à côté d’autres sur une même facture.',
  'invoice-rule.seller-unknown': 'Le vendeur n’a ni numéro de TVA ni numéro dans un registre.',
  'invoice-rule.vat-country-unknown': '{country} n’est pas le code d’un pays.',
  'invoice-rule.country-unknown': '{country} n’est pas le code d’un pays (ISO 3166-1).',
  'invoice-rule.standard-rate-zero': 'Le taux normal est un taux au-dessus de zéro.',
  'invoice-rule.kind-without-rate': 'Ce genre de taxe n’a pas de taux.',
  'invoice-rule.outside-with-vat': 'Hors du champ de la taxe, aucun numéro de TVA ne peut être nommé.',
  'invoice-rule.seller-without-tax-number': 'Le vendeur n’a ni numéro de TVA ni numéro fiscal.',
  'invoice-rule.buyer-vat-missing': 'Quand l’acheteur doit la taxe, son numéro de TVA doit être nommé.',
  'invoice-rule.reason-missing': 'Il n’est pas dit pourquoi aucune taxe n’est demandée.',
  'invoice-do.complete': 'Compléter et réessayer.',
  'invoice-do.currency': 'Facturer dans une monnaie à deux décimales, ou écrire cette facture autrement.',
  'invoice-do.seller': 'Donner le numéro de TVA, ou celui sous lequel la firme est enregistrée.',
  'invoice-do.outside': 'Retirer les numéros de TVA, ou choisir un autre genre de taxe.',
  'invoice-part.seller': 'vendeur',
  'invoice-part.buyer': 'acheteur',
  'invoice-part.due': 'jour du paiement',
  'invoice-part.account': 'compte',
  'invoice-part.currency': 'monnaie',
  'invoice-part.lines': 'lignes',
  'invoice-part.reasons': 'motif sans taxe',
  'invoice-part.line': 'ligne {number}',
}
