/** A document that could not be made, and what to do about it. */
export class HandoverRefused extends Error {
  constructor(what: string, doNext: string) {
    super(`${what} ${doNext}`)
    this.name = 'HandoverRefused'
  }
}
