/** @module The file as a strip of its parts, in the order of its bytes. */
import type { Coverage } from '@shearline/jobfile'
import { element, english, table } from './dom.ts'
import { t } from './words.ts'

/** The strip and, behind a fold, the list of parts with their first and last byte. */
export function fileStrip(coverage: Coverage): HTMLElement {
  const { parts, sealAt, sealWhole, bytes } = coverage
  const changed = parts.filter(({ whole }) => !whole).length
  const end = Math.max(bytes, sealAt + 1)
  const all = [
    ...parts.map(({ name, from, to, whole }) => ({ name, from, to, whole, seal: false })),
    { name: t('strip.seal'), from: sealAt, to: end, whole: sealWhole !== false, seal: true },
  ]
  const alt = t('strip.alt', { count: all.length, changed: changed + (sealWhole === false ? 1 : 0) })
  const strip = element(
    'div',
    { class: 'strip', role: 'img', 'aria-label': alt },
    ...all.map(({ name, from, to, whole, seal }) => {
      const look = { class: whole ? (seal ? 'seal' : '') : 'changed', title: name }
      const segment = seal ? element('span', look) : english('span', look, '')
      // Set through the object model: the content policy allows no style attribute.
      segment.style.flexGrow = String(Math.max(to - from, end / 400))
      return segment
    }),
  )
  const rows = all.map(({ name, from, to, whole, seal }) => [
    seal ? element('span', { class: 'words' }, name) : english('span', {}, name),
    String(from),
    String(to - 1),
    t(seal && sealWhole === null ? 'mark.unknown' : whole ? 'mark.holds' : 'mark.fails'),
  ])
  const heads = [t('strip.part'), t('strip.from'), t('strip.to'), t('strip.state')]
  return element(
    'section',
    { class: 'sheet' },
    element('h2', {}, t('strip.title')),
    strip,
    element(
      'details',
      {},
      element('summary', {}, t('strip.parts', { count: all.length })),
      table(heads, rows),
    ),
  )
}
