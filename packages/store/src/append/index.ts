export * from './admit.ts'
export * from './here.ts'
export * from './judge.ts'
