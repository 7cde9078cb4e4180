import type { Caution } from '@shearline/jobfile'
import { useDesk } from '../job/desk.ts'
import { Part } from '../job/Part.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { CautionCard } from './CautionCard.tsx'
import css from './cautions.module.css'

/** Every caution this job calls for, read or not, before the car is handed over. */
export function Cautions() {
  const { state } = useDesk()
  return (
    <Part title={t('cautions.title')} need="caution-not-read">
      <ul className={css.cards}>
        {state.cautionsWanted.map((caution) => (
          <CautionCard key={caution} caution={caution as Caution} need />
        ))}
      </ul>
      <p className={css.defers}>{say('caution.defers')}</p>
    </Part>
  )
}
