export * from './engine.ts'
