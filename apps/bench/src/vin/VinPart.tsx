import type { JobState, VinOnRecord } from '@shearline/jobfile'
import { sameVin, tidyVin } from '@shearline/keywork'
import { lazy, Suspense, useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import jobCss from '../job/job.module.css'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { RecordLine } from '../job/RecordLine.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import type { PicturedVin } from './found-vin.ts'
import { MarkedVin } from './MarkedVin.tsx'
import { VinStanding } from './VinStanding.tsx'
import css from './vin.module.css'

/** The camera and the readers behind it come only when they are asked for. */
const ScanVin = lazy(() => import('./ScanVin.tsx'))

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
              {grouped(vins).map(({ source, picture, vin: text, count }) => (
                <div key={`${source} ${picture} ${text}`}>
                  <dt>
                    {t('vin.from', {
                      source: say(`vin-source.${source}`),
                      picture: picture ?? 'none',
                      count,
                    })}
                  </dt>
                  <dd className="mono">
                    <MarkedVin vin={text} positions={agreement.positions} />
                  </dd>
                </div>
              ))}
            </dl>
            <p>{t(`vin.${agreement.verdict}`, { count: agreement.positions.length })}</p>
            {malformed.length > 0 && <p className={formCss.problem}>{t('vin.malformed')}</p>}
            {(agreement.verdict === 'conflict' || malformed.length > 0) && <Readings />}
          </>
        )
      }
    >
      <VinForm key={fresh} onDone={renew} />
    </Part>
  )
}

/** The same reading from the same source in the same way once, with how often it was read. */
function grouped(vins: JobState['vins']) {
  const groups = new Map<string, Pick<VinOnRecord, 'source' | 'picture' | 'vin'> & { count: number }>()
  for (const { source, picture, vin } of vins) {
    const key = `${source} ${picture} ${vin}`
    groups.set(key, { source, picture, vin, count: (groups.get(key)?.count ?? 0) + 1 })
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

function VinForm({ onDone }: { readonly onDone: () => void }) {
  const [source, setSource] = useState<(typeof sources)[number] | null>(null)
  const [text, setText] = useState('')
  const [taken, setTaken] = useState<PicturedVin | null>(null)
  const long = tidyVin(text).length
  const [scanning, setScanning] = useState(false)
  return (
    <>
      <RecordForm
        submit={t('record')}
        onDone={onDone}
        drafts={() => {
          if (source === null) return null
          const vin = tidyVin(text)
          // What a person changed afterwards is their own reading, no longer the picture's.
          const picture = taken !== null && tidyVin(taken.vin) === vin ? { picture: taken.picture } : {}
          return [{ kind: 'vin-read', body: { source, vin, ...picture } }]
        }}
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
        <div>
          <button type="button" className={formCss.plain} onClick={() => setScanning(true)}>
            {t('vin.scan')}
          </button>
        </div>
        <VinStanding text={text} onRepair={setText} />
      </RecordForm>
      {scanning && (
        <Suspense fallback={null}>
          <ScanVin
            onTake={(found) => {
              setText(found.vin)
              setTaken(found)
              setScanning(false)
            }}
            onClose={() => setScanning(false)}
          />
        </Suspense>
      )}
    </>
  )
}
