import { compareFacts, type Fact, foldJob, type JobState, Verifier, verifyFacts } from '@shearline/jobfile'
import { startTransition, useEffect, useMemo, useState } from 'react'
import { onChange } from '../sync/changes.ts'
import { refresh } from '../sync/live.ts'
import { type JobFacts, keptFacts } from '../sync/read.ts'

/** Facts, state and what is not sent of one job; null while it is first read. */
export interface OpenJob {
  readonly facts: readonly Fact[]
  readonly unsent: ReadonlySet<string>
  readonly state: JobState
}

const verifier = new Verifier(crypto.subtle)

/** Findings that mean the record itself is damaged; an unknown device is only not known yet. */
const damaging = new Set([
  'not-a-fact',
  'device-key-mismatch',
  'signature-wrong',
  'link-broken',
  'fact-twice',
])

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
      if (live) startTransition(() => setKept(next))
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

  useEffect(() => {
    if (kept === null) return
    let live = true
    // Proving many signatures takes time a tap should not wait for.
    const timer = setTimeout(() => {
      void verifyFacts(kept.facts, kept.devices, verifier).then((check) => {
        if (live) setBroken(check.findings.some((finding) => damaging.has(finding.code)))
      })
    }, restBeforeProving)
    return () => {
      live = false
      clearTimeout(timer)
    }
  }, [kept])

  const open = useMemo((): OpenJob | null => {
    if (kept === null) return null
    return {
      facts: [...kept.facts].sort(compareFacts),
      unsent: kept.unsent,
      state: foldJob(job, kept.facts, { chainBroken: broken }),
    }
  }, [job, kept, broken])
  return { open, asked }
}
