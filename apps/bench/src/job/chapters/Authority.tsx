import type { Body } from '@shearline/jobfile'
import { useState } from 'react'
import { Choice, YesNo } from '../../form/Choice.tsx'
import { Words } from '../../form/Words.tsx'
import { SheetsPart } from '../../handover/Sheets.tsx'
import { Photos } from '../../photos/Photos.tsx'
import { PolicyPart } from '../../policy/PolicyPart.tsx'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { Consent } from '../Consent.tsx'
import { useDesk } from '../desk.ts'
import { Part, RecordForm, useFresh } from '../Part.tsx'

type Role = Body<'authority-seen'>['role']

/** Who may order a key: one identity document, one entitlement document, and the decision. */
export function AuthorityChapter() {
  const { state } = useDesk()
  return (
    <>
      <PolicyPart />
      <DocumentPart of="identity" />
      <DocumentPart of="entitlement" />
      {state.opened?.work === 'all-keys-lost' && (
        <Consent about="no-check-before" need="consent-no-check-before" />
      )}
      <Photos of={['identity']} title={t('photo.identity.title')} />
      <DecisionPart />
      <SheetsPart only={['refusal']} />
    </>
  )
}

function DocumentPart({ of: role }: { readonly of: Role }) {
  const { state } = useDesk()
  const seen = state.authority.seen.findLast((document) => document.role === role)
  const settled = seen?.original === true && seen.matched
  const [fresh, renew] = useFresh()
  const need = role === 'identity' ? 'identity-document-missing' : 'entitlement-missing'
  // A document that was no original, or did not match, is mended by seeing another one of the same role.
  const mends = seen === undefined || settled ? '' : ' document-not-original document-not-matched'
  return (
    <Part
      title={t(`authority.${role}`)}
      need={`${need}${mends}`}
      settled={settled}
      more={t('authority.again')}
      about={
        seen !== undefined && (
          <p>
            {t('authority.seen', {
              document: seen.document,
              issuer: seen.issuer,
              last: seen.lastCharacters,
              by: seen.checkedBy,
            })}{' '}
            {t('authority.how', { original: String(seen.original), matched: String(seen.matched) })}
          </p>
        )
      }
    >
      <DocumentForm key={fresh} of={role} onDone={renew} />
    </Part>
  )
}

function DocumentForm({ of: role, onDone }: { readonly of: Role; readonly onDone: () => void }) {
  const { by } = useDesk()
  const [document, setDocument] = useState('')
  const [issuer, setIssuer] = useState('')
  const [lastCharacters, setLast] = useState('')
  const [original, setOriginal] = useState<boolean | null>(null)
  const [matched, setMatched] = useState<boolean | null>(null)
  const [checkedBy, setCheckedBy] = useState(by)
  const usual = t(`authority.${role}.usual`).split('|')
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() =>
        original === null || matched === null
          ? null
          : [
              {
                kind: 'authority-seen',
                body: { role, document, issuer, lastCharacters, original, matched, checkedBy },
              },
            ]
      }
    >
      <Words label={t('authority.document')} value={document} onChange={setDocument} usual={usual} />
      <Words label={t('authority.issuer')} value={issuer} onChange={setIssuer} />
      <Words
        label={t('authority.last')}
        hint={t('authority.last.hint')}
        value={lastCharacters}
        // Whoever types the whole number keeps its end, not its beginning.
        onChange={(value) => setLast(value.trim().toUpperCase().slice(-6))}
        mono
      />
      <YesNo label={t('authority.original')} value={original} onChange={setOriginal} />
      <YesNo
        label={t('authority.matched')}
        hint={t(`authority.matched.${role}`)}
        value={matched}
        onChange={setMatched}
      />
      <Words label={t('authority.by')} value={checkedBy} onChange={setCheckedBy} autoCapitalize="words" />
    </RecordForm>
  )
}

function DecisionPart() {
  const { state } = useDesk()
  const { decision } = state.authority
  const stopped = decision !== null && decision.decision !== 'released'
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={t('authority.decision')}
      need="work-refused work-held"
      settled={!stopped}
      more={t('authority.stop')}
      about={
        decision !== null && (
          <p>
            {say(`decision.${decision.decision}`)}: {decision.reason}
          </p>
        )
      }
    >
      <DecisionForm key={fresh} onDone={renew} />
    </Part>
  )
}

function DecisionForm({ onDone }: { readonly onDone: () => void }) {
  const { state } = useDesk()
  const current = state.authority.decision?.decision
  const offered = (['held', 'refused', 'released'] as const).filter(
    (one) => one !== current && (one !== 'released' || current !== undefined),
  )
  const [decision, setDecision] = useState<(typeof offered)[number] | null>(null)
  const [reason, setReason] = useState('')
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => (decision === null ? null : [{ kind: 'authority-decided', body: { decision, reason } }])}
    >
      <Choice
        label={t('authority.decide')}
        value={decision}
        onChange={setDecision}
        options={offered.map((one) => [one, t(`authority.decide.${one}`)])}
      />
      <Words label={t('reason')} value={reason} onChange={setReason} />
    </RecordForm>
  )
}
