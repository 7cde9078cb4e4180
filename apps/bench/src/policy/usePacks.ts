import { neutralPack, type PolicyPack, packLabel, shippedPacks } from '@shearline/jobfile'
import { useCallback, useEffect, useState } from 'react'
import { everyPack, type PackChoice } from './kept-packs.ts'

const shippedOnly: PackChoice = { packs: shippedPacks, own: [], usual: packLabel(neutralPack) }

/** The packs to choose from; those that are shipped until the firm's own are read. */
export function usePacks(): PackChoice & { readonly again: () => Promise<void> } {
  const [choice, setChoice] = useState(shippedOnly)
  const again = useCallback(() => everyPack().then(setChoice), [])
  useEffect(() => {
    // A browser that refuses storage still has the packs that came with the program.
    again().catch(() => undefined)
  }, [again])
  return { ...choice, again }
}

/** The pack a job names, if it is on this device. */
export function packNamed(packs: readonly PolicyPack[], label: string | undefined): PolicyPack | null {
  return packs.find((pack) => packLabel(pack) === label) ?? null
}
