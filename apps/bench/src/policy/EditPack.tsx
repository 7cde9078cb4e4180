import { type PolicyPack, readPolicyPack } from '@shearline/jobfile'
import { type FormEvent, useEffect, useRef, useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { regions } from '../remote/region.ts'
import { t } from '../words/index.ts'
import { RetentionFields } from './EditRetention.tsx'
import { ContractFields, SituationFields } from './EditSituation.tsx'
import css from './policy.module.css'

/** A pack filled in by hand, part by part. It is kept only when it reads as a whole. */
export function EditPack({
  pack,
  onKeep,
  onLeave,
}: {
  readonly pack: PolicyPack
  readonly onKeep: (pack: PolicyPack) => void
  readonly onLeave: () => void
}) {
  const title = useRef<HTMLHeadingElement>(null)
  // It takes the place of the list, wherever that was scrolled to: reading begins at its head.
  useEffect(() => title.current?.focus(), [])
  const [draft, setDraft] = useState(pack)
  const [troubles, setTroubles] = useState<readonly { path: string; what: string; doNext: string }[]>([])
  const keep = (event: FormEvent) => {
    event.preventDefault()
    const read = readPolicyPack(draft)
    if (read.ok) onKeep(read.pack)
    else setTroubles(read.troubles)
  }
  return (
    <form className={css.page} onSubmit={keep}>
      <h1 className={css.title} ref={title} tabIndex={-1}>
        {t('rules.page')}
      </h1>
      <p className={css.law}>{t('rules.law')}</p>
      <div className={formCss.form}>
        <Words
          label={t('rules.form.name')}
          value={draft.name}
          onChange={(name) => setDraft({ ...draft, name })}
        />
        <Words
          label={t('rules.form.region')}
          value={draft.region}
          onChange={(region) => setDraft({ ...draft, region })}
        />
        <Words
          label={t('rules.form.dated')}
          hint={t('rules.form.dated.hint')}
          value={draft.dated}
          onChange={(dated) => setDraft({ ...draft, dated })}
          mono
          inputMode="numeric"
        />
      </div>
      <h2 className={css.subtitle}>{t('rules.form.authority')}</h2>
      {draft.authority.map((row, index) => (
        <SituationFields
          key={row.situation}
          row={row}
          onChange={(next) =>
            setDraft({ ...draft, authority: draft.authority.map((one, at) => (at === index ? next : one)) })
          }
        />
      ))}
      <h2 className={css.subtitle}>{t('rules.form.contract')}</h2>
      <ContractFields rows={draft.contract} onChange={(contract) => setDraft({ ...draft, contract })} />
      <h2 className={css.subtitle}>{t('rules.form.retention')}</h2>
      <RetentionFields
        rules={draft.retention.rules}
        onChange={(rules) => setDraft({ ...draft, retention: { ...draft.retention, rules } })}
      />
      <div className={formCss.form}>
        <Amount
          label={t('rules.form.stalled')}
          value={draft.retention.stalledAfterDays}
          onChange={(days) =>
            setDraft({ ...draft, retention: { ...draft.retention, stalledAfterDays: days ?? 0 } })
          }
          least={1}
          most={36500}
          step={30}
        />
        <Choice
          label={t('rules.form.radio')}
          value={draft.radio.region ?? 'none'}
          onChange={(region) =>
            setDraft({ ...draft, radio: { ...draft.radio, region: region === 'none' ? null : region } })
          }
          options={[
            ['none', t('rules.form.radio.none')],
            ...regions.map((one) => [one, t(`remote.region.${one}`)] as const),
          ]}
        />
      </div>
      {troubles.length > 0 && (
        <div className={formCss.problem} role="alert">
          <p>{t('rules.troubles', { count: troubles.length })}</p>
          <ul className={css.troubles}>
            {troubles.map(({ path, what, doNext }) => (
              <li key={`${path} ${what}`}>
                <code>{path}</code>: {t('rules.trouble', { what, doNext })}
              </li>
            ))}
          </ul>
        </div>
      )}
      <div className={formCss.foot}>
        <button type="submit" className={formCss.submit}>
          {t('rules.form.keep')}
        </button>
        <button type="button" className={formCss.plain} onClick={onLeave}>
          {t('cancel')}
        </button>
      </div>
    </form>
  )
}
