/** @module PostgreSQL for a firm: any number of servers on one database, live updates by LISTEN and NOTIFY. */
export { openPostgres } from './engine.ts'
