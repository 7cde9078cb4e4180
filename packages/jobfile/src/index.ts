export * from './chain/index.ts'
export * from './facts/index.ts'
export * from './fold/index.ts'
export * from './record/index.ts'
