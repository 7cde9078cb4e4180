export * from './refusal.ts'
export * from './store.ts'
export * from './store-error.ts'
