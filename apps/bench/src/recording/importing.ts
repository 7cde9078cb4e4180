import { createContext, useContext } from 'react'

/** Starts the import of a recording, from wherever it came. */
export const ImportContext = createContext<((file: File) => void) | null>(null)

/** The way to import a recording into the job of this page. */
export function useImport(): (file: File) => void {
  const start = useContext(ImportContext)
  if (start === null) throw new Error('A recording is imported from inside a job page.')
  return start
}
