/** @module Policy packs: rules that local law and the firm decide, kept as data with source, date and region. */
export * from './retention-pack.ts'
