/** @module Backups: one portable folder for every database, made while servers run, checked before it is restored. */
export { type BackupMade, type BackupSource, backUp } from './backup.ts'
export { type Restored, type RestoreOptions, type RestoreTarget, restore } from './restore.ts'
