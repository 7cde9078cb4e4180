import { type Fact, registerJob } from '@shearline/jobfile'
import { useEffect, useState } from 'react'
import { ownDevice } from '../device/self.ts'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { onChange } from '../sync/changes.ts'
import { listMark } from '../words/engine.ts'
import { t, type WordKey } from '../words/index.ts'
import css from './custody.module.css'
import { noDoubts, type RegisterDoubts, registerDoubts } from './doubts.ts'

const clockWords: ReadonlySet<string> = new Set([
  'before-its-predecessor',
  'before-what-it-names',
  'written-after-receipt',
  'in-the-future',
])

/** Quiet time before the register is asked again after a change, milliseconds. */
const restBefore = 600

/** What on this record contradicts clocks or the firm's register; nothing when all agrees. */
export function Doubts() {
  const { job, facts, state } = useDesk()
  const [doubts, setDoubts] = useState<RegisterDoubts>(noDoubts)
  useEffect(() => {
    let live = true
    let timer: ReturnType<typeof setTimeout> | undefined
    const ask = () => {
      clearTimeout(timer)
      timer = setTimeout(() => {
        ownDevice()
          .then((self) => registerDoubts(job, self.device))
          .then(
            (found) => live && setDoubts(found),
            () => undefined,
          )
      }, restBefore)
    }
    ask()
    // New facts may be of a device that is not trusted, and the register may have taken the trust from one.
    const stop = onChange((change) => {
      if (change.what === 'job' && (change.job === job || change.job === registerJob)) ask()
    })
    return () => {
      live = false
      clearTimeout(timer)
      stop()
    }
  }, [job])
  const lines = [
    ...(doubts.ownRevoked === null ? [] : [t('doubts.own-revoked', { because: doubts.ownRevoked })]),
    ...about('doubts.device-revoked', doubts.revoked, doubts.names),
    ...about('doubts.not-witnessed', doubts.notWitnessed, doubts.names),
    ...new Set(state.clocks.map((finding) => clockLine(finding, facts, doubts.names))),
  ]
  if (lines.length === 0) return null
  return (
    <section className={css.doubts} aria-label={t('doubts.title')} role="status">
      <strong>{t('doubts.title')}</strong>
      <ul className={formCss.field}>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  )
}

function about(key: WordKey, facts: readonly Fact[], names: ReadonlyMap<string, string>): readonly string[] {
  if (facts.length === 0) return []
  const devices = [...new Set(facts.map(({ device }) => names.get(device) ?? device))].join(listMark())
  return [t(key, { count: facts.length, devices })]
}

function clockLine(
  finding: { readonly code: string; readonly where: object },
  facts: readonly Fact[],
  names: ReadonlyMap<string, string>,
): string {
  const part = 'part' in finding.where ? String(finding.where.part) : ''
  const id = facts.find((fact) => part.includes(fact.device))?.device ?? part
  const device = names.get(id) ?? id
  const code = clockWords.has(finding.code) ? (finding.code as 'in-the-future') : 'other'
  return t(`doubts.clock.${code}`, { device })
}
