import type { SameCodes } from '../catalogues.ts'
import type { invoiceRuleWords as english } from '../en/invoice-rules.ts'

/** Polish: What an invoice breaks, and where. */
export const invoiceRuleWords: SameCodes<typeof english> = {
  'invoice-rule.currency-not-hundredths': 'Waluty {currency} nie liczy się w setnych, jak wymaga norma.',
  'invoice-rule.due-not-said': 'Jest kwota do zapłaty, a ani dzień, ani warunki nie mówią, kiedy.',
  'invoice-rule.account-missing': 'Zapłata ma być przelewem, a nie podano rachunku.',
  'invoice-rule.outside-beside-others':
    'Pozycje poza zakresem podatku nie mogą stać obok innych na jednej fakturze.',
  'invoice-rule.seller-unknown': 'Sprzedawca nie ma ani numeru VAT, ani numeru w rejestrze.',
  'invoice-rule.vat-country-unknown': '{country} nie jest kodem kraju.',
  'invoice-rule.country-unknown': '{country} nie jest kodem kraju (ISO 3166-1).',
  'invoice-rule.standard-rate-zero': 'Stawka podstawowa jest większa od zera.',
  'invoice-rule.kind-without-rate': 'Ten rodzaj podatku nie ma stawki.',
  'invoice-rule.outside-with-vat': 'Poza zakresem podatku nie wolno podawać numeru VAT.',
  'invoice-rule.seller-without-tax-number': 'Sprzedawca nie ma numeru VAT ani numeru podatkowego.',
  'invoice-rule.buyer-vat-missing': 'Gdy podatek rozlicza nabywca, trzeba podać jego numer VAT.',
  'invoice-rule.reason-missing': 'Nie podano, dlaczego nie nalicza się podatku.',
  'invoice-do.complete': 'Uzupełnij i spróbuj ponownie.',
  'invoice-do.currency': 'Wystaw fakturę w walucie z dwoma miejscami po przecinku albo napisz ją inaczej.',
  'invoice-do.seller': 'Podaj numer VAT albo numer, pod którym firma jest zarejestrowana.',
  'invoice-do.outside': 'Usuń numery VAT albo wybierz inny rodzaj podatku.',
  'invoice-part.seller': 'sprzedawca',
  'invoice-part.buyer': 'nabywca',
  'invoice-part.due': 'dzień zapłaty',
  'invoice-part.account': 'rachunek',
  'invoice-part.currency': 'waluta',
  'invoice-part.lines': 'pozycje',
  'invoice-part.reasons': 'powód braku podatku',
  'invoice-part.line': 'pozycja {number}',
}
