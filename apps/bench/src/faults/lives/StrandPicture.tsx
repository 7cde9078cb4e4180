import { directionOf } from '@shearline/jobfile'
import { Fragment } from 'react'
import { language } from '../../words/index.ts'
import css from './lives.module.css'
import type { NodeKind } from './node.ts'

/** Width of one scan's column and height of a strand, pixels. */
export const columnWidth = 70
const height = 44
const middle = height / 2

/** One fault as a strand through the scans; each half between two scans belongs to the nearer one. */
export function StrandPicture({ nodes }: { readonly nodes: readonly NodeKind[] }) {
  const width = nodes.length * columnWidth
  // The heads stand in the order people read; drawn from the left, the strand has to follow them.
  const drawn = directionOf(language()) === 'rtl' ? nodes.toReversed() : nodes
  return (
    <svg
      className={css.strandPicture}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden="true"
    >
      {drawn.map((kind, index) => {
        const x = index * columnWidth
        const centre = x + columnWidth / 2
        const from = index === 0 ? centre : x
        const to = index === nodes.length - 1 ? centre : x + columnWidth
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: columns never move
          <Fragment key={index}>
            {kind !== 'unread' && from !== to && (
              <path className={css[`line-${kind}`]} d={`M${from} ${middle}H${to}`} />
            )}
            <Shape kind={kind} x={centre} y={middle} />
          </Fragment>
        )
      })}
    </svg>
  )
}

/** The shape of one state: square, disc, half disc, broken ring, ring, cross. */
export function Shape({ kind, x, y }: { readonly kind: NodeKind; readonly x: number; readonly y: number }) {
  switch (kind) {
    case 'failing':
      return <path className={css.full} d={`M${x} ${y - 14}l14 14l-14 14l-14-14z`} />
    case 'present':
      return <circle className={css.full} cx={x} cy={y} r="8.5" />
    case 'pending':
      return (
        <>
          <circle className={css.ring} cx={x} cy={y} r="8.5" />
          <path className={css.full} d={`M${x} ${y - 8.5}a8.5 8.5 0 0 0 0 17z`} />
        </>
      )
    case 'untested':
      return (
        <>
          <circle className={css.broken} cx={x} cy={y} r="9" />
          <text className={css.query} x={x} y={y + 4.5}>
            ?
          </text>
        </>
      )
    case 'absent':
      return <circle className={css.ring} cx={x} cy={y} r="6" />
    case 'unread':
      return <path className={css.cross} d={`M${x - 5} ${y - 5}l10 10m0-10l-10 10`} />
  }
}
