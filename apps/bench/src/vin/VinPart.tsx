import type { JobState, VinOnRecord } from '@shearline/jobfile'
import { proposeRepairs, readVin, sameVin, tidyVin } from '@shearline/keywork'
import { useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import jobCss from '../job/job.module.css'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { RecordLine } from '../job/RecordLine.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import css from './vin.module.css'

const sources = ['glass', 'plate', 'document', 'bus'] as const

/** The VIN from every source, one under the other, so that a different character is seen at once. */
export function VinPart() {
  const { state } = useDesk()
  const { vins, vin } = state
  const [fresh, renew] = useFresh()
  const agreement = sameVin(vins.map((reading) => ({ source: reading.source, text: reading.vin })))
  const settled = vin !== null && new Set(vins.map((reading) => reading.source)).size > 1
  const malformed = vins
    .filter((reading) => !reading.wellFormed)
    .map((reading) => `vin-not-well-formed:${reading.source}`)
  return (
    <Part
      title={t('vin.title')}
      need={['vin-missing vin-second-source vin-sources-disagree vin-not-well-formed', ...malformed].join(
        ' ',
      )}
      settled={settled}
      more={t('vin.again')}
      about={
        vins.length > 0 && (
          <>
            <dl className={css.vins}>
              {grouped(vins).map(({ source, vin: text, count }) => (
                <div key={`${source} ${text}`}>
                  <dt>{t('vin.from', { source: say(`vin-source.${source}`), count })}</dt>
                  <dd className="mono">
                    <MarkedVin vin={text} positions={agreement.positions} />
                  </dd>
                </div>
              ))}
            </dl>
            <p>{t(`vin.${agreement.verdict}`, { count: agreement.positions.length })}</p>
            {agreement.verdict === 'conflict' && <Readings />}
          </>
        )
      }
    >
      <VinForm key={fresh} onDone={renew} />
    </Part>
  )
}

/** The same reading from the same source once, with how often it was read. */
function grouped(vins: JobState['vins']) {
  const groups = new Map<string, { source: VinOnRecord['source']; vin: string; count: number }>()
  for (const { source, vin } of vins) {
    const key = `${source} ${vin}`
    groups.set(key, { source, vin, count: (groups.get(key)?.count ?? 0) + 1 })
  }
  return [...groups.values()]
}

/** Every reading with the way to withdraw it, for when they differ. */
function Readings() {
  const { facts } = useDesk()
  return (
    <ol className={jobCss.record}>
      {facts
        .filter((fact) => fact.kind === 'vin-read')
        .map((fact) => (
          <RecordLine key={fact.id} fact={fact} />
        ))}
    </ol>
  )
}

/** Differing characters are boxed, not coloured. */
function MarkedVin({ vin, positions }: { readonly vin: string; readonly positions: readonly number[] }) {
  return [...vin].map((character, index) =>
    positions.includes(index + 1) ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: a VIN's characters are told apart by their position
      <mark key={index} className={css.differs}>
        {character}
      </mark>
    ) : (
      character
    ),
  )
}

function VinForm({ onDone }: { readonly onDone: () => void }) {
  const [source, setSource] = useState<(typeof sources)[number] | null>(null)
  const [text, setText] = useState('')
  const reading = readVin(text)
  const long = tidyVin(text).length
  const repairs =
    long === 17 && !(reading.wellFormed && reading.checkDigit?.ok === true)
      ? proposeRepairs(text).slice(0, 3)
      : []
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => (source === null ? null : [{ kind: 'vin-read', body: { source, vin: tidyVin(text) } }])}
    >
      <Choice
        label={t('vin.source')}
        value={source}
        onChange={setSource}
        options={sources.map((one) => [one, say(`vin-source.${one}`)])}
      />
      <Words
        label={t('vin.text')}
        hint={long === 0 ? t('vin.text.hint') : t('vin.length', { count: long })}
        value={text}
        onChange={(value) => setText(value.toUpperCase())}
        maxLength={40}
        mono
      />
      {long === 17 && (
        <p className={formCss.hint} role="status">
          {reading.wellFormed ? t('vin.well-formed') : t('vin.not-well-formed')}{' '}
          {reading.checkDigit !== null &&
            t(reading.checkDigit.ok ? 'vin.check.ok' : 'vin.check.other', {
              expected: reading.checkDigit.expected,
            })}
        </p>
      )}
      {repairs.length > 0 && (
        <div className={formCss.field}>
          <span className={formCss.label}>{t('vin.repairs')}</span>
          <div className={formCss.choices}>
            {repairs.map((repair) => (
              <button
                key={repair.vin}
                type="button"
                className={formCss.plain}
                onClick={() => setText(repair.vin)}
              >
                <span className="mono">
                  <MarkedVin vin={repair.vin} positions={repair.changes.map((change) => change.position)} />
                </span>
              </button>
            ))}
          </div>
        </div>
      )}
    </RecordForm>
  )
}
