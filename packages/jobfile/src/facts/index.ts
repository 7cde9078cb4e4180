export * from './envelope.ts'
export * from './kinds.ts'
export { keyLabel } from './kinds-keys.ts'
