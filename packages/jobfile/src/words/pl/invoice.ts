import type { SameCodes } from '../catalogues.ts'
import type { invoiceWords as english } from '../en/invoice.ts'

/** The invoice in the document. */
export const invoiceWords: SameCodes<typeof english> = {
  'doc.invoice': 'Faktura {number}',
  'doc.invoice-issued': 'Wystawiono',
  'doc.invoice-delivered': 'Prace wykonano',
  'doc.invoice-seller': 'Od',
  'doc.invoice-buyer': 'Dla',
  'doc.invoice-by': 'Termin płatności',
  'doc.invoice-terms': 'Warunki',
  'doc.invoice-account': 'Konto',
  'doc.invoice-tax': 'Podatek',
  'doc.invoice-net': 'Kwota (pozycje bez podatku)',
  'doc.invoice-sum': 'Suma bez podatku',
  'doc.invoice-tax-on': '{tax} od {basis}',
  'doc.invoice-gross': 'Suma z podatkiem',
  'doc.invoice-rounding': 'Zaokrąglenie',
  'doc.invoice-paid': 'Już zapłacono',
  'doc.invoice-due': 'Do zapłaty',
  'doc.invoice-vat': 'numer VAT {id}',
  'doc.invoice-tax-number': 'numer podatkowy {id}',
  'doc.invoice-register': 'numer w rejestrze {id}',
  'doc.invoice-category.S': 'podatek VAT {percent}\u00a0%',
  'doc.invoice-category.Z': 'podatek VAT 0 %',
  'doc.invoice-category.E': 'zwolnione z VAT',
  'doc.invoice-category.AE': 'podatek VAT rozlicza klient',
  'doc.invoice-category.O': 'nie podlega VAT',
  'doc.invoice-reason': 'Dlaczego podatku się nie nalicza: {reason}',
  'doc.invoice-attached':
    'Ta sama faktura jest dołączona do tego pliku jako dane dla programów: invoice.xml, EN 16931 w składni UN/CEFACT Cross Industry Invoice.',
}
