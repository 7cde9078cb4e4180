import type { DoctorFinding, Examination } from '@shearline/store'
import { countOf, paint, print } from './answer.ts'

/** Prints what an examination looked at and found, the verdict first. */
export function sayDoctor({ sound, looked, findings }: Examination): void {
  print(sound ? paint('Sound.', 'green') : paint('Something is not as it was kept.', 'red'))
  print(
    `${countOf(looked.facts, 'fact')}, ${countOf(looked.signatures, 'signature')} right, ${countOf(looked.links, 'link')} right, ` +
      `${countOf(looked.devices, 'device')}, ${countOf(looked.seals, 'sealed job')}, ${countOf(looked.documents, 'document')}, ` +
      `${countOf(looked.blobs, 'blob')} (${(looked.blobBytes / 1e6).toFixed(1)} MB)`,
  )
  printFindings(findings)
}

/** Prints findings one a line: severity unless an error, place, what, what to do. */
export function printFindings(findings: readonly DoctorFinding[]): void {
  for (const { severity, where, what, doNext } of findings)
    print(`- ${severity === 'error' ? '' : `${severity}: `}${where}: ${what} ${doNext}`)
}
