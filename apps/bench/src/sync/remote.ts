/** @module The server's API as the bench uses it: small, typed, every refusal with a code and what to do. */
import type { Device, Fact, JobSummary } from '@shearline/jobfile'

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
  /** The whole answer: a refused seal carries its needs. */
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
  constructor(what: string) {
    super(what)
    this.name = 'Unreachable'
  }
}

async function call<T>(path: string, options: RequestInit = {}): Promise<T> {
  let response: Response
  try {
    response = await fetch(`/api${path}`, { ...options, headers: headersOf(options) })
  } catch {
    throw new Unreachable('no connection')
  }
  if (response.status >= 500 || response.status === 429) throw new Unreachable(String(response.status))
  if (!response.ok) {
    const answer: unknown = await response.json().catch(() => null)
    throw new Refused(response.status, readRefusal(answer, response.status), answer)
  }
  if (response.status === 204) return undefined as T
  try {
    return (await response.json()) as T
  } catch {
    // A gateway or captive portal that answers with a page is not our server.
    throw new Unreachable('unreadable answer')
  }
}

function headersOf(options: RequestInit): HeadersInit {
  const base = { accept: 'application/json', ...(options.headers as Record<string, string> | undefined) }
  return typeof options.body === 'string' ? { ...base, 'content-type': 'application/json' } : base
}

function readRefusal(answer: unknown, status: number): Refusal {
  if (typeof answer === 'object' && answer !== null && 'error' in answer) {
    const error = answer.error as Partial<Refusal> | null
    if (typeof error?.code === 'string' && typeof error.what === 'string') {
      return { ...error, code: error.code, what: error.what, doNext: error.doNext ?? '' }
    }
  }
  return { code: `http-${status}`, what: `${status}`, doNext: '' }
}

function post(body: unknown): RequestInit {
  return { method: 'POST', body: JSON.stringify(body) }
}

const of = (job: string): string => `/jobs/${encodeURIComponent(job)}`

/** What the bench asks of the server, one function per route. */
export const remote = {
  health: () => call<{ ok: boolean; version: string; device: Device }>('/health'),
  devices: () => call<{ devices: Device[] }>('/devices'),
  enrol: (device: Device) => call<unknown>('/devices', post(device)),
  sendFacts: (facts: readonly Fact[]) =>
    call<{ accepted: number; already: number }>('/facts', post({ facts })),
  jobs: () => call<{ jobs: JobSummary[] }>('/jobs'),
  facts: (job: string) => call<{ facts: Fact[]; devices: Device[] }>(`${of(job)}/facts`),
  seal: (job: string, body: { language: string; by: string; evenIfNotReady: boolean }) =>
    call<{ document: { sha256: string; bytes: number }; ready: boolean }>(`${of(job)}/seal`, post(body)),
  hasBlob: async (sha256: string): Promise<boolean> => {
    const response = await fetch(`/api/blobs/${sha256}`, { method: 'HEAD' }).catch(() => null)
    return response?.ok ?? false
  },
  sendBlob: (sha256: string, blob: Blob) =>
    call<unknown>(`/blobs/${sha256}`, {
      method: 'PUT',
      body: blob,
      headers: { 'content-type': 'application/octet-stream' },
    }),
}

/** Where the sealed document of a job opens. */
export function documentAddress(job: string): string {
  return `/api${of(job)}/document`
}
