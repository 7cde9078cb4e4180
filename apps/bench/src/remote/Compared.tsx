import { compareRemotes, type RemoteVerdict } from '@shearline/keywork'
import { useMemo } from 'react'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { Bands } from './Bands.tsx'
import { Keep } from './Keep.tsx'
import type { Measured } from './messages.ts'
import { Pictures } from './pictures/Pictures.tsx'
import css from './remote.module.css'
import { findingWords, reasonWords } from './say-remote.ts'
import { Values } from './Values.tsx'

const order: readonly RemoteVerdict[] = ['different', 'unsure', 'same']

/** The verdict on two measured remotes, why, what was measured, and what it looks like. */
export function Compared({ original, fresh }: { readonly original: Measured; readonly fresh: Measured }) {
  const comparison = useMemo(() => compareRemotes(original.measurement, fresh.measurement), [original, fresh])
  const { verdict } = comparison
  const drifted = comparison.reasons.filter(({ code }) => code === 'carrier-drifted')
  const reasons = comparison.reasons
    .filter(({ code }) => code !== 'carrier-drifted')
    .toSorted((a, b) => order.indexOf(a.points) - order.indexOf(b.points))
  const wanders = fresh.measurement.findings.filter(({ code }) => code === 'carrier-wanders')
  return (
    <>
      <section className={css.verdict} data-verdict={verdict} role="status">
        <h3 className={css.verdictWords}>{say(`remote-verdict.${verdict}`)}</h3>
        <p>{t(`remote.verdict.${verdict}.next`)}</p>
      </section>
      {drifted.length + wanders.length > 0 && (
        <section className={css.drift}>
          <h3 className={css.partName}>{t('remote.drift')}</h3>
          {drifted.map((reason) => (
            <p key={reason.code}>{reasonWords(reason)}</p>
          ))}
          {wanders.map((finding) => (
            <p key={finding.code}>{findingWords(finding)}</p>
          ))}
        </section>
      )}
      <section className={css.part}>
        <h3 className={css.partName}>{t('remote.reasons')}</h3>
        <ul className={css.reasons}>
          {reasons.map((reason) => (
            <li key={`${reason.code} ${reason.side}`} className={css.reason} data-points={reason.points}>
              <strong>{t(`remote.points.${reason.points}`)}</strong>
              <span>{reasonWords(reason)}</span>
            </li>
          ))}
        </ul>
      </section>
      <Pictures original={original} fresh={fresh} />
      <Values original={original.measurement} fresh={fresh.measurement} />
      <Bands original={original.measurement} fresh={fresh.measurement} />
      <Keep comparison={comparison} original={original.measurement} fresh={fresh.measurement} />
    </>
  )
}
