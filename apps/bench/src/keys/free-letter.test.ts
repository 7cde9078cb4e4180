import { keyLabel } from '@shearline/jobfile'
import { describe, expect, it } from 'vitest'
import { freeLetter } from './free-letter.ts'

describe('the letter proposed for the next key', () => {
  it('is the first one not on the bench, so that a withdrawn letter is used again', () => {
    expect(freeLetter([])).toBe('A')
    expect(freeLetter(['A', 'C'])).toBe('B')
  })

  it('goes on after Z with letters the record accepts', () => {
    const all = Array.from({ length: 26 }, (_, index) => String.fromCharCode(65 + index))
    expect(freeLetter(all)).toBe('A2')
    expect(keyLabel.safeParse(freeLetter(all)).success).toBe(true)
  })
})
