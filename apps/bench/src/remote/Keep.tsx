import type { BodyInput } from '@shearline/jobfile'
import type { RemoteComparison, RemoteMeasurement } from '@shearline/keywork'
import { useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import { useDesk } from '../job/desk.ts'
import { RecordForm } from '../job/Part.tsx'
import { t } from '../words/index.ts'
import css from './remote.module.css'

/** Puts the verdict on record; the recordings are not. */
export function Keep({
  comparison,
  original,
  fresh,
}: {
  readonly comparison: RemoteComparison
  readonly original: RemoteMeasurement
  readonly fresh: RemoteMeasurement
}) {
  const { state } = useDesk()
  const [first, setFirst] = useState<string | null>(null)
  const [second, setSecond] = useState<string | null>(null)
  // Which comparison was recorded: another pair of recordings is another result.
  const [recorded, setRecorded] = useState<RemoteComparison | null>(null)
  const keysOf = (origin: 'existing' | 'new') =>
    state.keys.filter((key) => key.origin === origin).map(({ id }) => [id, id] as const)
  const [existing, added] = [keysOf('existing'), keysOf('new')]
  return (
    <section className={css.part}>
      <h3 className={css.partName}>{t('remote.keep')}</h3>
      <p className={css.quiet}>{t('remote.keep.note')}</p>
      {recorded === comparison ? (
        <p role="status">{t('remote.recorded')}</p>
      ) : (
        <RecordForm
          submit={t('remote.record')}
          onDone={() => setRecorded(comparison)}
          drafts={() => [
            {
              kind: 'remote-compared',
              body: {
                verdict: comparison.verdict,
                reasons: comparison.reasons.map(({ code, points, side }) => ({ code, points, side })),
                original: measuredOf(original, first),
                fresh: measuredOf(fresh, second),
              },
            },
          ]}
        >
          {existing.length > 0 && (
            <Choice
              label={t('remote.key.original')}
              options={existing}
              value={first}
              onChange={setFirst}
              optional
            />
          )}
          {added.length > 0 && (
            <Choice
              label={t('remote.key.new')}
              options={added}
              value={second}
              onChange={setSecond}
              optional
            />
          )}
        </RecordForm>
      )}
    </section>
  )
}

function measuredOf(
  { sender }: RemoteMeasurement,
  key: string | null,
): BodyInput<'remote-compared'>['original'] {
  return {
    modulation: sender?.modulation ?? 'unsure',
    carrierHertz: sender?.carrierHz ?? null,
    deviationHertz: sender?.deviationHz ?? null,
    symbolsPerSecond: sender?.symbolRate ?? null,
    snrDecibels: sender?.snrDb ?? null,
    ...(key === null ? {} : { key }),
  }
}
