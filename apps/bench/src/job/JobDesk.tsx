import type { ChapterName, TumblerName } from '@shearline/jobfile'
import { startTransition, useCallback, useEffect, useEffectEvent, useMemo, useState } from 'react'
import { Doubts } from '../custody/Doubts.tsx'
import { Cylinder } from '../cylinder/Cylinder.tsx'
import { ownDevice } from '../device/self.ts'
import { chosenKeyOf } from '../keys/chosen-key.ts'
import { DropRecording } from '../recording/DropRecording.tsx'
import { SharedHere } from '../shared/SharedHere.tsx'
import { t } from '../words/index.ts'
import { Chapters } from './Chapters.tsx'
import { homeOf } from './chapter-of.ts'
import { type Desk, DeskProvider, TappedProvider, type Target, UnsentProvider } from './desk.ts'
import { IfItStops } from './IfItStops.tsx'
import { JobHead } from './JobHead.tsx'
import css from './job.module.css'
import { LivePicture } from './LivePicture.tsx'
import { NextBar } from './NextBar.tsx'
import type { OpenJob } from './useJob.ts'
import { useReach } from './useReach.ts'
import { useRecord } from './useRecord.tsx'

/** Parts that look at the record only: the same elements each time, so that a tap on the page does not draw them. */
const head = <JobHead />
const sharedHere = <SharedHere />
const doubts = <Doubts />
const ifItStops = <IfItStops />
const livePicture = <LivePicture />
const nextBar = <NextBar />

/** The page of one job: its cylinder, its chapters, the live picture, and the one next step at the thumb. */
export function JobDesk({ job, open }: { readonly job: string; readonly open: OpenJob }) {
  const { state, facts, unsent } = open
  const { tumblers } = state
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

  const show = useCallback(
    (target: Target) => {
      setShown(new Set([target.chapter]))
      reach(target)
    },
    [reach],
  )
  const goTo = useCallback(
    (target: Target) => {
      setChosen(null)
      show(target)
    },
    [show],
  )
  // A tag that was read on the board or in another job led here.
  const tagged = useEffectEvent(() => {
    const id = chosenKeyOf(job)
    const key = state.keys.find((one) => one.id === id)
    if (key === undefined) return
    show({
      chapter: key.origin === 'new' ? 'prepare' : 'arrival',
      need: 'key-card',
      params: { key: key.id },
    })
  })
  useEffect(() => tagged(), [])
  const choose = useCallback(
    (name: TumblerName) => {
      const need = tumblers.find((tumbler) => tumbler.name === name)?.needs[0]
      // That it was tapped is shown at once; the chapter it leads to is drawn while the page goes on listening.
      setChosen(name)
      startTransition(() => show({ chapter: need?.chapter ?? homeOf(name), need: null, params: {} }))
    },
    [tumblers, show],
  )
  const toggle = useCallback(
    (name: ChapterName) =>
      setShown((before) => {
        const next = new Set(before)
        if (!next.delete(name)) next.add(name)
        return next
      }),
    [],
  )
  const desk = useMemo(
    (): Desk => ({ job, state, facts, by, zone: state.opened?.zone ?? 'UTC', record, signedBy, goTo }),
    [job, state, facts, by, record, signedBy, goTo],
  )
  return (
    <DeskProvider value={desk}>
      <UnsentProvider value={unsent}>
        <TappedProvider value={chosen}>
          <DropRecording>
            <div className={css.page}>
              {head}
              <div className={css.stand}>
                {sharedHere}
                <div className={css.cylinderCard}>
                  <Cylinder tumblers={tumblers} inLine={state.inLine} chosen={chosen} onChoose={choose} />
                  {state.inLine && <p className={css.turned}>{t('cylinder.turned')}</p>}
                </div>
                {doubts}
                {ifItStops}
              </div>
              <Chapters shown={shown} onToggle={toggle} />
              {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
              <aside className={css.live} aria-label={t('live.title')} tabIndex={0}>
                {livePicture}
              </aside>
            </div>
            {nextBar}
            {asking}
          </DropRecording>
        </TappedProvider>
      </UnsentProvider>
    </DeskProvider>
  )
}
