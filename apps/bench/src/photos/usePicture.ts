import { useEffect, useState } from 'react'
import { type KeptPicture, keptPicture } from './kept-picture.ts'
import { thumbnailOf } from './shrink.ts'

/** Shorter side of a thumbnail, pixels: twice what is shown, for dense screens. */
const thumbnailSide = 320

/** A picture on its way to the screen. */
export type Picture =
  | { readonly what: 'reading' }
  | { readonly what: 'shown'; readonly address: string }
  | { readonly what: 'missing'; readonly why: Extract<KeptPicture, { missing: string }>['missing'] }

/** Opens a kept picture for as long as it is shown; its address ends with it. */
export function usePicture(sha256: string, size: 'thumbnail' | 'whole'): Picture {
  const [picture, setPicture] = useState<Picture>({ what: 'reading' })
  useEffect(() => {
    let live = true
    let address = ''
    const open = async () => {
      const kept = await keptPicture(sha256)
      if ('missing' in kept) return live && setPicture({ what: 'missing', why: kept.missing })
      const blob = size === 'whole' ? kept.blob : await thumbnailOf(kept.blob, thumbnailSide)
      if (!live) return
      if (blob === null) return setPicture({ what: 'missing', why: 'damaged' })
      address = URL.createObjectURL(blob)
      setPicture({ what: 'shown', address })
    }
    open().catch(() => {
      if (live) setPicture({ what: 'missing', why: 'damaged' })
    })
    return () => {
      live = false
      if (address !== '') URL.revokeObjectURL(address)
    }
  }, [sha256, size])
  return picture
}
