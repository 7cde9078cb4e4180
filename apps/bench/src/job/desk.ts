import type { ChapterName, Fact, JobState, TumblerName } from '@shearline/jobfile'
import { createContext, useContext } from 'react'
import type { KeptBlob } from '../sync/database.ts'
import type { Draft } from '../sync/write.ts'

/** Where a step leads: a chapter and, in it, the control that answers a need. */
export interface Target {
  readonly chapter: ChapterName
  readonly need: string | null
  readonly params: Readonly<Record<string, string | number>>
}

/**
 * Everything a part of the job page works with. It is the same object until the record changes, so that opening a
 * chapter or tapping a tumbler draws nothing else anew.
 */
export interface Desk {
  readonly job: string
  readonly state: JobState
  /** Facts in the order they were made, withdrawn ones too. */
  readonly facts: readonly Fact[]
  /** Name of the person working with this device; empty until given. */
  readonly by: string
  readonly zone: string
  /** Keeps facts on this device; settles when they are on the disk. Rejects when a body does not fit. */
  readonly record: (drafts: readonly Draft[], blobs?: readonly KeptBlob[]) => Promise<void>
  /** The name of the person working, asked for when this device does not know it yet. */
  readonly signedBy: () => Promise<string>
  readonly goTo: (target: Target) => void
}

const DeskContext = createContext<Desk | null>(null)

export const DeskProvider = DeskContext.Provider

const UnsentContext = createContext<ReadonlySet<string>>(new Set())

export const UnsentProvider = UnsentContext.Provider

/** Identifiers of facts kept here and not yet sent. */
export function useUnsentFacts(): ReadonlySet<string> {
  return useContext(UnsentContext)
}

const TappedContext = createContext<TumblerName | null>(null)

export const TappedProvider = TappedContext.Provider

/** The tumbler whose needs are shown in the chapters, if one was tapped. */
export function useTapped(): TumblerName | null {
  return useContext(TappedContext)
}

/** The job being worked on. Only inside a job page. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext)
  if (desk === null) throw new Error('This part belongs inside a job page.')
  return desk
}
