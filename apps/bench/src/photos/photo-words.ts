import type { Body } from '@shearline/jobfile'
import { t } from '../words/index.ts'

/** What a photo shows, in words: "key A: worn blade". */
export function photoWords({ shows, key, words }: Body<'photo-attached'>): string {
  const what = key === undefined ? t(`photo.shows.${shows}`) : t('photo.shows.key-named', { key })
  return words === undefined ? what : t('photo.shows.with', { what, words })
}
