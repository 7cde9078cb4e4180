import type { Body, JobKey } from '@shearline/jobfile'
import { fobCell } from '@shearline/keywork'
import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { Tag } from '../keys/Tag.tsx'
import { number } from '../words/amounts.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import css from './power.module.css'
import { recorded } from './recorded.ts'

type Cell = NonNullable<Body<'key-labelled'>['cell']>

/** Forms that are driven by coin cells; a remote head or flip key has one beside its transponder. */
const withCell: ReadonlySet<JobKey['form']> = new Set(['remote-head', 'flip', 'proximity', 'card'])

/** The coin cell of every fob on the bench: volts at rest and while it transmits, and whether to replace it. */
export function FobCells() {
  const desk = useDesk()
  const keys = desk.state.keys.filter((key) => key.onBench && withCell.has(key.form))
  if (keys.length === 0) return null
  const labels = recorded(desk, 'key-labelled')
  const cellOf = (key: string) =>
    labels.findLast(({ body }) => body.key === key && body.cell !== undefined)?.body.cell ?? null
  return (
    <Part
      title={t('power.cells')}
      settled
      more={t('power.cells.measure')}
      about={
        <ul className={css.cells}>
          {keys.map((key) => (
            <li key={key.id} className={css.cellHead}>
              <Tag letter={key.id} colour={key.colour} />
              <span>{cellWords(cellOf(key.id))}</span>
            </li>
          ))}
        </ul>
      }
    >
      <ul className={css.cells}>
        {keys.map((key) => (
          <li key={key.id}>
            <CellForm jobKey={key} before={cellOf(key.id)} />
          </li>
        ))}
      </ul>
    </Part>
  )
}

/** What a cell's readings say; a cell that was changed is told as such. */
function cellWords(cell: Cell | null): string {
  if (cell === null) return t('power.cells.not-measured')
  const { verdict } = fobCell(cell.restVolts ?? null, cell.loadedVolts ?? null, cell.cells)
  const told = (volts: number | undefined) => (volts === undefined ? '-' : number(volts, 2, 2))
  const words = t('power.cells.told', {
    verdict: say(`power-cell.${verdict}`),
    rest: told(cell.restVolts),
    loaded: told(cell.loadedVolts),
  })
  return cell.replaced === true ? t('power.cells.replaced', { words }) : words
}

function CellForm({ jobKey, before }: { readonly jobKey: JobKey; readonly before: Cell | null }) {
  const [fresh, renew] = useFresh()
  return <CellFields key={fresh} jobKey={jobKey} cells={before?.cells ?? 1} onDone={renew} />
}

function CellFields({
  jobKey,
  cells: cellsBefore,
  onDone,
}: {
  readonly jobKey: JobKey
  readonly cells: number
  readonly onDone: () => void
}) {
  const desk = useDesk()
  const [rest, setRest] = useState<number | null>(null)
  const [loaded, setLoaded] = useState<number | null>(null)
  const [cells, setCells] = useState<number | null>(cellsBefore)
  const [replaced, setReplaced] = useState<boolean | null>(null)
  const verdict = rest === null && loaded === null ? null : fobCell(rest, loaded, cells ?? 1).verdict
  return (
    <RecordForm
      submit={t('power.cells.record', { key: jobKey.id })}
      onDone={onDone}
      drafts={() => {
        const label = recorded(desk, 'key-labelled').findLast(({ body }) => body.key === jobKey.id)?.body
        if (label === undefined || (rest === null && loaded === null)) return null
        const cell: Cell = {
          cells: cells ?? 1,
          ...(rest === null ? {} : { restVolts: rest }),
          ...(loaded === null ? {} : { loadedVolts: loaded }),
          ...(replaced === null ? {} : { replaced }),
        }
        return [{ kind: 'key-labelled', body: { ...label, cell } }]
      }}
    >
      <p className={css.cellHead}>
        <Tag letter={jobKey.id} colour={jobKey.colour} />
        <strong role="status">
          {verdict === null ? t('power.cells.of', { key: jobKey.id }) : say(`power-cell.${verdict}`)}
        </strong>
      </p>
      <div className={formCss.row}>
        <Amount
          label={t('power.cells.rest')}
          unit="V"
          value={rest}
          onChange={setRest}
          most={20}
          step={0.05}
          decimals={2}
          start={3}
          optional
        />
        <Amount
          label={t('power.cells.loaded')}
          unit="V"
          hint={t('power.cells.loaded.hint')}
          value={loaded}
          onChange={setLoaded}
          most={20}
          step={0.05}
          decimals={2}
          start={2.9}
          optional
        />
        <Amount label={t('power.cells.count')} value={cells} onChange={setCells} least={1} most={4} />
      </div>
      {verdict !== null && verdict !== 'good' && (
        <Choice
          label={t('power.cells.was-replaced')}
          value={replaced === null ? null : replaced ? 'yes' : 'no'}
          onChange={(answer) => setReplaced(answer === 'yes')}
          options={[
            ['yes', t('yes')],
            ['no', t('no')],
          ]}
          optional
        />
      )}
    </RecordForm>
  )
}
