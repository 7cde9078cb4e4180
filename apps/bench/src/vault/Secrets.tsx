import { type Body, bodyOf, type Fact } from '@shearline/jobfile'
import { type FormEvent, useEffect, useId, useState } from 'react'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { t } from '../words/index.ts'
import { clock, day } from '../words/instants.ts'
import { problemWords } from '../words/problem.ts'
import { PrivateKeyField } from './PrivateKeyField.tsx'
import { sealedBytes } from './sealed-bytes.ts'
import css from './vault.module.css'
import { openSealed } from './work.ts'
import type { OpenedSecret } from './worker-messages.ts'

/** What is sealed on this job and who opened it; each can be opened here with the private key and a reason. */
export function Secrets() {
  const { facts, zone } = useDesk()
  const title = useId()
  const sealed = facts.flatMap((fact) => {
    const body = fact.kind === 'secret-sealed' ? bodyOf(fact, 'secret-sealed') : null
    return body?.ok === true ? [{ fact, body: body.body }] : []
  })
  if (sealed.length === 0) return null
  const when = (at: string) => `${day(at, zone)}, ${clock(at, zone)}`
  return (
    <section aria-labelledby={title} className={css.secrets}>
      <h4 id={title}>{t('vault.secrets')}</h4>
      {sealed.map(({ fact, body }) => (
        <div key={fact.id} className={css.secret}>
          <p>{t('vault.secret', { what: body.what, count: body.secretBytes ?? 0, when: when(fact.at) })}</p>
          {openings(facts, body.blob).map((opening) => (
            <p key={opening.id} className={formCss.hint}>
              {t('vault.secret.opened', {
                when: when(opening.at),
                by: opening.by,
                reason: String(opening.body.reason),
              })}
            </p>
          ))}
          <details className={formCss.more}>
            <summary>{t('vault.open')}</summary>
            <OpenForm secret={body} />
          </details>
        </div>
      ))}
    </section>
  )
}

function openings(facts: readonly Fact[], blob: string): readonly Fact[] {
  return facts.filter((fact) => fact.kind === 'secret-opened' && fact.body.blob === blob)
}

function OpenForm({ secret }: { readonly secret: Body<'secret-sealed'> }) {
  const { record } = useDesk()
  const [reason, setReason] = useState('')
  const [identity, setIdentity] = useState('')
  const [passphrase, setPassphrase] = useState('')
  const [problem, setProblem] = useState('')
  const [opened, setOpened] = useState<OpenedSecret | null>(null)
  const open = async (event: FormEvent) => {
    event.preventDefault()
    try {
      const sealed = await sealedBytes(secret.blob)
      if (sealed === null) return setProblem(t('vault.open.not-here'))
      // The key is tried first, in the worker; what it opens is shown only once the reason is on the disk.
      const found = await openSealed(sealed, { identity, passphrase }, secret.digest ?? null)
      await record([{ kind: 'secret-opened', body: { blob: secret.blob, reason } }])
      setOpened(found)
      setProblem('')
      setIdentity('')
      setPassphrase('')
    } catch (error) {
      setProblem(problemWords(error))
    }
  }
  if (opened !== null) return <Save opened={opened} />
  return (
    <form className={formCss.form} onSubmit={(event) => void open(event)}>
      <Words
        label={t('vault.open.reason')}
        hint={t('vault.open.reason.hint')}
        value={reason}
        onChange={setReason}
      />
      {!secret.passphrase && (
        <PrivateKeyField value={identity} onChange={setIdentity} onProblem={setProblem} />
      )}
      <Passphrase value={passphrase} onChange={setPassphrase} needed={secret.passphrase} />
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={formCss.foot}>
        <button type="submit" className={formCss.submit}>
          {t('vault.open.do')}
        </button>
      </div>
    </form>
  )
}

function Passphrase(props: {
  readonly value: string
  readonly onChange: (words: string) => void
  readonly needed: boolean
}) {
  const id = useId()
  return (
    <div className={formCss.field}>
      <label className={formCss.label} htmlFor={id}>
        {t('vault.open.passphrase')}
      </label>
      <input
        id={id}
        className={formCss.input}
        type="password"
        autoComplete="off"
        value={props.value}
        onChange={(event) => props.onChange(event.target.value)}
        required={props.needed}
      />
    </div>
  )
}

/** The opened secret, in memory only, until the person saves it or leaves the page. */
function Save({ opened }: { readonly opened: OpenedSecret }) {
  const [address, setAddress] = useState('')
  useEffect(() => {
    const made = URL.createObjectURL(opened.secret)
    setAddress(made)
    return () => URL.revokeObjectURL(made)
  }, [opened])
  return (
    <div role="status" className={css.secret}>
      <p>{opened.asRecorded === false ? t('vault.open.wrong') : t('vault.open.right')}</p>
      <a className={formCss.plain} href={address} download="opened-secret.bin">
        {t('vault.open.save')}
      </a>
    </div>
  )
}
