import { lazy, Suspense, useState } from 'react'
import { go } from '../app/route.ts'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { t } from '../words/index.ts'
import { chooseKey } from './chosen-key.ts'
import { FoundKey } from './FoundKey.tsx'
import type { TaggedKey } from './tag-code.ts'

const FindKey = lazy(() => import('./FindKey.tsx'))
const TagSheet = lazy(() => import('./TagSheet.tsx'))

type Showing =
  | { readonly what: 'nothing' | 'find' | 'print' }
  | { readonly what: 'found'; readonly tag: TaggedKey }

/** Tags for the keys of this job: printing them, and finding a key by its tag. */
export function KeyTags() {
  const { state, job } = useDesk()
  const [showing, setShowing] = useState<Showing>({ what: 'nothing' })
  const close = () => setShowing({ what: 'nothing' })
  if (state.keys.length === 0) return null
  const found = showing.what === 'found' ? showing.tag : null
  const key = found?.job === job ? state.keys.find((one) => one.id === found.key) : undefined
  return (
    <div className={formCss.foot}>
      <button type="button" className={formCss.plain} onClick={() => setShowing({ what: 'find' })}>
        {t('tags.find')}
      </button>
      <button type="button" className={formCss.plain} onClick={() => setShowing({ what: 'print' })}>
        {t('tags.print')}
      </button>
      <Suspense fallback={null}>
        {showing.what === 'find' && (
          <FindKey
            known={state.keys.map((one) => ({ job, key: one.id }))}
            onFound={(tag) => {
              chooseKey(tag)
              setShowing({ what: 'found', tag })
            }}
            onClose={close}
          />
        )}
        {showing.what === 'print' && <TagSheet onClose={close} />}
      </Suspense>
      {found !== null && key !== undefined && <FoundKey jobKey={key} onClose={close} />}
      {found !== null && key === undefined && (
        <Dialog title={t('tags.elsewhere')} onClose={close}>
          <p>
            {found.job === job
              ? t('tags.elsewhere.gone', { key: found.key })
              : t('tags.elsewhere.job', { key: found.key })}
          </p>
          <div className={formCss.foot}>
            {found.job !== job && (
              <button
                type="button"
                className={formCss.submit}
                onClick={() => go({ page: 'job', job: found.job })}
              >
                {t('tags.elsewhere.open')}
              </button>
            )}
            <button type="button" className={formCss.plain} onClick={close}>
              {t('photo.close')}
            </button>
          </div>
        </Dialog>
      )}
    </div>
  )
}
