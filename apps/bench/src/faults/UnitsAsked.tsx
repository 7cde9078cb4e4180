import { useDesk } from '../job/desk.ts'
import { Part, RecordForm } from '../job/Part.tsx'
import { t } from '../words/index.ts'
import css from './scan-in.module.css'

/** Names in the scans that may mean one control unit: a person says whether they do. Nothing is joined before. */
export function UnitsAsked() {
  const { findings } = useDesk().state.faults
  const pairs = findings.filter(({ code }) => code === 'units-perhaps-one')
  if (pairs.length === 0) return null
  return (
    <Part title={t('units.ask.title')}>
      {pairs.map(({ params: { unit = '', other = '' } }) => (
        <div key={`${unit}\n${other}`}>
          <p>{t('units.ask', { unit, other })}</p>
          <div className={css.answers}>
            {([true, false] as const).map((same) => (
              <RecordForm
                key={String(same)}
                submit={t(same ? 'units.ask.same' : 'units.ask.two')}
                drafts={() => [{ kind: 'unit-matched', body: { unit, other, same } }]}
              />
            ))}
          </div>
        </div>
      ))}
    </Part>
  )
}
