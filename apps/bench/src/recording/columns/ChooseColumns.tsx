import { TIME_UNITS } from '@shearline/bus'
import { type FormEvent, useId, useState } from 'react'
import formCss from '../../form/form.module.css'
import { t } from '../../words/index.ts'
import { ColumnSelect, Select } from './ColumnSelect.tsx'
import css from './columns.module.css'
import { type Columns, lacking, type SingleField, singleFields, type Table } from './columns.ts'
import { TablePreview } from './TablePreview.tsx'

/** Fields that seldom have a column of their own. */
const otherFields = singleFields.filter((field) => field !== 'time' && field !== 'id')

/** Asks which column of a table holds what, with the guess chosen already. */
export function ChooseColumns({
  table,
  first,
  reason,
  onChoose,
  onClose,
}: {
  readonly table: Table
  readonly first: Columns
  readonly reason: string
  readonly onChoose: (columns: Columns) => void
  readonly onClose: () => void
}) {
  const [columns, setColumns] = useState(first)
  const [asked, setAsked] = useState(false)
  const problem = lacking(columns)
  const id = useId()
  const change = (part: Partial<Columns>) => setColumns({ ...columns, ...part })
  const field = (name: SingleField) => (
    <ColumnSelect
      key={name}
      label={t(`column.${name}`)}
      header={table.header}
      value={columns.fields[name]}
      guessed={table.guessed.includes(name)}
      onChange={(column) => change({ fields: { ...columns.fields, [name]: column } })}
    />
  )
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setAsked(true)
    if (problem === null) onChoose(columns)
  }
  return (
    <form className={formCss.dialogBody} onSubmit={submit} aria-describedby={`${id}-why`}>
      <p>{t('recording.format', { format: 'csv', reason })}</p>
      <p id={`${id}-why`}>{t(table.sure ? 'columns.change' : 'columns.unsure')}</p>
      <TablePreview table={table} columns={columns} />
      <div className={css.pairs}>
        {field('time')}
        <Select
          label={t('columns.time-unit')}
          value={columns.timeUnit}
          options={TIME_UNITS.map((unit) => [unit, t(`time-unit.${unit}`)])}
          onChange={(timeUnit) => change({ timeUnit })}
        />
        {field('id')}
        <Select
          label={t('columns.id-base')}
          value={columns.idBase}
          options={[
            ['hex', t('base.hex')],
            ['dec', t('base.dec')],
          ]}
          onChange={(idBase) => change({ idBase })}
        />
        <ColumnSelect
          label={t('columns.data-first')}
          header={table.header}
          value={columns.dataFirst}
          guessed={table.guessed.includes('data')}
          onChange={(dataFirst) =>
            // A single column stays single when another one is named.
            change({
              dataFirst,
              dataLast: columns.dataLast === columns.dataFirst ? dataFirst : columns.dataLast,
            })
          }
        />
        <ColumnSelect
          label={t('columns.data-last')}
          header={table.header}
          value={columns.dataLast}
          onChange={(dataLast) => change({ dataLast })}
        />
        <Select
          label={t('columns.data-base')}
          value={columns.dataBase}
          options={[
            ['hex', t('base.hex')],
            ['dec', t('base.dec')],
            ['base64', t('base.sixty-four')],
          ]}
          onChange={(dataBase) => change({ dataBase })}
        />
      </div>
      <details className={formCss.more}>
        <summary>{t('columns.more')}</summary>
        <div className={css.pairs}>{otherFields.map(field)}</div>
      </details>
      <p className={formCss.hint}>{t('columns.remembered')}</p>
      {asked && problem !== null && (
        <p className={formCss.problem} role="alert">
          {t(`columns.lacking.${problem}`)}
        </p>
      )}
      <div className={formCss.foot}>
        <button type="submit" className={formCss.submit}>
          {t('columns.read')}
        </button>
        <button type="button" className={formCss.plain} onClick={onClose}>
          {t('cancel')}
        </button>
      </div>
    </form>
  )
}
