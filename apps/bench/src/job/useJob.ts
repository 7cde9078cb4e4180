import { compareFacts, type Fact, type JobState } from '@shearline/jobfile'
import { startTransition, useEffect, useMemo, useState } from 'react'
import { onChange } from '../sync/changes.ts'
import { foldOnce } from '../sync/fold-once.ts'
import { refresh } from '../sync/live.ts'
import { type JobFacts, keptFacts } from '../sync/read.ts'
import { proveDamaged } from './prove.ts'
import { sharing } from './sharing.ts'

/** Facts, state and what is not sent of one job; null while it is first read. */
export interface OpenJob {
  readonly facts: readonly Fact[]
  readonly unsent: ReadonlySet<string>
  readonly state: JobState
}

/** Quiet time before a changed chain is proven again, milliseconds. */
const restBeforeProving = 400

/** Reads a job from this device, folds it, proves its chain, and follows changes from here and elsewhere. */
export function useJob(job: string): { readonly open: OpenJob | null; readonly asked: boolean } {
  const [kept, setKept] = useState<JobFacts | null>(null)
  const [broken, setBroken] = useState(false)
  const [asked, setAsked] = useState(false)

  useEffect(() => {
    let live = true
    const read = async () => {
      const next = await keptFacts(job)
      // Folding and drawing a long job must not keep the next tap waiting.
      if (live) startTransition(() => setKept((before) => sharing(before, next)))
    }
    void read()
    void refresh(job).then(() => {
      if (live) setAsked(true)
    })
    const stop = onChange((change) => {
      if (change.what === 'job' && change.job === job) void read()
    })
    return () => {
      live = false
      stop()
    }
  }, [job])

  const facts = kept?.facts
  const devices = kept?.devices
  const unsent = kept?.unsent
  useEffect(() => {
    if (facts === undefined || devices === undefined) return
    let live = true
    const timer = setTimeout(() => {
      void proveDamaged(facts, devices).then((damaged) => {
        if (live) setBroken(damaged)
      })
    }, restBeforeProving)
    return () => {
      live = false
      clearTimeout(timer)
    }
  }, [facts, devices])

  const folded = useMemo(
    () =>
      facts === undefined
        ? null
        : {
            facts: [...facts].sort(compareFacts),
            state: foldOnce(job, facts, broken),
          },
    [job, facts, broken],
  )
  const open = useMemo(
    (): OpenJob | null => (folded === null || unsent === undefined ? null : { ...folded, unsent }),
    [folded, unsent],
  )
  return { open, asked }
}
