/** @module Keys in and out, what each can do, which stopped, and how many there are. */
import { fobCell, type GridCell } from '@shearline/keywork'
import type { JobKey } from '../../fold/state.ts'
import { listText, sayDifference, sayStatement, voltsText } from '../../words/index.ts'
import type { Block, CellMark, KeyCard, KeyRow } from './blocks.ts'
import { heading, list, type Pen, paragraph } from './pen.ts'

/** The keys as cards with label colour, letter and function grid. */
export function keys(pen: Pen): readonly Block[] {
  const { say, state } = pen
  if (state.keys.length === 0) return [heading(say('doc.keys')), paragraph(say('doc.keys-none'))]
  const here = state.keys.filter((key) => key.origin === 'existing' && key.onBench).length
  const fresh = state.keys.filter((key) => key.origin === 'new').length
  return [
    heading(say('doc.keys')),
    paragraph(say('doc.keys-in-out', { here, fresh })),
    { kind: 'keys', cards: state.keys.map((key) => card(pen, key)) },
    ...reasons(pen),
  ]
}

function card(pen: Pen, key: JobKey): KeyCard {
  const { say, state } = pen
  const colour = say(`colour.${key.colour}`)
  const form = say(`form.${key.form}`)
  const row = state.grid.rows.find((candidate) => candidate.key === key.id)
  const cells = [...(row?.before ?? []), ...(row?.after ?? [])]
  const photo = photoOf(pen, key.id)
  const present = cells.filter((cell) => cell.customerPresent === true).length
  const about = [
    say(`origin.${key.origin}`),
    say(`make.${key.make}`),
    ...(key.onBench ? [] : [say('doc.key-away')]),
    ...(key.cloneOf === null ? [] : [say('doc.key-clone', { key: key.cloneOf })]),
    ...(key.taught ? [say('doc.key-taught')] : []),
  ]
  return {
    letter: key.id,
    title: form,
    colour: key.colour,
    form: key.form,
    alt: say('doc.key-drawing', { form, colour, key: key.id }),
    ...(photo === null
      ? {}
      : { photo: { sha256: photo, alt: say('doc.key-photo-alt', { key: key.id, form, colour }) } }),
    lines: [
      say('doc.key-label', { colour }),
      listText(pen.language, about),
      ...(key.note === null ? [] : [key.note]),
    ],
    head: {
      function: say('doc.key-function'),
      before: say('doc.key-before'),
      after: say('doc.key-after'),
    },
    rows: (row?.after ?? []).map((after, index) => keyRow(pen, key, row?.before[index], after)),
    notes: [
      ...(tested(cells)
        ? [present === 0 ? say('doc.key-no-present') : say('doc.key-present', { count: present })]
        : []),
      ...cellNotes(pen, key),
      ...(photo === null ? [] : [say('doc.key-photo', { hash: photo.slice(0, 16) })]),
    ],
  }
}

/** The latest photo that shows this key, by its SHA-256; null when the record names none. */
export function photoOf({ facts, edition }: Pick<Pen, 'facts' | 'edition'>, key: string): string | null {
  if (edition < 2) return null
  const shown = facts.all('photo-attached').filter(({ body }) => body.shows === 'key' && body.key === key)
  return shown.at(-1)?.body.blob ?? null
}

/** What its coin cell read, and what that means. */
function cellNotes({ say, facts, edition, language }: Pen, key: JobKey): readonly string[] {
  const labelled = facts.all('key-labelled').filter(({ body }) => body.key === key.id)
  const cell = labelled.at(-1)?.body.cell
  if (edition < 2 || cell === undefined) return []
  const { restVolts, loadedVolts, cells } = cell
  const replaced = cell.replaced === true ? [say('doc.key-cell-replaced')] : []
  if (restVolts === undefined && loadedVolts === undefined) return replaced
  const { verdict } = fobCell(restVolts ?? null, loadedVolts ?? null, cells)
  const code = loadedVolts === undefined ? 'rest' : restVolts === undefined ? 'loaded' : 'both'
  const read = say(`doc.key-cell-${code}`, {
    rest: voltsText(language, restVolts ?? 0),
    loaded: voltsText(language, loadedVolts ?? 0),
    verdict: say(`power-cell.${verdict}`),
  })
  return [read, ...replaced]
}

function keyRow({ say }: Pen, key: JobKey, before: GridCell | undefined, after: GridCell): KeyRow {
  const cell = (from: GridCell): { mark: CellMark; text: string } => ({
    mark: from.outcome,
    text: say(`outcome.${from.outcome}`),
  })
  return {
    name: say(`function.${after.function}`),
    before:
      key.origin === 'new' || before === undefined
        ? { mark: 'blank', text: say('doc.key-new-before') }
        : cell(before),
    after: cell(after),
  }
}

