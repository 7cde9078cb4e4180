import { rewritesList } from '@shearline/jobfile'
import { SheetsPart } from '../../handover/Sheets.tsx'
import { KeyCards } from '../../keys/KeyCards.tsx'
import { BudgetPart } from '../../power/BudgetPart.tsx'
import { Rehearsal } from '../../teaching/rehearsal/Rehearsal.tsx'
import { RulePart } from '../../teaching/rule/RulePart.tsx'
import { Consent } from '../Consent.tsx'
import { useDesk } from '../desk.ts'

/** What will happen, before it happens: rule, power, rehearsal, and the customer's word about absent keys. */
export function PlanChapter() {
  const { state } = useDesk()
  const drops = rewritesList(state.teaching.rule)
  const someAbsent = state.absentKeys.length > 0 || (state.tally.unaccounted ?? 0) > 0
  return (
    <>
      <RulePart />
      <BudgetPart />
      <KeyCards origin="new" />
      <Rehearsal />
      {drops && someAbsent && <Consent about="absent-keys-stop" need="consent-absent-keys" />}
      <SheetsPart only={['absent-keys', 'no-check']} />
    </>
  )
}
