import type { FaultLine, ScanPhase } from '@shearline/keywork'
import type { ReactNode } from 'react'
import { useDesk } from '../../job/desk.ts'
import { Facts } from '../../job/Facts.tsx'
import { listMark, say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { clock, day } from '../../words/instants.ts'
import { Acknowledge } from '../Acknowledge.tsx'
import { UnitRole } from '../UnitRole.tsx'
import { type Bounds, boundsOf } from './bounds.ts'
import css from './lives.module.css'
import { evidenceWords } from './words.ts'

/** Everything that may honestly be said of one fault, and what settles it. */
export function FaultDetail({ line, compared }: { readonly line: FaultLine; readonly compared: boolean }) {
  const { state, facts, zone } = useDesk()
  const known = state.acknowledged.findLast((one) => one.unit === line.unit && one.code === line.code)
  const rows: [name: string, value: ReactNode][] = [
    [t('faults.says'), <Claims key="claims" line={line} />],
    [t('faults.when'), whenWords(boundsOf(line, facts, state.faults.unitNames[line.unit]), zone)],
  ]
  if (line.explanation !== null) {
    rows.push(
      [t('faults.sure'), t('faults.sure.of', { percent: Math.round(line.confidence * 100) })],
      [t('faults.source'), say(`explanation-source.${line.explanation.rule}`)],
    )
  }
  if (line.evidence.length > 0)
    rows.push([t('faults.evidence'), line.evidence.map((one) => evidenceWords(one, zone)).join('; ')])
  return (
    <div className={css.detail}>
      {compared && (
        <div className={css.customer}>
          <p className={css.customerHead}>{t('faults.customer')}</p>
          <p>
            <strong>{say(`fault-class.${line.class}`)}.</strong> {say(`fault-means.${line.class}`)}
            {line.explanation !== null && ` ${say(`explanation.${line.explanation.rule}`)}`}
          </p>
        </div>
      )}
      <Facts rows={rows} />
      {known !== undefined ? (
        <p className={css.known}>{t('faults.known', { signer: known.signer, words: known.words })}</p>
      ) : (
        compared &&
        line.needsAttention && (
          <>
            <Acknowledge unit={line.unit} code={line.code} />
            <UnitRole unit={line.unit} />
          </>
        )
      )}
    </div>
  )
}

function Claims({ line }: { readonly line: FaultLine }) {
  return (
    <ul>
      {line.life.map((state) => (
        <li key={state.phase}>
          {say(`phase.${state.phase}`)}:{' '}
          {state.claims.length === 0
            ? say('claim.none')
            : state.claims.map((claim) => say(`claim.${claim}`)).join(listMark())}
        </li>
      ))}
    </ul>
  )
}

function whenWords(bounds: Bounds, zone: string): string {
  const at = ({ phase, at: instant }: { readonly phase: ScanPhase; readonly at: string | null }) =>
    instant === null
      ? say(`phase.${phase}`)
      : t('faults.when.at', {
          phase: say(`phase.${phase}`),
          day: day(instant, zone),
          time: clock(instant, zone),
        })
  if (bounds.with === null) return '-'
  if (bounds.without === null) {
    const key = bounds.with.phase === 'before' ? 'faults.when.before' : 'faults.when.unread'
    return t(key, { with: at(bounds.with) })
  }
  const between = t('faults.when.between', { without: at(bounds.without), with: at(bounds.with) })
  return bounds.untested ? `${between} ${t('faults.when.untested')}` : between
}
