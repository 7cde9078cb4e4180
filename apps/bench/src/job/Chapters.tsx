import { type ChapterName, chapterNames, type JobState } from '@shearline/jobfile'
import { type ComponentType, memo, useDeferredValue, useId } from 'react'
import { DueHere } from '../cautions/DueHere.tsx'
import { TeachChapter } from '../teaching/guide/TeachChapter.tsx'
import { chapterWord } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { ArrivalChapter } from './chapters/Arrival.tsx'
import { AuthorityChapter } from './chapters/Authority.tsx'
import { BackupChapter } from './chapters/Backup.tsx'
import { CallChapter } from './chapters/Call.tsx'
import { CloseChapter } from './chapters/Close.tsx'
import { FaultsChapter } from './chapters/Faults.tsx'
import { HandoverChapter } from './chapters/Handover.tsx'
import { PlanChapter } from './chapters/Plan.tsx'
import { PrepareChapter } from './chapters/Prepare.tsx'
import { ProveChapter } from './chapters/Prove.tsx'
import { useDesk } from './desk.ts'
import css from './job.module.css'
import { chapterLine } from './lines.ts'
import { OnRecord } from './OnRecord.tsx'
import { StillWanted, TappedTumbler } from './StillWanted.tsx'

/** A table keyed by every chapter, so that a new one without a page fails to compile. */
const pages: Readonly<Record<ChapterName, ComponentType>> = {
  call: CallChapter,
  authority: AuthorityChapter,
  arrival: ArrivalChapter,
  plan: PlanChapter,
  backup: BackupChapter,
  prepare: PrepareChapter,
  teach: TeachChapter,
  prove: ProveChapter,
  faults: FaultsChapter,
  handover: HandoverChapter,
  close: CloseChapter,
}

/** The stages in the order of the day: the present one open, earlier ones one line of fact, later ones quiet. */
export function Chapters({
  shown,
  onToggle,
}: {
  readonly shown: ReadonlySet<ChapterName>
  readonly onToggle: (name: ChapterName) => void
}) {
  return (
    <div className={css.chapters}>
      {chapterNames.map((name, index) => (
        <Chapter key={name} name={name} number={index + 1} open={shown.has(name)} onToggle={onToggle} />
      ))}
    </div>
  )
}

/** Draws itself anew when the record changes or it is opened or folded, never because another chapter was. */
const Chapter = memo(function Chapter({
  name,
  number,
  open,
  onToggle,
}: {
  readonly name: ChapterName
  readonly number: number
  readonly open: boolean
  readonly onToggle: (name: ChapterName) => void
}) {
  const { state } = useDesk()
  const id = useId()
  // The head answers the tap at once; a long chapter is built while the page goes on listening.
  const built = useDeferredValue(open, false)
  const wanted = wantedIn(state, name)
  const present = state.next.chapter === name
  const line = chapterLine(name, state)
  // Nothing of the last chapter is wanted by a tumbler: what it has to do is the next step once all else is done.
  const done = line !== '' && (name !== 'close' || state.next.code === 'nothing-left')
  return (
    <section
      id={`chapter-${name}`}
      className={css.chapter}
      data-place={present ? 'present' : line === '' ? 'later' : 'earlier'}
      data-open={open}
    >
      <h2 className={css.chapterHead}>
        <button type="button" aria-expanded={open} aria-controls={id} onClick={() => onToggle(name)}>
          <span className={css.number} aria-hidden="true">
            {number}
          </span>
          <span className={css.chapterWords}>
            <span className={css.chapterName}>{chapterWord(name)}</span>
            {!open && line !== '' && <span className={css.chapterLine}>{line}</span>}
          </span>
          <span className={css.wanted}>
            {wanted > 0 ? t('chapter.wanted', { count: wanted }) : done ? t('chapter.nothing') : ''}
          </span>
        </button>
      </h2>
      {built && <ChapterBody name={name} id={id} />}
    </section>
  )
})

const ChapterBody = memo(function ChapterBody({
  name,
  id,
}: {
  readonly name: ChapterName
  readonly id: string
}) {
  const Page = pages[name]
  return (
    <div id={id} className={css.chapterBody} data-built="">
      <TappedTumbler chapter={name} />
      <StillWanted chapter={name} />
      <DueHere chapter={name} />
      <Page />
      <OnRecord chapter={name} />
    </div>
  )
})

function wantedIn(state: JobState, name: ChapterName): number {
  let count = 0
  for (const tumbler of state.tumblers) for (const need of tumbler.needs) if (need.chapter === name) count++
  return count
}
