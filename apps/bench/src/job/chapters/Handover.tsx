import { Cautions } from '../../handover/Cautions.tsx'
import { PricePart } from '../../handover/Price.tsx'
import { RetentionPart } from '../../handover/Retention.tsx'
import { SealPart } from '../../handover/Seal.tsx'
import { WarrantyPart } from '../../handover/Warranty.tsx'

/** The end of the day at the car: cautions, price, what is kept how long, and the sealed document. */
export function HandoverChapter() {
  return (
    <>
      <Cautions />
      <PricePart />
      <WarrantyPart />
      <RetentionPart />
      <SealPart />
    </>
  )
}
