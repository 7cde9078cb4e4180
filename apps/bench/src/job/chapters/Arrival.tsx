import { KeptReports } from '../../faults/report/KeptReports.tsx'
import { ScanIn } from '../../faults/ScanIn.tsx'
import { Differences } from '../../keys/Differences.tsx'
import { FunctionGridTable } from '../../keys/FunctionGridTable.tsx'
import { KeyCards } from '../../keys/KeyCards.tsx'
import { KeyCount } from '../../keys/KeyCount.tsx'
import { Photos } from '../../photos/Photos.tsx'
import { SitePart } from '../../policy/SitePart.tsx'
import { FobCells } from '../../power/FobCells.tsx'
import { SupplyReading } from '../../supply/SupplyReading.tsx'
import { VinPart } from '../../vin/VinPart.tsx'
import { t } from '../../words/index.ts'
import { useDesk } from '../desk.ts'
import { Part } from '../Part.tsx'

/** On site, before anything is touched: the right car, every key labelled and tested, supply, count and scan. */
export function ArrivalChapter() {
  const { state } = useDesk()
  const scanned = state.scans.some((scan) => scan.phase === 'before')
  return (
    <>
      <SitePart />
      <VinPart />
      <KeyCards origin="existing" />
      <Photos title={t('photo.title')} />
      <SupplyReading during="rest" />
      <FobCells />
      <KeyCount when="before" />
      <Part title={t('grid.before')} need="tests-before-open">
        {state.keys.length === 0 ? <p>{t('grid.no-keys')}</p> : <FunctionGridTable phase="before" />}
      </Part>
      <Part
        title={t('scan.before')}
        need="scan-before-missing"
        settled={scanned}
        more={t('scan.again')}
        about={
          <>
            <p>{scanned ? t('scan.before.there') : t('scan.before.why')}</p>
            <KeptReports phases={['before']} />
          </>
        }
      >
        <ScanIn phases={['before']} />
      </Part>
      <Differences chapter="arrival" />
    </>
  )
}
