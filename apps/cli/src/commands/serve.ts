import { spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { Command } from 'commander'
import { type KeptFlags, keptIn } from '../job/data.ts'

/** The server is an app of its own: it is started as a process, not imported. */
const serverEntry = fileURLToPath(new URL('../../../server/dist/main.js', import.meta.url))

/** `shearline serve`: the bench on this machine only, until it is stopped. */
export function addServe(program: Command): void {
  program
    .command('serve')
    .description('Serve the bench on this machine only (loopback)')
    .option('--data <folder>', 'data folder (default: SHEARLINE_DATA, else .shearline here)')
    .option(
      '--database <address>',
      'PostgreSQL of a firm, postgres://user@host/name (default: SHEARLINE_DATABASE)',
    )
    .option('--dump-made', 'a dump of the database was made by hand: bring its tables up to date without one')
    .option('--port <port>', 'port; 0 takes a free one', '4077')
    .option('--demo', 'put the invented jobs into a data folder that has none yet')
    .action(async (flags: KeptFlags & { port: string; demo?: boolean; dumpMade?: boolean }) => {
      const { data, database } = keptIn(flags)
      const args = [
        '--data',
        data,
        '--port',
        flags.port,
        ...(flags.demo === true ? ['--demo'] : []),
        ...(flags.dumpMade === true ? ['--dump-made'] : []),
      ]
      const child = spawn(process.execPath, [serverEntry, ...args], {
        stdio: 'inherit',
        // By the environment, so that a password in it is not seen in the list of processes.
        env: { ...process.env, SHEARLINE_DATABASE: database ?? '' },
      })
      const forward = (signal: NodeJS.Signals) => child.kill(signal)
      process.on('SIGINT', forward)
      process.on('SIGTERM', forward)
      process.exitCode = await new Promise<number>((resolve) =>
        child.on('exit', (code) => resolve(code ?? 0)),
      )
    })
}
