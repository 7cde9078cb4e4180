/**
 * @module Properties are tried on other cases with each commit, and on the same ones as often as a commit is tested
 * (docs/decisions/0023). Loaded before every test file.
 */

import fc from 'fast-check'
import { inject } from 'vitest'

declare module 'vitest' {
  interface ProvidedContext {
    readonly propertySeed: number
  }
}

fc.configureGlobal({ seed: inject('propertySeed') })
