import { compareFacts, type Fact, foldJob, type JobState, Verifier, verifyFacts } from '@shearline/jobfile'
import { useEffect, useState } from 'react'
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

/** Reads a job from this device, folds it, proves its chain, and follows changes from here and elsewhere. */
export function useJob(job: string): { readonly open: OpenJob | null; readonly asked: boolean } {
  const [kept, setKept] = useState<JobFacts | null>(null)
  const [broken, setBroken] = useState(false)
  const [asked, setAsked] = useState(false)

  useEffect(() => {
    let live = true
    const read = async () => {
      const next = await keptFacts(job)
      if (live) setKept(next)
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
    let live = true
    if (kept !== null) {
      void verifyFacts(kept.facts, kept.devices, verifier).then((check) => {
        if (live) setBroken(check.findings.some((finding) => damaging.has(finding.code)))
      })
    }
    return () => {
      live = false
    }
  }, [kept])

  if (kept === null) return { open: null, asked }
  const state = foldJob(job, kept.facts, { chainBroken: broken })
  const facts = [...kept.facts].sort(compareFacts)
  return { open: { facts, unsent: kept.unsent, state }, asked }
}
