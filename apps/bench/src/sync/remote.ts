/** @module The server's API as the bench uses it: small, typed, every refusal with a code and what to do. */
import type { Device, Fact } from '@shearline/jobfile'
import type { Api } from '@shearline/server/api-type'
import { type ClientResponse, hc } from 'hono/client'
import { hearClock } from './skew.ts'

/** The one error shape of the server. */
export interface Refusal {
  readonly code: string
  readonly what: string
  readonly where?: string
  readonly doNext: string
}

/** The server answered, but said no. Not retried by itself. */
export class Refused extends Error {
  readonly status: number
  readonly refusal: Refusal
  /** The whole answer: a refused part carries the place to go on. */
  readonly answer: unknown
  constructor(status: number, refusal: Refusal, answer: unknown) {
    super(refusal.what)
    this.name = 'Refused'
    this.status = status
    this.refusal = refusal
    this.answer = answer
  }
}

/** The server could not be reached, or failed: worth trying again. */
export class Unreachable extends Error {
  /** The server's own words, when it answered that its disk or database failed. */
  readonly refusal: Refusal | null
  constructor(what: string, refusal: Refusal | null = null) {
    super(what)
    this.name = 'Unreachable'
    this.refusal = refusal
  }
}

/** A line that swallows questions must not hold up the page for ever. Milliseconds. */
const patience = 30_000
/** A part of an upload over a slow line takes longer. Milliseconds. */
const patienceForBytes = 10 * 60_000

const timed: typeof fetch = async (input, init) => {
  const wait = init?.body instanceof Blob ? patienceForBytes : patience
  const askedAt = Date.now()
  const response = await fetch(input, { ...init, signal: AbortSignal.timeout(wait) })
  hearClock(response.headers.get('date'), askedAt, Date.now())
  return response
}

const api = hc<Api>('', { fetch: timed }).api

/** Asks an address that the typed client does not cover (raw bytes) and reads its JSON answer. */
export function ask(address: string, init?: RequestInit): Promise<unknown> {
  return read(timed(address, init))
}

/** Waits for an answer and reads it; what the server refuses or cannot do is thrown in two kinds. */
async function read<R extends ClientResponse<unknown> | Response>(asked: Promise<R>): Promise<AnswerOf<R>> {
  let response: R
  try {
    response = await asked
  } catch {
    throw new Unreachable('no connection')
  }
  const answer: unknown = await response.json().catch(() => undefined)
  if (response.status >= 500 || response.status === 429) {
    const words = answer === undefined ? null : readRefusal(answer, response.status)
    throw new Unreachable(String(response.status), words)
  }
  if (!response.ok) throw new Refused(response.status, readRefusal(answer, response.status), answer)
  // A gateway or captive portal that answers with a page is not our server.
  if (answer === undefined) throw new Unreachable('unreadable answer')
  return answer as AnswerOf<R>
}

/** What a route answers when all is well. */
type AnswerOf<R> = R extends ClientResponse<infer T, 200, string> ? T : never

function readRefusal(answer: unknown, status: number): Refusal {
  if (typeof answer === 'object' && answer !== null && 'error' in answer) {
    const error = answer.error as Partial<Refusal> | null
    if (typeof error?.code === 'string' && typeof error.what === 'string') {
      return { ...error, code: error.code, what: error.what, doNext: error.doNext ?? '' }
    }
  }
  return { code: `http-${status}`, what: `${status}`, doNext: '' }
}

/** What the bench asks of the server, one function per route, typed by the server's own description. */
export const remote = {
  enrol: (device: Device) => read(api.devices.$post({ json: device })),
  recipients: () => read(api.recipients.$get()),
  sendFacts: (facts: readonly Fact[]) => read(api.facts.$post({ json: { facts: [...facts] } })),
  jobs: () => read(api.jobs.$get()),
  marks: () => read(api.marks.$get()),
  facts: (job: string) => read(api.jobs[':job'].facts.$get({ param: { job } })),
  sendDocument: (job: string, json: { readonly seal: string; readonly blob: string }) =>
    read(api.jobs[':job'].document.$put({ param: { job }, json })),
}

/** Where the latest sealed document of a job opens on the server. */
export function documentAddress(job: string): string {
  return `/api/jobs/${encodeURIComponent(job)}/document`
}
