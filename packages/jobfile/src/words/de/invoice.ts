import type { SameCodes } from '../catalogues.ts'
import type { invoiceWords as english } from '../en/invoice.ts'

/** German: The invoice in the document. */
export const invoiceWords: SameCodes<typeof english> = {
  'doc.invoice': 'Rechnung {number}',
  'doc.invoice-issued': 'Ausgestellt',
  'doc.invoice-delivered': 'Arbeit ausgeführt',
  'doc.invoice-seller': 'Von',
  'doc.invoice-buyer': 'An',
  'doc.invoice-by': 'Zahlbar bis',
  'doc.invoice-terms': 'Zahlungsbedingungen',
  'doc.invoice-account': 'Konto',
  'doc.invoice-tax': 'Steuer',
  'doc.invoice-net': 'Betrag (Zeilen ohne Steuer)',
  'doc.invoice-sum': 'Summe ohne Steuer',
  'doc.invoice-tax-on': '{tax} auf {basis}',
  'doc.invoice-gross': 'Summe mit Steuer',
  'doc.invoice-rounding': 'Rundung',
  'doc.invoice-paid': 'Bereits bezahlt',
  'doc.invoice-due': 'Zu zahlen',
  'doc.invoice-vat': 'Umsatzsteuer-Identifikationsnummer {id}',
  'doc.invoice-tax-number': 'Steuernummer {id}',
  'doc.invoice-register': 'Registernummer {id}',
  'doc.invoice-category.S': 'Umsatzsteuer {percent} %',
  'doc.invoice-category.Z': 'Umsatzsteuer 0 %',
  'doc.invoice-category.E': 'von der Umsatzsteuer befreit',
  'doc.invoice-category.AE': 'die Kundschaft schuldet die Umsatzsteuer',
  'doc.invoice-category.O': 'nicht steuerbar',
  'doc.invoice-reason': 'Warum keine Steuer berechnet wird: {reason}',
  'doc.invoice-attached':
    'Dieselbe Rechnung ist dieser Datei als Daten für Programme angehängt: invoice.xml, EN 16931 in der Syntax von UN/CEFACT Cross Industry Invoice.',
}
