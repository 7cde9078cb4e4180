import { type ChangeEvent, useId } from 'react'
import formCss from '../form/form.module.css'
import { lasting } from '../recording/elapsed.ts'
import { megahertz, number, size } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import type { Measured } from './messages.ts'
import css from './remote.module.css'
import { SettingForm } from './SettingForm.tsx'
import { findingWords } from './say-remote.ts'
import type { RemoteSide } from './useRemote.ts'

/** One remote: its recording chosen, read, and what was met in it. */
export function SideCard({ name, remote }: { readonly name: string; readonly remote: RemoteSide }) {
  const { side, unfit, choose, readAs, forget } = remote
  const id = useId()
  const pick = (event: ChangeEvent<HTMLInputElement>) => {
    choose([...(event.target.files ?? [])])
    // The same file may be chosen again.
    event.target.value = ''
  }
  return (
    <section className={css.side} aria-labelledby={id}>
      <h3 className={css.sideName} id={id}>
        {name}
      </h3>
      {side.at === 'measuring' && (
        <Progress name={side.ask.file.name} bytes={side.bytes} of={side.ask.file.size} />
      )}
      {side.at === 'asking' && (
        <>
          <p className={css.file}>{side.ask.file.name}</p>
          <Findings findings={side.findings} />
          <SettingForm key={side.ask.file.name} setting={side.setting} onGiven={readAs} />
        </>
      )}
      {side.at === 'measured' && (
        <>
          <p className={css.file}>{measuredWords(side.ask.file.name, side.measured)}</p>
          <Findings findings={side.measured.measurement.findings} />
          <details className={formCss.more}>
            <summary>{t('remote.ask.change')}</summary>
            <SettingForm setting={side.measured.setting} onGiven={readAs} />
          </details>
        </>
      )}
      {side.at === 'failed' && (
        <p className={formCss.problem} role="alert">
          {t('remote.failed', { problem: problemWords(side.error) })}
        </p>
      )}
      {unfit !== null && (
        <p className={formCss.problem} role="alert">
          {t(`remote.pick.${unfit.why}`, { name: unfit.name })}
        </p>
      )}
      <div className={formCss.foot}>
        {side.at !== 'measuring' && (
          <span className={css.pick}>
            <input
              id={`${id}-file`}
              className="sr"
              type="file"
              multiple
              onChange={pick}
              aria-describedby={side.at === 'none' ? `${id}-hint` : undefined}
            />
            <label htmlFor={`${id}-file`} className={css.pickLabel} data-first={side.at === 'none'}>
              {t(side.at === 'none' ? 'remote.pick' : 'remote.pick-again')}
              <span className="sr">: {name}</span>
            </label>
          </span>
        )}
        {side.at !== 'none' && (
          <button type="button" className={formCss.plain} onClick={forget}>
            {t(side.at === 'measuring' ? 'cancel' : 'remote.forget')}
            <span className="sr">: {name}</span>
          </button>
        )}
      </div>
      {side.at === 'none' && (
        <p className={css.quiet} id={`${id}-hint`}>
          {t('remote.pick.hint')}
        </p>
      )}
    </section>
  )
}

function Progress({
  name,
  bytes,
  of,
}: {
  readonly name: string
  readonly bytes: number
  readonly of: number
}) {
  return (
    <>
      <progress
        className={css.progress}
        value={bytes}
        max={Math.max(1, of)}
        aria-label={t('remote.measuring', { name })}
      />
      <p className={css.quiet} aria-hidden="true">
        {t('recording.read-so-far', { read: size(bytes), whole: size(of) })}
      </p>
      <p role="status" className="sr">
        {t('remote.measuring', { name })}
      </p>
    </>
  )
}

function Findings({ findings }: { readonly findings: Measured['measurement']['findings'] }) {
  if (findings.length === 0) return null
  return (
    <ul className={css.findings}>
      {[...new Set(findings.map(findingWords))].map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  )
}

function measuredWords(name: string, { measurement }: Measured): string {
  return t('remote.measured', {
    name,
    seconds: lasting(measurement.seconds),
    rate: number(measurement.sampleRateHz),
    centre: measurement.centreHz === null ? 'none' : megahertz(measurement.centreHz),
  })
}
