/**
 * @module Builds the verify page: one HTML file with script, styles and fonts inside, that can reach nothing.
 *
 *     node scripts/build-verify-page.mjs [--out FILE.html]        default: apps/verify-page/dist/verify.html
 */

import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { build } from 'rolldown'
import { languages } from '../packages/jobfile/src/words/catalogues.ts'
import { packWords } from './pack-words.mjs'

const root = join(dirname(fileURLToPath(import.meta.url)), '..')
const page = join(root, 'apps', 'verify-page')
const { values } = parseArgs({ options: { out: { type: 'string' } } })
const out = resolve(values.out ?? join(page, 'dist', 'verify.html'))

/** The engines declare no side effects, so that drawing and sealing stay out of the page. */
const engines = /[\\/]packages[\\/](bus|keywork|jobfile)[\\/]src[\\/]/

// The page speaks every language, and proves documents written in any: it must word their pages again.
const engineWords = join(root, 'packages', 'jobfile', 'src', 'words')
/** @param {(language: string) => string} fileOf */
const inEach = (fileOf) => Object.fromEntries(languages.map((language) => [language, fileOf(language)]))
const catalogues = [
  inEach((language) => join(page, 'src', 'words', `${language}.ts`)),
  inEach((language) => join(engineWords, language, 'index.ts')),
]

/** Exercises at the practice car never stand in a document. @param {string} code */
const saidInDocuments = (code) => !code.startsWith('practice.')

const { output } = await build({
  input: join(page, 'src', 'main.ts'),
  platform: 'browser',
  resolve: { conditionNames: ['@shearline/source', 'module', 'browser', 'import', 'default'] },
  plugins: [await packWords(catalogues, saidInDocuments, join(engineWords, 'index.ts'))],
  treeshake: { moduleSideEffects: (id) => !engines.test(id) },
  output: { format: 'esm', minify: true, codeSplitting: false },
  write: false,
  logLevel: 'warn',
})
const [chunk, ...more] = output
if (more.length > 0) throw new Error(`the page must be one file, not ${output.length}`)

// Inside HTML these end or hide a script; in JavaScript they stand in strings and templates only.
const script = chunk.code
  .replaceAll('</script', '<\\/script')
  .replaceAll('<!--', '<\\!--')
  .replaceAll('\r', '\\r')
  .trim()

const { resolve: find } = createRequire(join(page, 'package.json'))
/** @param {string} family @param {string} file @param {string} range */
function face(family, file, range) {
  const name = `@fontsource-variable/atkinson-hyperlegible-${file}-wght-normal.woff2`.replace(
    /hyperlegible-(next|mono)-/,
    'hyperlegible-$1/files/atkinson-hyperlegible-$1-',
  )
  const data = readFileSync(find(name)).toString('base64')
  return `@font-face{font-family:"${family}";font-weight:200 800;font-display:block;src:url(data:font/woff2;base64,${data}) format("woff2");unicode-range:${range}}`
}
const latin =
  'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+2000-206F,U+20AC,U+2122,U+FEFF,U+FFFD'
const wider =
  'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+1E00-1E9F,U+1EF2-1EFF,U+20A0-20AB,U+20AD-20C0'
const styles = [
  face('Atkinson Hyperlegible Next Variable', 'next-latin', latin),
  face('Atkinson Hyperlegible Next Variable', 'next-latin-ext', wider),
  face('Atkinson Hyperlegible Mono Variable', 'mono-latin', latin),
  readFileSync(join(page, 'src', 'page.css'), 'utf8'),
].join('\n')

/** @param {string} text */
const hashed = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`
const policy = [
  "default-src 'none'",
  `script-src ${hashed(script)}`,
  `style-src ${hashed(styles)}`,
  'font-src data:',
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

const html = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>Verify</title>
<style>${styles}</style>
</head>
<body>
<noscript>This page checks the file in your browser, so it needs JavaScript switched on.</noscript>
<script type="module">${script}</script>
</body>
</html>
`
mkdirSync(dirname(out), { recursive: true })
writeFileSync(out, html)
