import type { RetentionRule } from '@shearline/jobfile'
import { Amount } from '../form/Amount.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'

/** Days and source of each class. Where a clock starts stays as the pack had it. */
export function RetentionFields({
  rules,
  onChange,
}: {
  readonly rules: readonly RetentionRule[]
  readonly onChange: (rules: RetentionRule[]) => void
}) {
  const change = (at: number, next: RetentionRule) =>
    onChange(rules.map((one, index) => (index === at ? next : one)))
  return (
    <div className={formCss.form}>
      {rules.map((rule, index) => (
        <div key={rule.class} className={formCss.row}>
          <Amount
            label={t('rules.form.days', { name: say(`retention.${rule.class}`) })}
            value={rule.days}
            onChange={(days) => change(index, { ...rule, days: days ?? 0 })}
            most={36500}
            step={30}
          />
          <Words
            label={t('rules.form.source')}
            value={rule.source}
            onChange={(source) => change(index, { ...rule, source })}
          />
        </div>
      ))}
    </div>
  )
}
