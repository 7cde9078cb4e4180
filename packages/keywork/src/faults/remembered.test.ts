import { describe, expect, it } from 'vitest'
import { remembered } from './remembered.ts'

describe('what is remembered of a text', () => {
  it('is computed once, and computed again alike when too much had to be forgotten', () => {
    let computed = 0
    const lengthOf = remembered((text) => {
      computed++
      return text.length > 3 ? null : text.length
    })
    expect([lengthOf('abc'), lengthOf('abc'), lengthOf('long'), lengthOf('long')]).toEqual([3, 3, null, null])
    expect(computed).toBe(2)
    for (let text = 1000; text < 3000; text++) expect(lengthOf(String(text))).toBeNull()
    expect([lengthOf('abc'), lengthOf('long')]).toEqual([3, null])
    expect(computed).toBe(2004)
  })
})
