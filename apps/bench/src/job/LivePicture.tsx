import { LiveGrid } from '../keys/LiveGrid.tsx'
import { RecordingStrip } from '../recording/RecordingStrip.tsx'
import { SupplyChart } from '../supply/SupplyChart.tsx'
import { t } from '../words/index.ts'
import { useDesk } from './desk.ts'
import css from './job.module.css'

/** What people would rather look at: the keys and what each can do, the supply, the recordings. */
export function LivePicture() {
  const { state, zone } = useDesk()
  return (
    <>
      <section className={css.liveCard} aria-labelledby="live-keys">
        <h2 className={css.liveTitle} id="live-keys">
          {t('live.keys')}
        </h2>
        <LiveGrid />
      </section>
      <section className={css.liveCard} aria-labelledby="live-supply">
        <h2 className={css.liveTitle} id="live-supply">
          {t('live.supply')}
        </h2>
        <SupplyChart supply={state.supply} zone={zone} />
      </section>
      {state.recordings.length > 0 && (
        <section className={css.liveCard} aria-labelledby="live-recordings">
          <h2 className={css.liveTitle} id="live-recordings">
            {t('live.recordings')}
          </h2>
          {state.recordings.map((recording) => (
            <RecordingStrip key={`${recording.blob}${recording.at}`} recording={recording} />
          ))}
        </section>
      )}
    </>
  )
}
