/** @module What was understood of a report, by its place in the source. */

import { noFaultIn, type ScanReport } from '@shearline/keywork'

/** A stretch of a line that means something: `place` is a code's place in `report.codes`, `name` a unit's. */
export interface SourceMark {
  readonly kind: 'code' | 'unit' | 'clear'
  readonly from: number
  readonly to: number
  readonly place: number | null
  readonly name: string | null
}

/** Lines of a source, numbered as reports number them. */
export function linesOfSource(text: string): readonly string[] {
  return text.split(/\r\n|\r|\n/)
}

/** Marks by line number (from 1), each line's in order and never one over another. */
export function marksOf(
  report: ScanReport,
  lines: readonly string[],
): ReadonlyMap<number, readonly SourceMark[]> {
  const marks = new Map<number, SourceMark[]>()
  const put = (line: number, mark: SourceMark) => {
    const there = marks.get(line) ?? []
    if (there.some((each) => each.from < mark.to && mark.from < each.to)) return
    marks.set(
      line,
      [...there, mark].sort((one, other) => one.from - other.from),
    )
  }
  if (report.form === 'json') {
    markInOrder(report, lines, put)
    return marks
  }
  for (const [place, { line, from, to }] of report.codes.entries())
    put(line, { kind: 'code', from, to, place, name: null })
  for (const { name, line } of report.units) {
    const from = (lines[line - 1] ?? '').toLowerCase().indexOf(name.toLowerCase())
    if (from >= 0) put(line, { kind: 'unit', from, to: from + name.length, place: null, name })
  }
  for (const [index, line] of lines.entries()) {
    if (marks.get(index + 1)?.some((mark) => mark.kind === 'code') === true) continue
    const clear = noFaultIn(line)
    if (clear !== null) put(index + 1, { kind: 'clear', ...clear, place: null, name: null })
  }
  return marks
}

/** JSON is read by its members, which know no lines; its codes stand in the text in the order they were read. */
function markInOrder(
  report: ScanReport,
  lines: readonly string[],
  put: (line: number, mark: SourceMark) => void,
): void {
  let index = 0
  let from = 0
  for (const [place, { fault }] of report.codes.entries()) {
    const base = fault.code.slice(0, 5)
    for (; index < lines.length; index++, from = 0) {
      const at = (lines[index] ?? '').toUpperCase().indexOf(base, from)
      if (at < 0) continue
      from = at + base.length
      put(index + 1, { kind: 'code', from: at, to: from, place, name: null })
      break
    }
  }
}
