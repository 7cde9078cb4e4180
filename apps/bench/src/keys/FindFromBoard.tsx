import { lazy, Suspense, useState } from 'react'
import { go } from '../app/route.ts'
import { t } from '../words/index.ts'
import { chooseKey } from './chosen-key.ts'

const FindKey = lazy(() => import('./FindKey.tsx'))

/** A key in hand and no job open: its tag leads to its job and its card. */
export function FindFromBoard({ className }: { readonly className: string | undefined }) {
  const [finding, setFinding] = useState(false)
  return (
    <>
      <button type="button" className={className} onClick={() => setFinding(true)}>
        {t('tags.find')}
      </button>
      {finding && (
        <Suspense fallback={null}>
          <FindKey
            known={[]}
            onFound={(tag) => {
              chooseKey(tag)
              go({ page: 'job', job: tag.job })
            }}
            onClose={() => setFinding(false)}
          />
        </Suspense>
      )}
    </>
  )
}
