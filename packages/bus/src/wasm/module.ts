/**
 * @module Makes a WebAssembly module with one function over given memory, and starts it.
 *
 * Source: WebAssembly Core Specification 2.0, section 5.5 (binary format of modules).
 */

import { type Code, type Local, unsigned } from './instructions.ts'

/** What the host offers, as far as it is used here: in a browser, its workers and Node alike. */
declare const WebAssembly:
  | {
      readonly Memory: new (size: { initial: number; maximum: number }) => { readonly buffer: ArrayBuffer }
      readonly Module: new (bytes: Uint8Array) => object
      readonly Instance: new (
        module: object,
        imports: Readonly<Record<string, Readonly<Record<string, object>>>>,
      ) => { readonly exports: Readonly<Record<string, unknown>> }
    }
  | undefined

/** Memory that scanners and TypeScript share; its length never changes. */
export interface Memory {
  readonly buffer: ArrayBuffer
}

const PAGE_BYTES = 65_536
const I32 = 0x7f
const I64 = 0x7e
const V128 = 0x7b

/** Declares the parameters and the other places of a function. */
export class Locals {
  readonly #types: number[] = []
  readonly #parameters: number

  /** The first `parameters` declared are the function's, all of them 32-bit numbers. */
  constructor(parameters: number) {
    this.#parameters = parameters
  }

  i32(): Local {
    return this.#add(I32)
  }

  i64(): Local {
    return this.#add(I64)
  }

  v128(): Local {
    return this.#add(V128)
  }

  #add(type: number): Local {
    const index = this.#types.push(type) - 1
    return { get: [0x20, index], set: (value) => [...value, 0x21, index] }
  }

  /** The type of the function: its parameters, and one 32-bit result. */
  get type(): Code {
    return [0x60, this.#parameters, ...new Array<number>(this.#parameters).fill(I32), 1, I32]
  }

  /** The declaration of what is no parameter. */
  get declaration(): Code {
    const others = this.#types.slice(this.#parameters)
    return [...unsigned(others.length), ...others.flatMap((type) => [1, type])]
  }
}

function section(number: number, content: Code): Code {
  return [number, ...unsigned(content.length), ...content]
}

function name(text: string): Code {
  return [text.length, ...Array.from(text, (letter) => letter.charCodeAt(0))]
}

/** The bytes of a module: memory `m.m` comes in, function `f` goes out. */
export function moduleBytes(locals: Locals, body: Code): Uint8Array {
  const code = [...locals.declaration, ...body, 0x0b]
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 1, 0, 0, 0],
    ...section(1, [1, ...locals.type]),
    ...section(2, [1, ...name('m'), ...name('m'), 2, 0, 1]),
    ...section(3, [1, 0]),
    ...section(7, [1, ...name('f'), 0, 0]),
    ...section(10, [1, ...unsigned(code.length), ...code]),
  ])
}

/**
 * Memory of at least `bytes`; `undefined` where the host has no WebAssembly with vectors or does not allow it
 * (a page's content security policy without `wasm-unsafe-eval`).
 */
export function openMemory(bytes: number): Memory | undefined {
  const pages = Math.ceil(bytes / PAGE_BYTES)
  try {
    return WebAssembly === undefined ? undefined : new WebAssembly.Memory({ initial: pages, maximum: pages })
  } catch {
    return undefined
  }
}

/** Starts a function over memory; `undefined` as for `openMemory`. */
export function start<Arguments extends readonly number[]>(
  bytes: Uint8Array,
  memory: Memory,
): ((...numbers: Arguments) => number) | undefined {
  try {
    if (WebAssembly === undefined) return undefined
    const { exports } = new WebAssembly.Instance(new WebAssembly.Module(bytes), { m: { m: memory } })
    return exports.f as (...numbers: Arguments) => number
  } catch {
    return undefined
  }
}
