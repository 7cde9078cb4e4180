import type { SameCodes } from '../catalogues.ts'
import type { invoiceRuleWords as english } from '../en/invoice-rules.ts'

/** German: What an invoice breaks, and where. */
export const invoiceRuleWords: SameCodes<typeof english> = {
  'invoice-rule.currency-not-hundredths':
    '{currency} wird nicht in Hundertsteln gezählt, wie es die Norm verlangt.',
  'invoice-rule.due-not-said': 'Es ist etwas zu zahlen, und weder ein Tag noch Bedingungen sagen, wann.',
  'invoice-rule.account-missing': 'Es soll überwiesen werden, und kein Konto ist angegeben.',
  'invoice-rule.outside-beside-others':
    'Zeilen außerhalb des Steuerbereichs können nicht neben anderen auf einer Rechnung stehen.',
  'invoice-rule.seller-unknown': 'Der Verkäufer hat weder eine USt-IdNr. noch eine Nummer in einem Register.',
  'invoice-rule.vat-country-unknown': '{country} ist kein Kürzel eines Landes.',
  'invoice-rule.country-unknown': '{country} ist kein Kürzel eines Landes (ISO 3166-1).',
  'invoice-rule.standard-rate-zero': 'Der Regelsatz ist ein Satz über null.',
  'invoice-rule.kind-without-rate': 'Diese Art von Steuer hat keinen Satz.',
  'invoice-rule.outside-with-vat': 'Außerhalb des Steuerbereichs darf keine USt-IdNr. genannt sein.',
  'invoice-rule.seller-without-tax-number': 'Der Verkäufer hat keine USt-IdNr. und keine Steuernummer.',
  'invoice-rule.buyer-vat-missing': 'Schuldet der Käufer die Steuer, muss seine USt-IdNr. genannt sein.',
  'invoice-rule.reason-missing': 'Es ist nicht gesagt, warum keine Steuer berechnet wird.',
  'invoice-do.complete': 'Ergänzen und erneut versuchen.',
  'invoice-do.currency':
    'In einer Währung mit zwei Nachkommastellen abrechnen oder diese Rechnung anders schreiben.',
  'invoice-do.seller': 'Die USt-IdNr. angeben oder die Nummer, unter der die Firma eingetragen ist.',
  'invoice-do.outside': 'Die USt-IdNrn. weglassen oder eine andere Art von Steuer wählen.',
  'invoice-part.seller': 'Verkäufer',
  'invoice-part.buyer': 'Käufer',
  'invoice-part.due': 'Zahltag',
  'invoice-part.account': 'Konto',
  'invoice-part.currency': 'Währung',
  'invoice-part.lines': 'Zeilen',
  'invoice-part.reasons': 'Grund ohne Steuer',
  'invoice-part.line': 'Zeile {number}',
}
