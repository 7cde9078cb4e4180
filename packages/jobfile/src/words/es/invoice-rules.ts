import type { SameCodes } from '../catalogues.ts'
import type { invoiceRuleWords as english } from '../en/invoice-rules.ts'

/** Spanish: What an invoice breaks, and where. */
export const invoiceRuleWords: SameCodes<typeof english> = {
  'invoice-rule.currency-not-hundredths': '{currency} no se cuenta en centésimos, como pide la norma.',
  'invoice-rule.due-not-said': 'Hay algo que pagar, y ni un día ni unas condiciones dicen cuándo.',
  'invoice-rule.account-missing': 'Se paga por transferencia, y no se indica ninguna cuenta.',
  'invoice-rule.outside-beside-others':
    'Las líneas fuera del ámbito del impuesto no pueden estar junto a otras en una misma factura.',
  'invoice-rule.seller-unknown': 'El vendedor no tiene número de IVA ni número en un registro.',
  'invoice-rule.vat-country-unknown': '{country} no es el código de un país.',
  'invoice-rule.country-unknown': '{country} no es el código de un país (ISO 3166-1).',
  'invoice-rule.standard-rate-zero': 'El tipo general es un tipo por encima de cero.',
  'invoice-rule.kind-without-rate': 'Esta clase de impuesto no tiene tipo.',
  'invoice-rule.outside-with-vat': 'Fuera del ámbito del impuesto no puede nombrarse ningún número de IVA.',
  'invoice-rule.seller-without-tax-number': 'El vendedor no tiene número de IVA ni número fiscal.',
  'invoice-rule.buyer-vat-missing': 'Cuando el comprador debe el impuesto, debe nombrarse su número de IVA.',
  'invoice-rule.reason-missing': 'No se dice por qué no se cobra impuesto.',
  'invoice-do.complete': 'Completarlo e intentarlo de nuevo.',
  'invoice-do.currency': 'Facturar en una moneda con dos decimales, o escribir esta factura de otro modo.',
  'invoice-do.seller': 'Indicar el número de IVA, o el número con el que está registrada la empresa.',
  'invoice-do.outside': 'Quitar los números de IVA, o elegir otra clase de impuesto.',
  'invoice-part.seller': 'vendedor',
  'invoice-part.buyer': 'comprador',
  'invoice-part.due': 'día de pago',
  'invoice-part.account': 'cuenta',
  'invoice-part.currency': 'moneda',
  'invoice-part.lines': 'líneas',
  'invoice-part.reasons': 'motivo sin impuesto',
  'invoice-part.line': 'línea {number}',
}
