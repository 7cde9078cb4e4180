import { describe, expect, it } from 'vitest'
import { type SeenSign, vinInCode, vinsOnPlate } from './found-vin.ts'

// The invented van's VIN: a maker prefix without a maker, its check digit right.
const vin = 'T6SHVN3A0R0042788'
const signs = (text: string, confidence = 95): SeenSign[] => [...text].map((sign) => ({ sign, confidence }))

describe('the VIN in a code', () => {
  it('is the whole code, or follows the data identifier, or stands among other words', () => {
    expect(vinInCode(vin)).toBe(vin)
    expect(vinInCode(` ${vin.toLowerCase()} `)).toBe(vin)
    expect(vinInCode(`I${vin}`)).toBe(vin)
    expect(vinInCode(`VIN:${vin};COLOUR:MOSS`)).toBe(vin)
  })

  it('is shown for mending when it has 17 signs and one is impossible', () => {
    expect(vinInCode('T6SHVN3A0ROO42788')).toBe('T6SHVN3A0ROO42788')
  })

  it('is not made out of what holds none', () => {
    expect(vinInCode('https://example.org/part/12345')).toBeNull()
    expect(vinInCode(`X${vin}`)).toBeNull()
    expect(vinInCode(`${vin}12`)).toBeNull()
    expect(vinInCode('')).toBeNull()
  })
})

describe('the VIN on a plate', () => {
  it('is found between stars and gaps, and keeps how sure the reader was of each sign', () => {
    const line = [
      ...signs('*'),
      ...signs(vin.slice(0, 8)),
      ...signs(' '),
      ...signs(vin.slice(8), 60),
      ...signs('*'),
    ]
    const [first] = vinsOnPlate([signs('1480 KG'), line])
    expect(first?.vin).toBe(vin)
    expect(first?.signs.filter(({ confidence }) => confidence < 85)).toHaveLength(9)
  })

  it('comes first when its check digit is right, before another row of 17', () => {
    const other = 'T6SHVN3A0R0042789'
    expect(vinsOnPlate([signs(other, 99), signs(vin, 70)]).map((one) => one.vin)).toEqual([vin, other])
  })

  it('is not found in shorter lines', () => {
    expect(vinsOnPlate([signs(vin.slice(1)), []])).toEqual([])
  })
})
