import type { SameCodes } from '../catalogues.ts'
import type { invoiceWords as english } from '../en/invoice.ts'

/** The invoice in the document. */
export const invoiceWords: SameCodes<typeof english> = {
  'doc.invoice': 'Factura {number}',
  'doc.invoice-issued': 'Expedida',
  'doc.invoice-delivered': 'Trabajo realizado',
  'doc.invoice-seller': 'De',
  'doc.invoice-buyer': 'A',
  'doc.invoice-by': 'A pagar hasta el',
  'doc.invoice-terms': 'Condiciones',
  'doc.invoice-account': 'Cuenta',
  'doc.invoice-tax': 'Impuesto',
  'doc.invoice-net': 'Importe (líneas sin impuesto)',
  'doc.invoice-sum': 'Suma sin impuesto',
  'doc.invoice-tax-on': '{tax} sobre {basis}',
  'doc.invoice-gross': 'Suma con impuesto',
  'doc.invoice-rounding': 'Redondeo',
  'doc.invoice-paid': 'Ya pagado',
  'doc.invoice-due': 'Por pagar',
  'doc.invoice-vat': 'número de IVA {id}',
  'doc.invoice-tax-number': 'número fiscal {id}',
  'doc.invoice-register': 'número de registro {id}',
  'doc.invoice-category.S': 'IVA {percent}\u00a0%',
  'doc.invoice-category.Z': 'IVA 0 %',
  'doc.invoice-category.E': 'exento de IVA',
  'doc.invoice-category.AE': 'el IVA lo debe el cliente',
  'doc.invoice-category.O': 'no sujeto a IVA',
  'doc.invoice-reason': 'Por qué no se cobra impuesto: {reason}',
  'doc.invoice-attached':
    'La misma factura va adjunta a este archivo como datos para programas: invoice.xml, EN 16931 en la sintaxis UN/CEFACT Cross Industry Invoice.',
}
