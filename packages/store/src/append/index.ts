export * from './admit.ts'
export * from './judge.ts'
