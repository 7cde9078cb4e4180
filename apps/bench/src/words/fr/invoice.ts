import type { SameCodes } from '@shearline/jobfile'
import type { invoiceWords as english } from '../en/invoice.ts'

/** French: The electronic invoice that goes into the sealed document. */
export const invoiceWords: SameCodes<typeof english> = {
  'fact.invoice-issued': 'Facture {number} de {amount}',
  'invoice.title': 'Facture dans le document',
  'invoice.none':
    'Aucune. Le document peut porter une facture électronique (EN 16931) si vous en voulez une.',
  'invoice.add': 'Ajouter une facture',
  'invoice.again': 'Émettre une autre facture',
  'invoice.needs-price': 'Convenir d’abord du prix : les lignes de la facture sont celles du prix.',
  'invoice.is': 'Numéro {number}, {issued}, à {buyer}',
  'invoice.net': 'Hors taxe',
  'invoice.tax': 'Taxe',
  'invoice.due': 'À payer',
  'invoice.number': 'Numéro de la facture',
  'invoice.issued': 'Jour d’émission (année-mois-jour)',
  'invoice.due-day': 'À payer au plus tard le (année-mois-jour)',
  'invoice.terms': 'Conditions de paiement',
  'invoice.terms.usual': 'Payé sur place|Sous 14 jours',
  'invoice.seller': 'Votre entreprise (gardée sur cet appareil)',
  'invoice.buyer': 'La personne cliente',
  'invoice.name': 'Nom',
  'invoice.street': 'Rue et numéro',
  'invoice.post-code': 'Code postal',
  'invoice.city': 'Ville',
  'invoice.country': 'Pays, deux lettres',
  'invoice.vat': 'Numéro de TVA, avec les deux lettres du pays',
  'invoice.tax-number': 'Numéro fiscal local',
  'invoice.register': 'Numéro au registre des entreprises',
  'invoice.category': 'Genre de taxe',
  'invoice.category.S': 'Taux habituel',
  'invoice.category.Z': 'Taux zéro',
  'invoice.category.E': 'Exonéré',
  'invoice.category.AE': 'La personne cliente doit la taxe',
  'invoice.category.O': 'Hors du champ de la taxe',
  'invoice.rate': 'Taux en pour cent',
  'invoice.reason': 'Pourquoi aucune taxe n’est facturée',
  'invoice.includes': 'Le prix convenu',
  'invoice.includes.yes': 'comprend la taxe',
  'invoice.includes.no': 'est hors taxe',
  'invoice.broken':
    '{count, plural, one {Une règle} other {# règles}} de la norme {count, plural, one {n’est pas respectée} other {ne sont pas respectées}} :',
  'invoice.rule': '{rule}, {where} : {what}',
  'invoice.law':
    'Quelle taxe s’applique, ce qu’une facture doit dire et combien de temps elle est conservée relève de votre droit local : demandez à qui tient vos comptes.',
}
