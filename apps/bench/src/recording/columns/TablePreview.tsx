import { listMark } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from './columns.module.css'
import { type Columns, fieldsOfColumn, type Table } from './columns.ts'

/** The first rows of a table, and above each column what it is said to hold at present. */
export function TablePreview({ table, columns }: { readonly table: Table; readonly columns: Columns }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className={css.preview} aria-label={t('columns.preview')} tabIndex={0}>
      <table>
        <caption className="sr">{t('columns.preview')}</caption>
        <thead>
          <tr>
            {table.header.map((name, column) => {
              const fields = fieldsOfColumn(columns, column)
              return (
                // biome-ignore lint/suspicious/noArrayIndexKey: columns never move, and names may repeat
                <th key={column} scope="col" data-held={fields.length > 0}>
                  <span className={css.number}>{column + 1}</span> {name}
                  <span className={css.holds}>
                    {fields.length === 0
                      ? t('columns.not-used')
                      : fields.map((field) => t(`column.${field}`)).join(listMark())}
                  </span>
                </th>
              )
            })}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows never move
            <tr key={index}>
              {table.header.map((_, column) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: columns never move
                <td key={column}>{row[column] ?? ''}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
