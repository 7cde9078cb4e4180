/**
 * @module Stands in for `fflate` in the bundle of `shearline decode` (`scripts/bundle-decode.mjs`): few recordings are
 * packed, and the tables it makes when it is loaded take longer than the rest of the start.
 */

import { createRequire } from 'node:module'
import type * as Fflate from 'fflate'

const require = createRequire(import.meta.url)

const load = (): typeof Fflate => require('fflate')

/** A `Gunzip` of fflate, loaded when the first is made. */
export function Gunzip(chunk: Fflate.FlateStreamHandler): Fflate.Gunzip {
  const fflate = load()
  return new fflate.Gunzip(chunk)
}

/** An `Unzlib` of fflate, loaded when the first is made. */
export function Unzlib(chunk: Fflate.FlateStreamHandler): Fflate.Unzlib {
  const fflate = load()
  return new fflate.Unzlib(chunk)
}
