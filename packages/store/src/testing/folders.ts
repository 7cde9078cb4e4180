import { existsSync } from 'node:fs'
import { tmpdir } from 'node:os'

/** A folder in memory where the system has one, for tests that write much and do not test the disk. */
export const quickFolder: string = existsSync('/dev/shm') ? '/dev/shm' : tmpdir()
