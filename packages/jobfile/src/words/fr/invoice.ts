import type { SameCodes } from '../catalogues.ts'
import type { invoiceWords as english } from '../en/invoice.ts'

/** French: The invoice in the document. */
export const invoiceWords: SameCodes<typeof english> = {
  'doc.invoice': 'Facture {number}',
  'doc.invoice-issued': 'Émise',
  'doc.invoice-delivered': 'Travail fait',
  'doc.invoice-seller': 'De',
  'doc.invoice-buyer': 'À',
  'doc.invoice-by': 'À payer au plus tard le',
  'doc.invoice-terms': 'Conditions',
  'doc.invoice-account': 'Compte',
  'doc.invoice-tax': 'Taxe',
  'doc.invoice-net': 'Montant (lignes hors taxe)',
  'doc.invoice-sum': 'Somme hors taxe',
  'doc.invoice-tax-on': '{tax} sur {basis}',
  'doc.invoice-gross': 'Somme taxe comprise',
  'doc.invoice-rounding': 'Arrondi',
  'doc.invoice-paid': 'Déjà payé',
  'doc.invoice-due': 'À payer',
  'doc.invoice-vat': 'Numéro de TVA {id}',
  'doc.invoice-tax-number': 'numéro fiscal {id}',
  'doc.invoice-register': 'numéro au registre {id}',
  'doc.invoice-category.S': 'TVA {percent} %',
  'doc.invoice-category.Z': 'TVA 0 %',
  'doc.invoice-category.E': 'exonéré de TVA',
  'doc.invoice-category.AE': 'la personne cliente doit la TVA',
  'doc.invoice-category.O': 'hors du champ de la TVA',
  'doc.invoice-reason': 'Pourquoi aucune taxe n’est facturée : {reason}',
  'doc.invoice-attached':
    'La même facture est jointe à ce fichier comme données pour les programmes : invoice.xml, EN 16931 dans la syntaxe UN/CEFACT Cross Industry Invoice.',
}
