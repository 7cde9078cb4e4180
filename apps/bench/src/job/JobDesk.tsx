import type { ChapterName, TumblerName } from '@shearline/jobfile'
import { startTransition, useEffect, useEffectEvent, useState } from 'react'
import { Doubts } from '../custody/Doubts.tsx'
import { Cylinder } from '../cylinder/Cylinder.tsx'
import { ownDevice } from '../device/self.ts'
import { chosenKeyOf } from '../keys/chosen-key.ts'
import { DropRecording } from '../recording/DropRecording.tsx'
import { SharedHere } from '../shared/SharedHere.tsx'
import { t } from '../words/index.ts'
import { Chapters } from './Chapters.tsx'
import { homeOf } from './chapter-of.ts'
import { type Desk, DeskProvider, type Target } from './desk.ts'
import { IfItStops } from './IfItStops.tsx'
import { JobHead } from './JobHead.tsx'
import css from './job.module.css'
import { LivePicture } from './LivePicture.tsx'
import { NextBar } from './NextBar.tsx'
import type { OpenJob } from './useJob.ts'
import { useReach } from './useReach.ts'
import { useRecord } from './useRecord.tsx'

/** The page of one job: its cylinder, its chapters, the live picture, and the one next step at the thumb. */
export function JobDesk({ job, open }: { readonly job: string; readonly open: OpenJob }) {
  const { state, facts, unsent } = open
  const [by, setBy] = useState('')
  const [shown, setShown] = useState<ReadonlySet<ChapterName>>(() => new Set([state.next.chapter]))
  const [chosen, setChosen] = useState<TumblerName | null>(null)
  const reach = useReach()
  const { record, signedBy, asking } = useRecord(job, by, setBy)

  useEffect(() => {
    ownDevice().then(
      (self) => setBy(self.by),
      () => undefined,
    )
  }, [])

  const goTo = (target: Target) => {
    setShown(new Set([target.chapter]))
    reach(target)
  }
  // A tag that was read on the board or in another job led here.
  const tagged = useEffectEvent(() => {
    const id = chosenKeyOf(job)
    const key = state.keys.find((one) => one.id === id)
    if (key === undefined) return
    goTo({
      chapter: key.origin === 'new' ? 'prepare' : 'arrival',
      need: 'key-card',
      params: { key: key.id },
    })
  })
  useEffect(() => tagged(), [])
  const choose = (name: TumblerName) => {
    const need = state.tumblers.find((tumbler) => tumbler.name === name)?.needs[0]
    // Everything on the page looks at what is chosen: it is drawn while the page goes on listening.
    startTransition(() => {
      setChosen(name)
      goTo({ chapter: need?.chapter ?? homeOf(name), need: null, params: {} })
    })
  }
  const desk: Desk = {
    job,
    state,
    facts,
    unsent,
    by,
    zone: state.opened?.zone ?? 'UTC',
    record,
    signedBy,
    goTo: (target) => {
      setChosen(null)
      goTo(target)
    },
    chosen,
  }
  const live = <LivePicture />
  return (
    <DeskProvider value={desk}>
      <DropRecording>
        <div className={css.page}>
          <JobHead />
          <div className={css.stand}>
            <SharedHere />
            <div className={css.cylinderCard}>
              <Cylinder tumblers={state.tumblers} inLine={state.inLine} chosen={chosen} onChoose={choose} />
              {state.inLine && <p className={css.turned}>{t('cylinder.turned')}</p>}
            </div>
            <Doubts />
            <IfItStops />
          </div>
          <Chapters
            shown={shown}
            onToggle={(name) => {
              setShown((before) => {
                const next = new Set(before)
                if (!next.delete(name)) next.add(name)
                return next
              })
            }}
          />
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
          <aside className={css.live} aria-label={t('live.title')} tabIndex={0}>
            {live}
          </aside>
        </div>
        <NextBar />
        {asking}
      </DropRecording>
    </DeskProvider>
  )
}
