/** @module Policy packs: rules that local law and the firm decide, kept as data with source, date and region. */
export * from './asks.ts'
export * from './codes.ts'
export * from './pack.ts'
export * from './packs.ts'
export * from './retention-pack.ts'
export * from './standing.ts'
