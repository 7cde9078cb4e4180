import type { Complaint } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { curve, layOut } from './circle.ts'

const complaint = (from: string, aboutUnit: string, code: string): Complaint => ({
  from,
  about: 'body',
  aboutUnit,
  code,
  class: 'raised-by-work',
})
const place = { centreX: 100, centreY: 100, radius: 50 }

describe('the circle of complaints', () => {
  it('joins complaints of one unit about another and puts the most complained of at the top', () => {
    const { nodes, edges } = layOut(
      [
        complaint('engine', 'body', 'U0140-87'),
        complaint('engine', 'body', 'U0140-00'),
        complaint('brakes', 'body', 'U0140'),
      ],
      (each) => each.aboutUnit ?? each.about,
      place,
    )
    expect(edges.map(({ from, to, codes }) => [from, to, codes.length])).toEqual([
      ['engine', 'body', 2],
      ['brakes', 'body', 1],
    ])
    expect(nodes.map(({ name, blamed }) => [name, blamed])).toEqual([
      ['body', 3],
      ['brakes', 0],
      ['engine', 0],
    ])
    expect(nodes[0]).toMatchObject({ x: 100, y: 50 })
    for (const node of nodes) expect(Math.hypot(node.x - 100, node.y - 100)).toBeCloseTo(50)
  })

  it('draws the way there and the way back apart', () => {
    const one = { name: 'one', x: 0, y: 0, blamed: 0 }
    const other = { name: 'other', x: 100, y: 0, blamed: 0 }
    expect(curve(one, other, 10, 20)).not.toBe(curve(other, one, 10, 20))
    expect(curve(one, other, 0, 20)).toBe('M0 0Q50 20 100 0')
    expect(curve(other, one, 0, 20)).toBe('M100 0Q50 -20 0 0')
  })
})
