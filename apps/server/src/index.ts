/** @module The server of one person on loopback: the API, live updates, and the built bench. */
export { type AppOptions, createApp } from './app.ts'
export { type Running, ServeError, type ServeOptions, serve } from './serve.ts'
