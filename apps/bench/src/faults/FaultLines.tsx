import type { FaultClass, FaultLine, ScanPhase } from '@shearline/keywork'
import { useDesk } from '../job/desk.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { Acknowledge } from './Acknowledge.tsx'
import css from './faults.module.css'
import { LifeShape, lifeWord } from './LifeShape.tsx'
import { UnitRole } from './UnitRole.tsx'

const phases: readonly ScanPhase[] = ['before', 'after', 'cleared', 'cycled']

/** Classes in the order a person wants them: what needs a decision first. */
const classes: readonly FaultClass[] = [
  'new-unexplained',
  'raised-by-work',
  'not-comparable',
  'there-before-back',
  'there-before-still',
  'permanent',
  'there-before-gone',
]

/** Scans as columns; every fault a strand running through them, grouped by what may be said of it. */
export function FaultLines() {
  const { state } = useDesk()
  const taken = phases.filter((phase) => state.scans.some((scan) => scan.phase === phase))
  if (taken.every((phase) => phase === 'before')) {
    // With one scan there is nothing to compare: what was there is shown, and nothing is claimed of it.
    return (
      <ul className={css.lines}>
        {state.faults.faults.map((line) => (
          <li key={`${line.unit} ${line.code}`}>
            <Line line={line} taken={taken} settle={false} />
          </li>
        ))}
      </ul>
    )
  }
  return (
    <div className={css.groups}>
      {classes.map((name) => {
        const lines = state.faults.faults.filter((line) => line.class === name)
        if (lines.length === 0) return null
        return (
          <section key={name} className={css.group}>
            <h4 className={css.groupTitle}>
              {say(`fault-class.${name}`)} <span className={css.count}>{lines.length}</span>
            </h4>
            <p className={css.means}>{say(`fault-means.${name}`)}</p>
            <ul className={css.lines}>
              {lines.map((line) => (
                <li key={`${line.unit} ${line.code}`}>
                  <Line line={line} taken={taken} settle />
                </li>
              ))}
            </ul>
          </section>
        )
      })}
    </div>
  )
}

function Line({
  line,
  taken,
  settle,
}: {
  readonly line: FaultLine
  readonly taken: readonly ScanPhase[]
  readonly settle: boolean
}) {
  const { state } = useDesk()
  const known = state.acknowledged.find((one) => one.unit === line.unit && one.code === line.code)
  return (
    <div
      className={css.line}
      data-need={`fault-unexplained:${line.code} fault-from-work-remains:${line.code} unit-not-compared:${line.code}`}
    >
      <div className={css.lineHead}>
        <code className={css.code}>{line.code}</code>
        <span>{t('faults.unit', { unit: line.unit })}</span>
        {line.airbag && <span className={css.airbag}>{say('caution.airbag')}</span>}
      </div>
      <ol className={css.life}>
        {taken.map((phase) => {
          const at = line.life.find((state) => state.phase === phase)
          return (
            <li key={phase}>
              <LifeShape state={at} />
              <span className={css.phase}>{say(`phase.${phase}`)}</span>
              <span className={css.claim}>{lifeWord(at)}</span>
            </li>
          )
        })}
      </ol>
      {line.explanation !== null && <p className={css.means}>{line.explanation.text}</p>}
      {known !== undefined ? (
        <p className={css.known}>{t('faults.known', { signer: known.signer, words: known.words })}</p>
      ) : (
        settle &&
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
