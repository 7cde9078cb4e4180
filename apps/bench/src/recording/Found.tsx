import type { Finding } from '@shearline/bus'
import { secretSealed } from '@shearline/jobfile'
import { type FormEvent, useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { Facts } from '../job/Facts.tsx'
import type { Draft } from '../sync/write.ts'
import { sealRecording } from '../vault/work.ts'
import { number, size } from '../words/amounts.ts'
import { listMark } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { keepStrip } from './beside.ts'
import { KeepSealed } from './KeepSealed.tsx'
import css from './recording.module.css'
import { StripPicture } from './StripPicture.tsx'
import { type Decoded, type Which, whiches } from './worker-messages.ts'

/** What a recording holds, said before anything is recorded, and the question which scan it is. */
export function Found({
  file,
  decoded,
  askColumns,
  remembered,
  onClose,
}: {
  readonly file: File
  readonly decoded: Decoded
  /** Asks again which column holds what; null for what is no table. */
  readonly askColumns: (() => void) | null
  /** The columns were chosen for this header before. */
  readonly remembered: boolean
  readonly onClose: () => void
}) {
  const { record, state } = useDesk()
  const readable = decoded.format !== 'unknown'
  const offered = decoded.scannedUnits > 0 ? whiches : (['keep'] as const)
  const [which, setWhich] = useState<Which | null>(offered.length === 1 ? 'keep' : null)
  const [sealTo, setSealTo] = useState<readonly string[] | null>(null)
  const [problem, setProblem] = useState('')
  const [busy, setBusy] = useState(false)
  const again = state.recordings.some((recording) => recording.blob === decoded.kept.sha256)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    if (which === null) return
    setBusy(true)
    try {
      const drafts = decoded.facts[which].map(({ kind, body }) => ({ kind, body }) as Draft)
      const blobs = [{ ...decoded.kept, sent: false }]
      if (sealTo !== null) {
        const { kept, sealed } = await sealRecording(file, sealTo)
        drafts.push(secretSealed(kept))
        blobs.push({ sha256: kept.blob, blob: sealed, name: t('vault.sealed-file'), sent: false })
      }
      await record(drafts, blobs)
      // Only a quicker way to what is kept: without it the strip is made anew from the messages.
      await keepStrip(decoded.kept.sha256, decoded.strip).catch(() => undefined)
      onClose()
    } catch (error) {
      setProblem(problemWords(error))
      setBusy(false)
    }
  }
  if (!readable) {
    return (
      <>
        <p role="alert">{t('recording.unknown', { reason: decoded.reason })}</p>
        <div className={formCss.foot}>
          <button type="button" className={formCss.plain} onClick={onClose}>
            {t('close')}
          </button>
        </div>
      </>
    )
  }
  return (
    <form className={formCss.dialogBody} onSubmit={(event) => void keep(event)}>
      <p role="status">{t('recording.format', { format: decoded.format, reason: decoded.reason })}</p>
      {askColumns !== null && (
        <div className={formCss.foot}>
          <button type="button" className={formCss.plain} onClick={askColumns}>
            {t('columns.again')}
          </button>
          {remembered && <span className={css.hint}>{t('columns.as-before')}</span>}
        </div>
      )}
      {decoded.messages > 0 && <StripPicture strip={decoded.strip} />}
      <Facts
        rows={[
          [t('recording.size'), size(decoded.bytes)],
          [t('recording.frames'), number(decoded.frames)],
          [
            t('recording.messages'),
            t('recording.messages.of', { count: decoded.messages, incomplete: decoded.incomplete }),
          ],
          [
            t('recording.units'),
            decoded.units.length === 0 ? '-' : <code key="units">{decoded.units.join(' ')}</code>,
          ],
          [
            t('recording.faults'),
            t('recording.faults.of', { faults: decoded.faults, units: decoded.scannedUnits }),
          ],
        ]}
      />
      <Vins decoded={decoded} vin={state.vin} />
      <Findings decoded={decoded} />
      {again && <p className={formCss.problem}>{t('recording.again')}</p>}
      <Choice
        label={t('recording.which')}
        hint={offered.length === 1 ? t('recording.no-scan') : t('recording.which.hint')}
        value={which}
        onChange={setWhich}
        options={offered.map((one) => [one, t(`recording.which.${one}`)])}
      />
      <p className={css.hint}>{t('recording.kept-as-is')}</p>
      <KeepSealed to={sealTo} onChange={setSealTo} />
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={formCss.foot}>
        <button type="submit" className={formCss.submit} disabled={busy}>
          {busy && sealTo !== null ? t('vault.seal.busy') : t('recording.record')}
        </button>
        <button type="button" className={formCss.plain} onClick={onClose}>
          {t('recording.leave')}
        </button>
      </div>
    </form>
  )
}

function Vins({ decoded, vin }: { readonly decoded: Decoded; readonly vin: string | null }) {
  const distinct = [...new Set(decoded.vins.map((heard) => heard.vin))]
  return (
    <>
      {distinct.map((heard) => (
        <p key={heard}>
          {t('recording.vin')} <code>{heard}</code>{' '}
          {vin !== null && (heard === vin ? t('recording.vin.same') : t('recording.vin.differs', { vin }))}
        </p>
      ))}
      {decoded.notVins.map((heard) => (
        <p key={`${heard.unit} ${heard.text}`}>
          {t('recording.not-vin', { unit: heard.unit, text: heard.text })}
        </p>
      ))}
    </>
  )
}

/** Where in the file a finding stands: `line 6, byte 412`. */
function place({ line, byteOffset, part }: Finding['where']): string {
  const words = [
    ...(part === undefined ? [] : [part]),
    ...(line === undefined ? [] : [t('where.line', { line })]),
    ...(byteOffset === undefined ? [] : [t('where.byte', { byte: byteOffset })]),
  ]
  return words.join(listMark())
}

function Findings({ decoded }: { readonly decoded: Decoded }) {
  const count = decoded.findings.length + decoded.moreFindings
  if (count === 0) return <p>{t('recording.clean')}</p>
  const worst = decoded.findings.find((finding) => finding.severity === 'error')
  return (
    <>
      {worst !== undefined && (
        <p className={formCss.problem}>
          {t('recording.left-out', { count: decoded.leftOut })}{' '}
          {t('recording.left-out.first', { where: place(worst.where), what: worst.what })}
        </p>
      )}
      <details className={formCss.more}>
        <summary>{t('recording.findings', { count })}</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
        <ul className={css.findings} tabIndex={0}>
          {decoded.findings.map((finding, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: findings are read once and never reordered
            <li key={index}>
              <code>{place(finding.where)}</code> {finding.what}{' '}
              <span className={css.hint}>{finding.doNext}</span>
            </li>
          ))}
          {decoded.moreFindings > 0 && (
            <li>{t('recording.more-findings', { count: decoded.moreFindings })}</li>
          )}
        </ul>
      </details>
    </>
  )
}
