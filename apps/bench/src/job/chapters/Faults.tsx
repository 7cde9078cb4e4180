import type { ScanPhase } from '@shearline/keywork'
import { Clearing } from '../../faults/clearing/Clearing.tsx'
import { WhoMissesWhom } from '../../faults/graph/WhoMissesWhom.tsx'
import { FaultLives } from '../../faults/lives/FaultLives.tsx'
import { KeptReports } from '../../faults/report/KeptReports.tsx'
import { ScanIn } from '../../faults/ScanIn.tsx'
import { UnitsAsked } from '../../faults/UnitsAsked.tsx'
import { t } from '../../words/index.ts'
import { useDesk } from '../desk.ts'
import { Part } from '../Part.tsx'

const later: readonly ScanPhase[] = ['after', 'cleared', 'cycled']

/** Faults over the scans of the job: what was there, what the work raised, what nobody can explain. */
export function FaultsChapter() {
  const { state } = useDesk()
  const phases = new Set(state.scans.map((scan) => scan.phase))
  const after = phases.has('after') || phases.has('cycled')
  const some = state.faults.faults.length > 0
  return (
    <>
      <Part
        title={t('scan.after')}
        need="scan-after-missing scan-cycled-missing"
        settled={after && !(phases.has('cleared') && !phases.has('cycled'))}
        more={t('scan.again')}
        about={
          <>
            <p>{after ? t('scan.after.there') : t('scan.after.why')}</p>
            <KeptReports phases={later} />
          </>
        }
      >
        <ScanIn phases={later} />
      </Part>
      <UnitsAsked />
      {some && (
        <Part title={after ? t('faults.lines') : t('faults.so-far')}>
          <FaultLives />
        </Part>
      )}
      {after && !some && <p>{t('faults.none')}</p>}
      {after && some && <WhoMissesWhom />}
      {after && some && <Clearing />}
    </>
  )
}
