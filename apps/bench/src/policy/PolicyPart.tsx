import { packChosen, packLabel, situationChosen, situationOf, situations } from '@shearline/jobfile'
import { useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { Part, RecordForm } from '../job/Part.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { Ask } from './Ask.tsx'
import { packLabelWords, packText } from './pack-text.ts'
import css from './policy.module.css'
import { answerWords, documentWords } from './policy-words.ts'
import { RecordedChoice } from './RecordedChoice.tsx'
import { packNamed, usePacks } from './usePacks.ts'

/** Which rules this job works by, who stands there, and what the rules then want to see. */
export function PolicyPart() {
  const { policy } = useDesk().state
  const { packs } = usePacks()
  const pack = packNamed(packs, policy?.pack)
  const row = pack === null || policy?.situation == null ? null : situationOf(pack, policy.situation)
  const asked = policy?.questions.filter(({ wants }) => wants === 'yes') ?? []
  return (
    <Part
      title={t('rules.title')}
      about={<p className={css.law}>{t('rules.law')}</p>}
      // Jobs of before there were packs go on as they are.
      settled={policy === null}
      more={t('rules.which')}
    >
      <PackOfJob />
      {policy !== null && (
        <>
          {pack === null && <p>{t('rules.not-here', { pack: packLabelWords(policy.pack) })}</p>}
          {pack !== null && <SituationOfJob />}
          {row !== null && (
            <div className={css.evidence}>
              <p>
                {t('rules.identity-any', { documents: row.identity.map(documentWords).join(t('rules.or')) })}
              </p>
              <p>
                {t('rules.entitlement-any', {
                  documents: row.entitlement.map(documentWords).join(t('rules.or')),
                })}
              </p>
              <p className={css.quiet}>
                {t('rules.source', { source: packText(row.source), basis: say(`policy-basis.${row.basis}`) })}
              </p>
            </div>
          )}
          {asked.map((one) => (
            <Ask key={one.question} asked={one} pack={policy.pack} />
          ))}
        </>
      )}
    </Part>
  )
}

/** The pack the job works by; choosing another asks its questions anew and keeps the answers they share. */
function PackOfJob() {
  const { state } = useDesk()
  const { packs, usual } = usePacks()
  const [label, setLabel] = useState<string | null>(null)
  const now = state.policy?.pack
  const form = (
    <RecordForm
      submit={t('rules.choose')}
      onDone={() => setLabel(null)}
      drafts={() => {
        const pack = packNamed(packs, label ?? now ?? usual)
        const customer = state.opened?.customer ?? 'private'
        return pack === null ? null : [{ kind: 'policy-answered', body: packChosen(pack, customer) }]
      }}
    >
      <Choice
        label={t('rules.which')}
        value={label ?? now ?? usual}
        onChange={setLabel}
        options={packs.map((pack) => [packLabel(pack), packLabelWords(packLabel(pack))])}
      />
    </RecordForm>
  )
  if (now === undefined) return form
  return (
    <>
      <p>{t('rules.by', { pack: packLabelWords(now) })}</p>
      <details className={formCss.more}>
        <summary>{t('rules.other')}</summary>
        {form}
      </details>
    </>
  )
}

function SituationOfJob() {
  const { state, record } = useDesk()
  const { packs } = usePacks()
  const pack = packNamed(packs, state.policy?.pack)
  if (pack === null) return null
  const known = situations.filter((one) => situationOf(pack, one) !== null)
  const value = known.find((one) => one === state.policy?.situation) ?? null
  return (
    <div
      data-need={value === null ? 'policy-question-open policy-question-open:authority.situation' : undefined}
    >
      <RecordedChoice
        label={say('policy-asks.authority.situation')}
        value={value}
        onAnswer={(situation) =>
          record([{ kind: 'policy-answered', body: situationChosen(pack, situation) }])
        }
        options={known.map((one) => [one, answerWords('authority.situation', one)])}
      />
    </div>
  )
}
