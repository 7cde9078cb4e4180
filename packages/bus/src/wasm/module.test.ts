import { describe, expect, it } from 'vitest'
import { block, choose, i32, jump, jumpIf, loop, v128 } from './instructions.ts'
import { Locals, moduleBytes, openMemory, start } from './module.ts'

const memory = openMemory(65_536)

describe('a module written here', () => {
  it('runs: a loop that adds numbers until one is zero', () => {
    if (memory === undefined) throw new Error('this Node has no WebAssembly')
    const locals = new Locals(1)
    const [at, sum, next] = [locals.i32(), locals.i32(), locals.i32()]
    const body = [
      ...block(
        loop(
          next.set(i32.load(at.get)),
          choose(i32.eqz(next.get), [jump(2)]),
          sum.set(i32.add(sum.get, next.get)),
          at.set(i32.add(at.get, i32.const(4))),
          jump(0),
        ),
      ),
      ...sum.get,
    ]
    const add = start<[number]>(moduleBytes(locals, body), memory)
    new Int32Array(memory.buffer, 64, 4).set([70_000, -3, 128, 0])
    expect(add?.(64)).toBe(70_125)
  })

  it('compares sixteen bytes at once', () => {
    if (memory === undefined) throw new Error('this Node has no WebAssembly')
    const locals = new Locals(2)
    const [left, right] = [locals.i32(), locals.i32()]
    const answer = locals.i32()
    const same = v128.allSet(v128.notAbove(v128.load(left.get), v128.load(right.get)))
    const body = [
      ...block(answer.set(i32.const(1)), jumpIf(0, same), answer.set(i32.const(0))),
      ...answer.get,
    ]
    const notAbove = start<[number, number]>(moduleBytes(locals, body), memory)
    const bytes = new Uint8Array(memory.buffer)
    bytes.fill(200, 256, 288)
    expect(notAbove?.(256, 272)).toBe(1)
    bytes[263] = 201
    expect(notAbove?.(256, 272)).toBe(0)
  })

  it('is refused, not thrown, when its bytes are no module', () => {
    if (memory === undefined) throw new Error('this Node has no WebAssembly')
    expect(start(Uint8Array.of(0, 0x61, 0x73, 0x6d, 9), memory)).toBeUndefined()
  })
})
