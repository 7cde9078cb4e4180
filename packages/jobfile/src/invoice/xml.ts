/** @module Writes XML 1.0: elements with text or with other elements, indented, nothing else. */

/** An element: name, attributes, and text or children. Null children are left out. */
export interface Element {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly content: string | readonly (Element | null)[]
}

export function element(
  name: string,
  content: Element['content'],
  attributes: Element['attributes'] = {},
): Element {
  return { name, attributes, content }
}

/** The text of a document, in UTF-8 terms, with a line for each element. */
export function xmlText(root: Element): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}`
}

function written({ name, attributes, content }: Element, indent: string): string {
  const start = Object.entries(attributes).reduce(
    (tag, [key, value]) => `${tag} ${key}="${escaped(value)}"`,
    name,
  )
  if (typeof content === 'string') return `${indent}<${start}>${escaped(content)}</${name}>\n`
  const inner = content.filter((child) => child !== null).map((child) => written(child, `${indent}  `))
  return inner.length === 0
    ? `${indent}<${start}/>\n`
    : `${indent}<${start}>\n${inner.join('')}${indent}</${name}>\n`
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** What XML 1.0 cannot hold even escaped (2.2: control characters, lone surrogates) becomes the replacement character. */
function escaped(text: string): string {
  return text
    .toWellFormed()
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
    .replace(/[&<>"]/g, (character) => entities[character] ?? character)
}