const tested = (cells: readonly GridCell[]) =>
  cells.some((cell) => cell.outcome === 'works' || cell.outcome === 'fails')

/** Why functions were not tested or failed, in the technician's words; the same reason is given once. */
function reasons({ say, state, language }: Pen): readonly Block[] {
  const given = new Map<string, { cell: GridCell; functions: string[] }>()
  for (const cell of state.grid.rows.flatMap((row) => [...row.before, ...row.after])) {
    // That a form of key has no such function needs no reason; the grid says it.
    if (cell.outcome === 'not-applicable' || (cell.because ?? '') === '') continue
    const same = `${cell.key} ${cell.phase} ${cell.because}`
    const known = given.get(same) ?? { cell, functions: [] }
    known.functions.push(say(`function.${cell.function}`))
    given.set(same, known)
  }
  if (given.size === 0) return []
  const items = [...given.values()].map(({ cell, functions }) =>
    say('doc.key-because', {
      key: cell.key,
      phase: say(`phase.${cell.phase}`),
      functions: listText(language, functions),
      reason: cell.because ?? '',
    }),
  )
  return [list(items)]
}

const aboutAbsent = new Set([
  'keys-somewhere-start',
  'absent-keys-stopped',
  'absent-keys-will-stop',
  'absent-keys-still-start',
  'absent-keys-not-proven-stopped',
  'absent-keys-unknown',
  'absent-clone-still-starts',
  'key-no-longer-starts',
])

/**
 * Keys that no longer start the car, and what that does not mean. `gridAbove`: the functions of each key stand on the
 * same sheet, above.
 */
export function stopped(pen: Pen, gridAbove = true): readonly Block[] {
  const { say, state, language, edition } = pen
  const statements = state.tally.statements.filter((statement) => aboutAbsent.has(statement.code))
  const blocks: Block[] = [heading(say('doc.stopped'))]
  if (statements.length === 0) blocks.push(paragraph(say('doc.stopped-none')))
  for (const statement of statements) blocks.push(paragraph(sayStatement(language, statement)))
  if (state.absentKeys.length > 0)
    blocks.push(paragraph(say('doc.stopped-absent', { names: listText(language, state.absentKeys) })))
  const someStopped = statements.some(({ code }) =>
    ['absent-keys-stopped', 'absent-keys-will-stop', 'absent-keys-unknown', 'key-no-longer-starts'].includes(
      code,
    ),
  )
  // A key that was tried shows in the grid whether its buttons work; one that was not here stands in no grid.
  const tried = gridAbove && (edition < 2 || statements.some(({ code }) => code === 'key-no-longer-starts'))
  const button = say(tried ? 'doc.stopped-button' : 'doc.stopped-button-away')
  if (someStopped) blocks.push(paragraph(say('doc.stopped-blade')), paragraph(button))
  // What it does not mean belongs on the page that says which keys stopped.
  return blocks.map((block, index) =>
    block.kind === 'paragraph' && index < blocks.length - 1 ? { ...block, leads: true } : block,
  )
}

/** The tally in plain sentences. */
export function tally(pen: Pen): readonly Block[] {
  const { say, state, language, edition } = pen
  const { tally: numbers } = state
  const known = (value: number | null) => (value === null ? say('doc.unknown') : String(value))
  // Nobody labelled a key: that says nothing about how many there were.
  const labelled = (count: number) => known(state.keys.length === 0 && edition >= 2 ? null : count)
  const sentences = numbers.statements
    .filter((statement) => !aboutAbsent.has(statement.code))
    .map((statement) => sayStatement(language, statement))
  const differences = numbers.differences.map((difference) =>
    say('doc.tally-difference', {
      difference: capital(sayDifference(language, difference)),
      reason: difference.reason ?? say('doc.tally-no-reason'),
    }),
  )
  return [
    heading(say('doc.tally')),
    {
      kind: 'facts',
      rows: [
        { label: say('doc.tally-said'), value: known(numbers.saidToExist) },
        { label: say('doc.tally-bench'), value: labelled(numbers.onBench) },
        { label: say('doc.tally-new'), value: labelled(numbers.newKeys) },
        { label: say('doc.tally-before'), value: known(numbers.storedBefore) },
        { label: say('doc.tally-after'), value: known(numbers.storedAfter) },
      ],
    },
    ...(sentences.length + differences.length === 0 ? [] : [list([...sentences, ...differences])]),
  ]
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1)
}
