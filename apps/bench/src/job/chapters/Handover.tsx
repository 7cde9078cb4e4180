import { Cautions } from '../../cautions/Cautions.tsx'
import { HandedOver } from '../../handover/HandedOver.tsx'
import { PricePart } from '../../handover/Price.tsx'
import { RetentionPart } from '../../handover/Retention.tsx'
import { SealPart } from '../../handover/Seal.tsx'
import { SheetsPart } from '../../handover/Sheets.tsx'
import { WarrantyPart } from '../../handover/Warranty.tsx'
import { InvoicePart } from '../../invoice/Invoice.tsx'
import { Received } from '../../signing/Received.tsx'

/** The end of the day at the car: cautions, price, what is kept how long, and the sealed document. */
export function HandoverChapter() {
  return (
    <>
      <Cautions />
      <PricePart />
      <InvoicePart />
      <WarrantyPart />
      <RetentionPart />
      <Received />
      <SealPart />
      <SheetsPart register />
      <HandedOver />
    </>
  )
}
