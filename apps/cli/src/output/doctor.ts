import type { DoctorFinding, Examination } from '@shearline/store'
import { paint, print } from './answer.ts'

/** Prints what an examination looked at and found, the verdict first. */
export function sayDoctor({ sound, looked, findings }: Examination): void {
  print(sound ? paint('Sound.', 'green') : paint('Something is not as it was kept.', 'red'))
  print(
    `${looked.facts} facts, ${looked.signatures} signatures right, ${looked.links} links right, ` +
      `${looked.devices} devices, ${looked.seals} sealed jobs, ${looked.documents} documents, ` +
      `${looked.blobs} blobs (${(looked.blobBytes / 1e6).toFixed(1)} MB)`,
  )
  printFindings(findings)
}

/** Prints findings one a line: severity unless an error, place, what, what to do. */
export function printFindings(findings: readonly DoctorFinding[]): void {
  for (const { severity, where, what, doNext } of findings)
    print(`- ${severity === 'error' ? '' : `${severity}: `}${where}: ${what} ${doNext}`)
}
