/**
 * @module Packs the words of every language into one deflated text, for a page that must be one file.
 *
 * Six languages of whole sentences are half of the page when they lie open; it has an inflater for ZIP and PDF anyway.
 */
import { pathToFileURL } from 'node:url'
import { deflateRawSync } from 'node:zlib'

const packedModule = '\0packed-words'

/**
 * A bundler plugin that puts packed words in the place of the files that hold them.
 *
 * A catalogue names a file for each language, which exports its words under the name of the language. The keys are kept
 * once, so every file must have those of English; throws when one has not.
 *
 * @param {readonly Readonly<Record<string, string>>[]} catalogues of each: language to absolute file name, with `en`
 * @param {(key: string) => boolean} saidThere false for words that the page never says
 * @param {string} inflating a file that imports `fflate`, so that the page holds the same one once
 */
export async function packWords(catalogues, saidThere, inflating) {
  /** @type {Map<string, string>} */
  const stubs = new Map()
  const all = []
  for (const [kind, files] of catalogues.entries()) {
    /** @type {Record<string, string[]>} */
    const words = {}
    const keys = Object.keys(await wordsIn(files.en, 'en'))
    const said = keys.filter(saidThere)
    for (const [language, file] of Object.entries(files)) {
      const own = await wordsIn(file, language)
      if (Object.keys(own).toSorted().join() !== keys.toSorted().join())
        throw new Error(`${file}: its keys are not those of ${files.en}`)
      words[language] = said.map((key) => own[key] ?? '')
      stubs.set(
        file,
        `import { wordsOf } from ${JSON.stringify(packedModule)}
export const ${language} = /* @__PURE__ */ wordsOf(${kind}, ${JSON.stringify(language)})`,
      )
    }
    all.push({ keys: said, words })
  }
  const packed = deflateRawSync(JSON.stringify(all), { level: 9 }).toString('base64')
  const unpacking = `import { inflateSync, strFromU8 } from 'fflate'
const bytes = Uint8Array.from(atob('${packed}'), (one) => one.charCodeAt(0))
const all = JSON.parse(strFromU8(inflateSync(bytes)))
export const wordsOf = (kind, language) =>
  Object.fromEntries(all[kind].keys.map((key, index) => [key, all[kind].words[language][index]]))`

  return {
    name: 'pack-words',
    /** @this {import('rolldown').PluginContext} @param {string} source @param {string | undefined} importer */
    resolveId(source, importer) {
      if (source === packedModule) return source
      return importer === packedModule ? this.resolve(source, inflating, { skipSelf: true }) : null
    },
    /** @param {string} id */
    load(id) {
      const code = id === packedModule ? unpacking : stubs.get(id)
      return code === undefined ? null : { code, moduleType: /** @type {const} */ ('js') }
    },
  }
}

/**
 * @param {string} file @param {string} language
 * @returns {Promise<Readonly<Record<string, string>>>}
 */
async function wordsIn(file, language) {
  return (await import(pathToFileURL(file).href))[language]
}
