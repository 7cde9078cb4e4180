import { useCallback, useEffect, useState } from 'react'
import { startMeasuring } from './measuring.ts'
import type { Ask, Given, Measured, Setting } from './messages.ts'

/** Where one of the two recordings stands. */
export type Side =
  | { readonly at: 'none' }
  | {
      readonly at: 'asking'
      readonly ask: Ask
      readonly setting: Setting
      readonly findings: readonly Finding[]
    }
  | { readonly at: 'measuring'; readonly ask: Ask; readonly bytes: number }
  | { readonly at: 'measured'; readonly ask: Ask; readonly measured: Measured }
  | { readonly at: 'failed'; readonly ask: Ask; readonly error: unknown }

type Finding = Measured['measurement']['findings'][number]

/** Chosen files that are no recording; what was there before stays. */
export interface Unfit {
  readonly why: 'no-samples' | 'not-recording'
  readonly name: string
}

export interface RemoteSide {
  readonly side: Side
  readonly unfit: Unfit | null
  /** Measures a file, or a SigMF pair, in place of what was there. */
  readonly choose: (files: readonly File[]) => void
  /** Measures the same file again, read as given by hand. */
  readonly readAs: (given: Given) => void
  readonly forget: () => void
}

/** What a receiver's program never writes; any other kind may hold samples, whatever its name ends in. */
const neverSamples = /^(image|video|text)\/|^application\/(pdf|json|zip)$/

/** One of the two recordings. Leaving the page part that uses it ends the worker, and nothing is kept. */
export function useRemote(): RemoteSide {
  const [side, setSide] = useState<Side>({ at: 'none' })
  const [ask, setAsk] = useState<Ask | null>(null)
  const [unfit, setUnfit] = useState<Unfit | null>(null)

  useEffect(() => {
    if (ask === null) return setSide({ at: 'none' })
    setSide({ at: 'measuring', ask, bytes: 0 })
    const { done, stop } = startMeasuring(ask, (bytes) => setSide({ at: 'measuring', ask, bytes }))
    let live = true
    done.then(
      (outcome) => {
        if (!live) return
        setSide(
          outcome.what === 'measured'
            ? { at: 'measured', ask, measured: outcome.measured }
            : { at: 'asking', ask, setting: outcome.setting, findings: outcome.findings },
        )
      },
      (error: unknown) => {
        if (live) setSide({ at: 'failed', ask, error })
      },
    )
    return () => {
      live = false
      stop()
    }
  }, [ask])

  return {
    side,
    unfit,
    choose: useCallback((files) => {
      const sigmf = files.find((file) => file.name.endsWith('.sigmf-meta')) ?? null
      const file = files.find((one) => one !== sigmf)
      const wrong: Unfit | null =
        file === undefined
          ? sigmf && { why: 'no-samples', name: sigmf.name }
          : neverSamples.test(file.type)
            ? { why: 'not-recording', name: file.name }
            : null
      setUnfit(wrong)
      if (file !== undefined && wrong === null) setAsk({ file, sigmf, given: {} })
    }, []),
    readAs: useCallback((given) => setAsk((before) => (before === null ? null : { ...before, given })), []),
    forget: useCallback(() => {
      setUnfit(null)
      setAsk(null)
    }, []),
  }
}
