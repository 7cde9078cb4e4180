import { bodyOf } from '@shearline/jobfile'
import { type Complaint, complaints, type FaultClass, leastCauses, type WorkEvent } from '@shearline/keywork'
import { useId } from 'react'
import { useDesk } from '../../job/desk.ts'
import { Part } from '../../job/Part.tsx'
import { listMark, say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { clock } from '../../words/instants.ts'
import { instantOf } from '../lives/bounds.ts'
import { evidenceWords } from '../lives/words.ts'
import { type Circle, curve, layOut, type Node } from './circle.ts'
import css from './graph.module.css'

const width = 360
const height = 300
const place = { centreX: width / 2, centreY: height / 2, radius: 100 }
const nodeRadius = 9

/** Arrows from units that hold lost-communication codes to the units they name, and what explains them. */
export function WhoMissesWhom() {
  const { state, facts } = useDesk()
  const roles = Object.fromEntries(
    facts.flatMap((fact) => {
      const read = fact.kind === 'unit-named' ? bodyOf(fact, 'unit-named') : null
      return read?.ok === true ? [[read.body.unit, read.body.role] as const] : []
    }),
  )
  const found = complaints(state.faults, { roles })
  if (found.length === 0) return <LeastCauses />
  const circle = layOut(found, nameOf, place)
  return (
    <Part title={t('blame.title')} about={<p>{t('blame.what')}</p>}>
      <Picture circle={circle} count={found.length} />
      <ul className={css.spoken}>
        {circle.edges.map((edge) => (
          <li key={`${edge.from} ${edge.to} ${edge.class}`}>
            <svg width="34" height="12" viewBox="0 0 34 12" aria-hidden="true">
              <path
                className={css.edge}
                data-class={edge.class}
                strokeWidth={weight(edge.codes.length)}
                d="M0 6H34"
              />
            </svg>
            {t('blame.one', {
              from: edge.from,
              to: edge.to,
              codes: edge.codes.join(listMark()),
              class: lower(say(`fault-class.${edge.class satisfies FaultClass}`)),
            })}
          </li>
        ))}
      </ul>
      <LeastCauses />
    </Part>
  )
}

function nameOf({ aboutUnit, about }: Complaint): string {
  return aboutUnit ?? t(`unit-role.${about}`)
}

function lower(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1)
}

function weight(count: number): number {
  return 1.5 + count
}

function Picture({ circle, count }: { readonly circle: Circle; readonly count: number }) {
  const id = useId()
  const at = new Map(circle.nodes.map((node) => [node.name, node]))
  return (
    <div className={css.frame}>
      <svg
        className={css.picture}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={t('blame.picture', { count })}
      >
        <defs>
          <marker
            id={id}
            viewBox="0 0 10 10"
            refX="8"
            refY="5"
            markerWidth="13"
            markerHeight="13"
            markerUnits="userSpaceOnUse"
            orient="auto"
          >
            <path className={css.tip} d="M0 0L10 5L0 10z" />
          </marker>
        </defs>
        {circle.edges.map((edge, index) => {
          const from = at.get(edge.from)
          const to = at.get(edge.to)
          if (from === undefined || to === undefined) return null
          return (
            <path
              key={`${edge.from} ${edge.to} ${edge.class}`}
              className={css.edge}
              data-class={edge.class}
              strokeWidth={weight(edge.codes.length)}
              d={curve(from, to, nodeRadius + 5, 16 + 8 * (index % 2))}
              markerEnd={`url(#${id})`}
            />
          )
        })}
        {circle.nodes.map((node) => (
          <UnitNode key={node.name} node={node} />
        ))}
      </svg>
    </div>
  )
}

/** Letters of a unit's name that the picture has room for; the list below has the whole name. */
const longestName = 17

function UnitNode({ node }: { readonly node: Node }) {
  const above = node.y < height / 2
  const name = node.name.length > longestName ? `${node.name.slice(0, longestName - 1)}…` : node.name
  const anchor = node.x < width / 2 - 30 ? 'start' : node.x > width / 2 + 30 ? 'end' : 'middle'
  const x =
    anchor === 'start'
      ? Math.max(4, node.x - 60)
      : anchor === 'end'
        ? Math.min(width - 4, node.x + 60)
        : node.x
  return (
    <g>
      <circle className={node.blamed > 0 ? css.blamed : css.node} cx={node.x} cy={node.y} r={nodeRadius} />
      <text
        className={css.name}
        x={x}
        y={node.y + (above ? -nodeRadius - 7 : nodeRadius + 18)}
        textAnchor={anchor}
      >
        {name}
      </text>
    </g>
  )
}

/** The fewest things the work did that explain everything it raised. */
function LeastCauses() {
  const { state, zone } = useDesk()
  const events = [...new Set(state.faults.faults.flatMap((line) => line.candidates))]
  const { causes, provenLeast } = leastCauses(state.faults, { events: events.sort(byTime) })
  if (causes.length === 0) return null
  return (
    <div className={css.causes}>
      <h4 className={css.causesHead}>{t('causes.title')}</h4>
      <ul>
        {causes.map(({ event, explains }) => (
          <li key={`${event.kind} ${event.unit} ${event.time} ${JSON.stringify(event.evidence)}`}>
            {t('causes.explains', {
              cause: causeWords(event, zone),
              count: explains.length,
              codes: explains.map((at) => state.faults.faults[at]?.code ?? '').join(listMark()),
            })}{' '}
            <span className={css.evidence}>{evidenceWords(event.evidence, zone)}</span>
          </li>
        ))}
      </ul>
      {!provenLeast && <p>{t('causes.not-proven')}</p>}
    </div>
  )
}

/** Earlier first; what has no time comes last. */
function byTime(one: WorkEvent, other: WorkEvent): number {
  if (one.time === null || other.time === null)
    return one.time === other.time ? 0 : one.time === null ? 1 : -1
  return Number(one.time) - Number(other.time)
}

function causeWords(event: WorkEvent, zone: string): string {
  const at = instantOf(event.time)
  return t(`cause.${event.kind}`, {
    unit: event.unit ?? t('cause.whole-car'),
    when: at === null ? '' : t('cause.at', { time: clock(at, zone) }),
  })
}
