/**
 * @module Bundles `shearline decode` into one file, so that it starts without looking for a hundred modules.
 *
 *     node scripts/bundle-decode.mjs        after `tsc -b`
 */

import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'rolldown'

const dist = join(dirname(fileURLToPath(import.meta.url)), '..', 'apps', 'cli', 'dist')

await build({
  input: join(dist, 'decode', 'alone.js'),
  platform: 'node',
  resolve: { alias: { fflate: join(dist, 'decode', 'fflate-later.js') } },
  output: { file: join(dist, 'decode-alone.cjs'), format: 'cjs', minify: true },
  logLevel: 'warn',
})
