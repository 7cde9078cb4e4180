/** @module The type of the API, for typed clients. It has no value: importing it at run time fails on purpose. */
import type { createApi } from './api/index.ts'

/** Give it to Hono's client: `hc<Api>('')`. */
export type Api = ReturnType<typeof createApi>
