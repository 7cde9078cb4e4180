import type { Body } from '@shearline/jobfile'
import type { Interruption, Recovery as Way } from '@shearline/keywork'
import { useMemo, useState } from 'react'
import { Choice } from '../../form/Choice.tsx'
import formCss from '../../form/form.module.css'
import { Words } from '../../form/Words.tsx'
import { useDesk } from '../../job/desk.ts'
import { ifItStops, keysSentence } from '../../job/if-it-stops.ts'
import { Part, RecordForm } from '../../job/Part.tsx'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { planOf } from '../plan-of.ts'
import { lasting } from '../rehearsal/lasting.ts'
import { interruptionOf } from '../rehearsal/marks.ts'
import { StopShape } from '../rehearsal/StopShape.tsx'
import { useRehearsed } from '../rehearsal/useRehearsed.ts'
import { stepsOf } from '../rehearsal/way-words.ts'
import { isNoteOf } from '../step-code.ts'
import css from '../teaching.module.css'
import { sessionOrder } from '../teaching-order.ts'
import { RecoverySteps } from './RecoverySteps.tsx'
import { TakeBack } from './TakeBack.tsx'

type Goal = 'going' | 'finished'

/** It stopped: what holds now by the rule, and exactly this state's way back, one step at a time. */
export function Recovery({ breakOff }: { readonly breakOff: Body<'broke-off'> }) {
  const { state } = useDesk()
  const { shown, order } = sessionOrder(state)
  const plan = useMemo(() => planOf(state, order), [state, order])
  const rehearsed = useRehearsed(plan, 'given')
  const step = breakOff.step ?? shown.at(-1) ?? 'open'
  const stop = rehearsed == null ? null : interruptionOf(rehearsed, breakOff, step)
  const now = ifItStops(state)
  const before = plan.keys
    .filter((key) => key.onBench === true && plan.stored.includes(key.identity))
    .map((key) => key.id)
  return (
    <section
      className={css.recovery}
      aria-label={t('mend.title', { after: breakOff.after })}
      data-need="break-off-open"
    >
      <h3 className={css.guideStep}>{t('mend.title', { after: breakOff.after })}</h3>
      <p>{t('mend.why', { why: say(`break.${breakOff.why}`) })}</p>
      <p className={css.holds}>
        {stop !== null && (
          <StopShape
            mark={
              stop.stranded ? 'stranded' : before.every((key) => stop.starts.includes(key)) ? 'safe' : 'loses'
            }
          />
        )}
        <span>
          {t('recover.by-rule')} {stop === null ? now.keys : keysSentence(stop, plan)}
        </span>
      </p>
      {rehearsed === undefined && <p role="status">{t('rehearsal.working')}</p>}
      {stop === null && rehearsed !== undefined && <p>{t('recover.not-known')}</p>}
      {stop !== null && <ChooseWay stop={stop} after={breakOff.after} />}
      <Otherwise />
      <div className={formCss.foot}>
        <span className={css.under}>{t('recover.mistake')}</span>
        <TakeBack kind="broke-off" />
      </div>
    </section>
  )
}

function ChooseWay({ stop, after }: { readonly stop: Interruption; readonly after: string }) {
  const { stepsSince } = useDesk().state.teaching
  const [chosen, setChosen] = useState<Goal | null>(null)
  const begun = (way: Way | null) =>
    way !== null && stepsOf(way).some(({ code }) => stepsSince.some((step) => isNoteOf(step, code)))
  const usual: Goal =
    stop.finished === null || (begun(stop.going) && !begun(stop.finished)) ? 'going' : 'finished'
  const goal = chosen ?? usual
  const way = stop[goal]
  const words = (one: Way | null) =>
    one === null
      ? say('recovery-way.none')
      : t('way.in', { way: say(`recovery-way.${one.way}`), time: lasting(one.seconds) })
  return (
    <>
      {way === null ? <p>{t('recover.none')}</p> : <RecoverySteps key={goal} way={way} after={after} />}
      <Choice
        label={t('recover.goal')}
        value={goal}
        onChange={setChosen}
        options={[
          ['finished', `${t('way.finished')} ${words(stop.finished)}`],
          ['going', `${t('way.going')} ${words(stop.going)}`],
        ]}
      />
    </>
  )
}

/** Mended in another way than the rule says; how is said in writing. */
function Otherwise() {
  const [how, setHow] = useState('')
  return (
    <Part title={t('recover.otherwise')} settled more={t('recover.otherwise.more')}>
      <RecordForm submit={t('record')} drafts={() => [{ kind: 'break-off-mended', body: { how } }]}>
        <p>{t('mend.first')}</p>
        <Words label={t('mend.how')} hint={t('mend.how.hint')} value={how} onChange={setHow} />
      </RecordForm>
    </Part>
  )
}
