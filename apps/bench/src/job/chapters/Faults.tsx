import { useState } from 'react'
import { ClearRequest } from '../../faults/ClearRequest.tsx'
import { FaultLines } from '../../faults/FaultLines.tsx'
import { TypedScan } from '../../faults/TypedScan.tsx'
import formCss from '../../form/form.module.css'
import { ImportRecording } from '../../recording/ImportRecording.tsx'
import { t } from '../../words/index.ts'
import { useDesk } from '../desk.ts'
import { Part } from '../Part.tsx'

/** Faults over the scans of the job: what was there, what the work raised, what nobody can explain. */
export function FaultsChapter() {
  const { state } = useDesk()
  const phases = new Set(state.scans.map((scan) => scan.phase))
  const after = phases.has('after') || phases.has('cycled')
  const [clearing, setClearing] = useState(false)
  return (
    <>
      <Part
        title={t('scan.after')}
        need="scan-after-missing scan-cycled-missing"
        settled={after && !(phases.has('cleared') && !phases.has('cycled'))}
        more={t('scan.again')}
        about={<p>{after ? t('scan.after.there') : t('scan.after.why')}</p>}
      >
        <ImportRecording />
        <TypedScan phases={['after', 'cleared', 'cycled']} />
      </Part>
      {state.faults.faults.length > 0 && (
        <Part title={after ? t('faults.lines') : t('faults.so-far')}>
          <FaultLines />
        </Part>
      )}
      {after && state.faults.faults.length === 0 && <p>{t('faults.none')}</p>}
      {after && state.faults.faults.length > 0 && (
        <Part title={t('clear.title')} about={<p>{t('clear.what')}</p>}>
          {clearing ? (
            <ClearRequest onDone={() => setClearing(false)} />
          ) : (
            <div className={formCss.foot}>
              <button type="button" className={formCss.plain} onClick={() => setClearing(true)}>
                {t('clear.ask')}
              </button>
            </div>
          )}
        </Part>
      )}
    </>
  )
}
