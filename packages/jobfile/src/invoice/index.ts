/** @module An invoice of the job as structured data: EN 16931 in the syntax of UN/CEFACT Cross Industry Invoice. */
export { amountsOf, type Category, type Invoice, type InvoiceAmounts, type TaxShare } from './amounts.ts'
export { invoiceXml } from './cii.ts'
export { draftInvoice, type InvoiceDetails } from './draft.ts'
export { type InvoiceFinding, type InvoiceRule, invoiceFindings, sayInvoiceFinding } from './rules.ts'
