/** @module Builds elements. Text is always set as text: what a file says can never become markup. */

type Attributes = Readonly<Record<string, string | boolean>>

/** An element with attributes and children; `true` sets an empty attribute, `false` none. */
export function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string | null)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name)
  for (const [key, value] of Object.entries(attributes))
    if (value !== false) made.setAttribute(key, value === true ? '' : value)
  made.append(...children.filter((child) => child !== null))
  return made
}

/** What the engines name and find: English so far, whatever the page speaks, so that it is spoken and set as English. */
export function english<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Attributes,
  text: string,
): HTMLElementTagNameMap[K] {
  return element(name, { ...attributes, lang: 'en', dir: 'ltr' }, text)
}

/** Text as a file or a device states it, in its own direction. */
export function asStated(text: string): HTMLElement {
  return element('bdi', {}, text)
}

/** A table with a head; each row's first cell is its header. */
export function table(heads: readonly string[], rows: readonly (readonly (Node | string)[])[]): HTMLElement {
  const head = element('tr', {}, ...heads.map((text) => element('th', { scope: 'col' }, text)))
  const body = rows.map(([first = '', ...rest]) =>
    element('tr', {}, element('th', { scope: 'row' }, first), ...rest.map((cell) => element('td', {}, cell))),
  )
  // Wide tables scroll by themselves, by keyboard too, so that the page never does sideways.
  return element(
    'div',
    { class: 'wide', tabindex: '0' },
    element('table', {}, element('thead', {}, head), element('tbody', {}, ...body)),
  )
}

export type Mark = 'holds' | 'fails' | 'unknown'

/** The sign of a check: a pin at its line, off its line, or dashed. Readable without colour. */
export function markShape(mark: Mark): SVGSVGElement {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg')
  svg.setAttribute('viewBox', '0 0 32 32')
  svg.setAttribute('class', `mark ${mark}`)
  svg.setAttribute('aria-hidden', 'true')
  const draw = (d: string, className: string) => {
    const path = document.createElementNS('http://www.w3.org/2000/svg', 'path')
    path.setAttribute('d', d)
    path.setAttribute('class', className)
    svg.append(path)
  }
  draw('M2 16H30', 'line')
  if (mark === 'holds') draw('M11 4h10v11H11zM11 17h10v11H11z', 'pin')
  else if (mark === 'fails') draw('M11 2h10v8H11zM11 12h10v16H11z', 'pin')
  else draw('M11 4h10v24H11z', 'open')
  return svg
}
