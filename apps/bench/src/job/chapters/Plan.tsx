import { SheetsPart } from '../../handover/Sheets.tsx'
import { KeyCards } from '../../keys/KeyCards.tsx'
import { BudgetPart } from '../../power/BudgetPart.tsx'
import { asksAboutAbsentKeys } from '../../teaching/plan-of.ts'
import { Rehearsal } from '../../teaching/rehearsal/Rehearsal.tsx'
import { RulePart } from '../../teaching/rule/RulePart.tsx'
import { Consent } from '../Consent.tsx'
import { useDesk } from '../desk.ts'

/** What will happen, before it happens: rule, power, rehearsal, and the customer's word about absent keys. */
export function PlanChapter() {
  const { state } = useDesk()
  return (
    <>
      <RulePart />
      <BudgetPart />
      <KeyCards origin="new" />
      <Rehearsal />
      {asksAboutAbsentKeys(state) && <Consent about="absent-keys-stop" need="consent-absent-keys" />}
      <SheetsPart only={['absent-keys', 'no-check']} />
    </>
  )
}
