/**
 * @module Diagnostics over IP, ISO 13400-2: headers, payloads, and messages out of a byte stream.
 * `../ethernet` finds the bytes in a capture; this folder says what they mean.
 */

export * from './codes.ts'
export * from './header.ts'
export * from './message.ts'
export * from './report.ts'
export * from './stream.ts'
