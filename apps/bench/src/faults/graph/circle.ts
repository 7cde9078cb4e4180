/** @module Who complains about whom, laid out on a circle. */

import type { Complaint, FaultClass } from '@shearline/keywork'

/** Complaints of one unit about another that have the same class. */
export interface Edge {
  readonly from: string
  readonly to: string
  readonly class: FaultClass
  readonly codes: readonly string[]
}

export interface Node {
  readonly name: string
  readonly x: number
  readonly y: number
  /** How many complaints are about it. */
  readonly blamed: number
}

export interface Circle {
  readonly nodes: readonly Node[]
  readonly edges: readonly Edge[]
}

/** Edges by unit and class, and the units evenly round a circle, the most complained of at the top. */
export function layOut(
  all: readonly Complaint[],
  nameOf: (complaint: Complaint) => string,
  {
    centreX,
    centreY,
    radius,
  }: { readonly centreX: number; readonly centreY: number; readonly radius: number },
): Circle {
  const edges = new Map<string, Edge>()
  const blamed = new Map<string, number>()
  for (const complaint of all) {
    const to = nameOf(complaint)
    const key = `${complaint.from}\n${to}\n${complaint.class}`
    const codes = [...(edges.get(key)?.codes ?? []), complaint.code]
    edges.set(key, { from: complaint.from, to, class: complaint.class, codes })
    blamed.set(to, (blamed.get(to) ?? 0) + 1)
    if (!blamed.has(complaint.from)) blamed.set(complaint.from, 0)
  }
  const order = [...blamed].sort(
    ([oneName, one], [otherName, other]) => other - one || oneName.localeCompare(otherName),
  )
  const nodes = order.map(([name, count], index): Node => {
    const angle = (2 * Math.PI * index) / order.length - Math.PI / 2
    return {
      name,
      x: centreX + radius * Math.cos(angle),
      y: centreY + radius * Math.sin(angle),
      blamed: count,
    }
  })
  return { nodes, edges: [...edges.values()] }
}

/** A curve from one unit to another that stops short of both, bent to its right so that two ways part. */
export function curve(from: Node, to: Node, stopShort: number, bend: number): string {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  if (length === 0) return ''
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  const middle = {
    x: (from.x + to.x) / 2 - along.y * bend,
    y: (from.y + to.y) / 2 + along.x * bend,
  }
  const begin = toward(from, middle, stopShort)
  const end = toward(to, middle, stopShort)
  return `M${begin}Q${round(middle.x)} ${round(middle.y)} ${end}`
}

function toward(node: Node, place: { readonly x: number; readonly y: number }, by: number): string {
  const length = Math.hypot(place.x - node.x, place.y - node.y)
  return `${round(node.x + ((place.x - node.x) / length) * by)} ${round(node.y + ((place.y - node.y) / length) * by)}`
}

function round(value: number): number {
  return Math.round(value * 10) / 10
}
