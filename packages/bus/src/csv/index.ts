/**
 * @module CAN frames out of CSV and other delimited text with a header. Columns are found by their names and
 * contents, with a stated confidence, and a person may say otherwise (`ReaderOptions.columns`).
 */

import { type CaptureFormat, HEAD_BYTES } from '../capture/contract.ts'
import { openCsv } from './reader.ts'
import { delimiterName, sampleTable } from './sample.ts'
import { CSV_FIELDS } from './words.ts'

export {
  type Confidence,
  type CsvFindingCode,
  type CsvMapping,
  columnsOf,
  type DataBase,
  type FoundColumns,
  mappingFrom,
} from './columns.ts'
export { guessMapping, type MappingGuess } from './mapping.ts'
export { openCsv, SAMPLE_BYTES } from './reader.ts'
export { sampleTable, type TableSample } from './sample.ts'
export { TIME_UNITS, type TimeUnit } from './time.ts'
export { CSV_FIELDS, type CsvField } from './words.ts'

/** The row for the table of readers; it stands last, as it takes any table with a header. */
export const CSV_FORMAT: CaptureFormat = {
  name: 'csv',
  recognise: (head) => {
    const sample = sampleTable(head, head.length < HEAD_BYTES)
    if (sample === undefined) return undefined
    const { confidence, mapping } = sample.guess
    const kind = `${delimiterName(sample.delimiter)}-separated text with a header in line ${sample.headerLine}`
    if (mapping === undefined) return `${kind} whose columns must be named`
    return `${kind} that names ${CSV_FIELDS.filter((field) => confidence[field] !== undefined).join(', ')}`
  },
  open: openCsv,
}
