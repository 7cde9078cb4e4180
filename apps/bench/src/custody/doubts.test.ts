import { describe, expect, it } from 'vitest'
import { namesOf } from './doubts.ts'

const device = (id: string, name: string) => ({ device: id, name, publicKey: `key of ${id}` })

describe('what a doubt calls a device', () => {
  it('is the name people gave it', () => {
    expect(namesOf([device('aaaaaaaa', 'Van 1'), device('bbbbbbbb', 'Van 2')]).get('bbbbbbbb')).toBe('Van 2')
  })

  it('tells two devices of one name apart by the start of their identifiers', () => {
    const names = namesOf([device('aaaaaaaa', 'Tablet'), device('bbbbbbbb', 'Tablet')])
    expect([...names.values()]).toEqual(['Tablet (aaaaaa…)', 'Tablet (bbbbbb…)'])
  })

  it('is left to the identifier where the name is empty', () => {
    expect(namesOf([device('aaaaaaaa', ' ')]).has('aaaaaaaa')).toBe(false)
  })
})
