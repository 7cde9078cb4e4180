/** @module What the page and the worker that holds a recording's messages say to each other. */
import type { MessageLine } from '@shearline/bus'
import type { Filter } from './filters.ts'
import type { Strip } from './strip.ts'

/** Which messages are wanted; seconds count from the strip's start. */
export interface LogQuestion {
  readonly from: number
  readonly to: number
  readonly filter: Filter
  /** Part of an identifier, a service or its name; empty for any. */
  readonly words: string
  /** Into how many slices the span is cut for its density. */
  readonly slices: number
}

/** What a question came to. */
export interface LogAnswer {
  readonly from: number
  readonly to: number
  /** Numbers of the messages that fit. */
  readonly matches: Uint32Array<ArrayBuffer>
  /** All messages of the span per slice, whatever the filter. */
  readonly total: readonly number[]
  readonly refused: readonly number[]
}

/** What the page asks of the worker. */
export type LogAsk =
  | { readonly what: 'open'; readonly blob: Blob; readonly sha256: string }
  | { readonly what: 'question'; readonly ticket: number; readonly question: LogQuestion }
  | { readonly what: 'lines'; readonly ticket: number; readonly messages: readonly number[] }

/** What the worker answers. */
export type LogReply =
  | { readonly what: 'progress'; readonly bytes: number; readonly messages: number }
  | { readonly what: 'opened'; readonly strip: Strip }
  | { readonly what: 'answer'; readonly ticket: number; readonly answer: LogAnswer }
  | { readonly what: 'lines'; readonly ticket: number; readonly lines: readonly MessageLine[] }
  | { readonly what: 'failed'; readonly why: 'other-bytes' | 'unreadable'; readonly words: string }
