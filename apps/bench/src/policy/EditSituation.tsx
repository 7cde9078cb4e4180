import {
  checkCodes,
  documentCodes,
  type NamedCode,
  type PackSituation,
  type PolicyPack,
} from '@shearline/jobfile'
import formCss from '../form/form.module.css'
import { Names } from '../form/Names.tsx'
import { Several } from '../form/Several.tsx'
import { Words } from '../form/Words.tsx'
import { t } from '../words/index.ts'
import css from './policy.module.css'
import { answerWords, documentWords, questionWords } from './policy-words.ts'

/** What shows, in one situation, that somebody may have a key. */
export function SituationFields({
  row,
  onChange,
}: {
  readonly row: PackSituation
  readonly onChange: (row: PackSituation) => void
}) {
  const documents = documentCodes.map((code) => [code, documentWords({ code })] as const)
  return (
    <details className={formCss.more}>
      <summary>{answerWords('authority.situation', row.situation)}</summary>
      <div className={formCss.form}>
        <Several
          label={t('rules.form.identity')}
          options={documents}
          value={known(row.identity)}
          onChange={(codes) => onChange({ ...row, identity: chosen(row.identity, codes) })}
        />
        <Several
          label={t('rules.form.entitlement')}
          options={documents}
          value={known(row.entitlement)}
          onChange={(codes) => onChange({ ...row, entitlement: chosen(row.entitlement, codes) })}
        />
        <Checks
          of="authority"
          checks={row.checks}
          onChange={(checks) => onChange({ ...row, checks: [...checks] })}
        />
        <Words
          label={t('rules.form.source')}
          value={row.source}
          onChange={(source) => onChange({ ...row, source, basis: 'firm' })}
        />
      </div>
    </details>
  )
}

/** What each kind of customer is told before the work. */
export function ContractFields({
  rows,
  onChange,
}: {
  readonly rows: PolicyPack['contract']
  readonly onChange: (rows: PolicyPack['contract']) => void
}) {
  const change = (at: number, next: PolicyPack['contract'][number]) =>
    onChange(rows.map((one, index) => (index === at ? next : one)))
  return (
    <div className={css.rows}>
      {rows.map((row, index) => (
        <div key={row.customers.join(' ')} className={formCss.form}>
          <Checks
            of="contract"
            checks={row.checks}
            onChange={(checks) => change(index, { ...row, checks: [...checks] })}
          />
          <Words
            label={t('rules.form.source')}
            value={row.source}
            onChange={(source) => change(index, { ...row, source, basis: 'firm' })}
          />
        </div>
      ))}
    </div>
  )
}

function Checks({
  of: topic,
  checks,
  onChange,
}: {
  readonly of: 'authority' | 'contract'
  readonly checks: readonly NamedCode[]
  readonly onChange: (checks: readonly NamedCode[]) => void
}) {
  const offered = checkCodes.filter((code) => code.startsWith(`${topic}.`))
  const own = checks.flatMap(({ words }) => (words === undefined ? [] : [words]))
  return (
    <>
      <Several
        label={t('rules.form.checks')}
        options={offered.map((code) => [code, questionWords(code)] as const)}
        value={known(checks)}
        onChange={(codes) => onChange(chosen(checks, codes))}
      />
      <Names
        label={t('rules.form.own')}
        hint={t('rules.form.own.hint')}
        value={own}
        onChange={(all) =>
          onChange([
            ...checks.filter(({ words }) => words === undefined),
            ...all.map((words, index) => ({ code: `${topic}.own-${index + 1}`, words })),
          ])
        }
      />
    </>
  )
}

/** The rows the catalogue has words for. */
function known(rows: readonly NamedCode[]): readonly string[] {
  return rows.flatMap(({ code, words }) => (words === undefined ? [code] : []))
}

/** The codes chosen, in the order they are offered, and the firm's own rows after them. */
function chosen(rows: readonly NamedCode[], codes: readonly string[]): NamedCode[] {
  return [...codes.map((code) => ({ code })), ...rows.filter(({ words }) => words !== undefined)]
}
