/** @module Starts the server of one person as a process of its own: `--data FOLDER --port N [--database URL] [--demo]`. */
import { parseArgs } from 'node:util'
import { StoreError } from '@shearline/store'
import { seedDemo } from './demo/index.ts'
import { ServeError, serve } from './serve.ts'

try {
  const { values } = parseArgs({
    options: {
      data: { type: 'string' },
      port: { type: 'string', default: '4077' },
      demo: { type: 'boolean', default: false },
      database: { type: 'string', default: process.env.SHEARLINE_DATABASE ?? '' },
      'dump-made': { type: 'boolean', default: false },
    },
  })
  const port = Number(values.port)
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new ServeError(
      'cannot-listen',
      `"${values.port}" is no port.`,
      'Give a whole number from 0 to 65535.',
    )
  }
  const running = await serve({
    data: values.data ?? '.shearline',
    port,
    ...(values.database === '' ? {} : { database: values.database, dumpMade: values['dump-made'] }),
  })
  if (values.demo && (await seedDemo(running.store, Date.now()))) {
    console.log('This data folder was empty: three invented jobs were put into it.')
  }
  console.log(`Shearline is open at ${running.url}`)
  console.log('It listens on this machine only. Stop it with Ctrl+C.')
  const stop = async () => {
    await running.close()
    process.exit(0)
  }
  process.on('SIGINT', stop)
  process.on('SIGTERM', stop)
} catch (error) {
  if (!isExpected(error)) throw error
  console.error(error.message)
  process.exit(2)
}

/** Troubles with words of their own; anything else is a mistake of ours and shows its whole trace. */
function isExpected(error: unknown): error is Error {
  if (error instanceof ServeError || error instanceof StoreError) return true
  return error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')
}
