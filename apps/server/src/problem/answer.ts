import { FactRefused, HandoverRefused } from '@shearline/jobfile'
import { type Outcome, StoreError } from '@shearline/store'
import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import type { ZodError } from 'zod'
import { Problem, refusalStatus, storeErrorStatus } from './problem.ts'

/** The value of an outcome; a refusal of the store becomes a problem. */
export function take<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  const { code, what, where, doNext } = outcome.refusal
  throw new Problem(refusalStatus[code], code, { what, where, doNext })
}

/** Answers with a problem for anything thrown. What is not known is logged, and the answer keeps it to itself. */
export function answerThrown(error: unknown, c: Context): Response {
  const problem = problemOf(error)
  if (problem === null) console.error(error)
  const told = problem ?? unknownProblem
  return c.json(told.body, told.status)
}

function problemOf(error: unknown): Problem | null {
  if (error instanceof Problem) return error
  if (error instanceof StoreError) {
    const { code, what, doNext } = error
    return new Problem(storeErrorStatus[code], code, { what, doNext })
  }
  if (error instanceof FactRefused) {
    return new Problem(422, 'wrong-form', {
      what: error.message,
      where: error.path,
      doNext: 'Correct the value and send it again.',
    })
  }
  if (error instanceof HandoverRefused) {
    return new Problem(500, 'handover-failed', {
      what: `The job is sealed, but its document could not be made: ${error.message}`,
      doNext: 'Seal it once more. The record itself is whole and can be exported.',
    })
  }
  if (error instanceof HTTPException && error.status === 400) {
    return new Problem(400, 'bad-json', {
      what: 'The body is not JSON.',
      where: 'body',
      doNext: 'Send JSON in UTF-8.',
    })
  }
  if (error instanceof HTTPException && error.status === 415) {
    return new Problem(415, 'wrong-media-type', {
      what: 'The body has another media type than this address takes.',
      where: 'Content-Type',
      doNext: 'Send it as application/json.',
    })
  }
  return null
}

const unknownProblem = new Problem(500, 'internal', {
  what: 'The server made a mistake of its own.',
  doNext: 'Try again. If it happens again, send the lines it printed to whoever looks after it.',
})

/** Makes a problem of what does not fit a schema; says the first place and what was expected there. */
export function wrongForm(target: string, error: ZodError): Problem {
  const issue = error.issues[0]
  const path = issue?.path.join('.')
  return new Problem(422, 'wrong-form', {
    what: `The request is not as it should be: ${issue?.message ?? 'it does not fit'}.`,
    where: path === undefined || path === '' ? target : `${target}: ${path}`,
    doNext: 'Correct it; GET /api/openapi.json says what each address takes.',
  })
}

/** For an address of the API that does not exist. */
export function unknownPath(c: Context): Problem {
  return new Problem(404, 'unknown-path', {
    what: 'There is nothing at this address.',
    where: c.req.path,
    doNext: 'GET /api/openapi.json lists every address.',
  })
}
