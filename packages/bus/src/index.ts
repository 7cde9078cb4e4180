export * from './finding/index.ts'
export * from './frame/index.ts'
