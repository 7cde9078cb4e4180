import { describe, expect, it } from 'vitest'
import { onlyHere } from './only-here.ts'

describe('an address a colleague cannot open', () => {
  it.each(['localhost', 'LOCALHOST', 'localhost.', 'bench.localhost', '127.0.0.1', '127.0.0.2', '[::1]'])(
    'is %s',
    (host) => expect(onlyHere(host)).toBe(true),
  )

  it.each([
    'bench.example',
    'notlocalhost',
    'localhost.example',
    '192.168.1.20',
    '127.0.0.1.example',
    '[fe80::1]',
  ])('is not %s', (host) => expect(onlyHere(host)).toBe(false))
})
