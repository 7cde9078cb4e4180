import { useEffect, useState } from 'react'
import { keepColumns, keptColumns } from './beside.ts'
import { type Columns, headerKey, readerColumns, type Table } from './columns/columns.ts'
import { Cancelled, decodeFile, lookAt } from './work.ts'
import type { Decoded, Looked, Progress } from './worker-messages.ts'

/** Where the import of a file stands. */
export type Importing =
  | { readonly at: 'looking' }
  | { readonly at: 'columns'; readonly looked: Looked; readonly table: Table; readonly columns: Columns }
  | { readonly at: 'reading'; readonly progress: Progress }
  | { readonly at: 'found'; readonly decoded: Decoded }
  | { readonly at: 'failed'; readonly error: unknown }

/** The columns a table is read by: null leaves them to the reader, because its guess is sure. */
interface Chosen {
  readonly columns: Columns | null
  /** They were chosen for this header before. */
  readonly before: boolean
}

/** An import under way. Leaving the page part that uses it ends the worker, and nothing is kept. */
export function useImported(file: File): {
  readonly importing: Importing
  /** Reads with these columns from now on, and remembers them for the header. */
  readonly choose: (columns: Columns) => void
  /** Asks for the columns again; null when the file is no table. */
  readonly askColumns: (() => void) | null
  /** The columns were remembered from before. */
  readonly remembered: boolean
} {
  const [importing, setImporting] = useState<Importing>({ at: 'looking' })
  const [looked, setLooked] = useState<Looked | null>(null)
  const [chosen, setChosen] = useState<Chosen | null>(null)

  useEffect(() => {
    const work = lookAt(file)
    const fail = failWith(setImporting)
    work.done
      .then(async (seen) => {
        setLooked(seen)
        const { table } = seen
        const before = table === null ? undefined : await keptColumns(headerKey(table.header))
        if (before !== undefined) setChosen({ columns: before, before: true })
        else if (table === null || table.sure) setChosen({ columns: null, before: false })
        else setImporting({ at: 'columns', looked: seen, table, columns: table.columns })
      })
      .catch(fail)
    return work.cancel
  }, [file])

  useEffect(() => {
    if (chosen === null) return
    setImporting({ at: 'reading', progress: { bytes: 0, frames: 0, messages: 0 } })
    const columns = chosen.columns === null ? null : readerColumns(chosen.columns)
    const work = decodeFile(file, columns, (progress) => setImporting({ at: 'reading', progress }))
    work.done.then((decoded) => setImporting({ at: 'found', decoded })).catch(failWith(setImporting))
    return work.cancel
  }, [file, chosen])

  const table = looked?.table ?? null
  return {
    importing,
    choose: (columns) => {
      setChosen({ columns, before: false })
      // Remembering is a convenience: where it fails, the person is asked again next time.
      if (table !== null) keepColumns(headerKey(table.header), columns).catch(() => undefined)
    },
    askColumns:
      looked === null || table === null
        ? null
        : () => {
            setImporting({ at: 'columns', looked, table, columns: chosen?.columns ?? table.columns })
            setChosen(null)
          },
    remembered: chosen?.before === true,
  }
}

function failWith(setImporting: (importing: Importing) => void): (error: unknown) => void {
  return (error) => {
    if (!(error instanceof Cancelled)) setImporting({ at: 'failed', error })
  }
}
