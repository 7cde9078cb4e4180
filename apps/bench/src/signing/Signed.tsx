import { type Body, bodyOf, type Fact, type JobState } from '@shearline/jobfile'
import { lazy, Suspense, useEffect, useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { keptPicture } from '../photos/kept-picture.ts'
import { deletions } from '../photos/on-record.ts'
import { sha256Of } from '../photos/sha256.ts'
import { t } from '../words/index.ts'
import { clock, day } from '../words/instants.ts'
import type { SignWish } from './SignDialog.tsx'
import { bytesOf, readSignature, type SignatureFile } from './signature-file.ts'
import css from './signing.module.css'
import { pad } from './strokes.ts'

const SignDialog = lazy(() => import('./SignDialog.tsx'))

type Signature = { readonly fact: Fact; readonly body: Body<'signature-drawn'> }

/** Signatures for one purpose that stand: none that was withdrawn. */
export function signaturesFor(
  facts: readonly Fact[],
  corrections: JobState['corrections'],
  purpose: SignWish['purpose'],
): readonly Signature[] {
  return facts.flatMap((fact) => {
    if (fact.kind !== 'signature-drawn') return []
    if (corrections.some((one) => one.fact === fact.id && one.stands === 'applied')) return []
    const read = bodyOf(fact, 'signature-drawn')
    return read.ok && read.body.for === purpose ? [{ fact, body: read.body }] : []
  })
}

/** The signature on record, whether its words are still those of the record, and the way to sign or sign again. */
export function Signed({
  signatures,
  wish,
}: {
  readonly signatures: readonly Signature[]
  readonly wish: SignWish
}) {
  const [open, setOpen] = useState(false)
  const last = signatures.at(-1)
  return (
    <>
      {last !== undefined && <Drawn key={last.fact.id} signature={last} shown={wish.shown} />}
      <div>
        <button
          type="button"
          className={last === undefined ? formCss.submit : formCss.plain}
          onClick={() => setOpen(true)}
        >
          {t(last === undefined ? `sign.${wish.purpose}` : 'sign.again')}
        </button>
      </div>
      {open && (
        <Suspense fallback={null}>
          <SignDialog wish={wish} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  )
}

type Read =
  | { readonly what: 'reading' | 'no-connection' | 'not-there' | 'damaged' }
  | { readonly what: 'read'; readonly file: SignatureFile; readonly bound: boolean }

function Drawn({ signature, shown }: { readonly signature: Signature; readonly shown: string }) {
  const { facts, zone } = useDesk()
  const { fact, body } = signature
  const [read, setRead] = useState<Read>({ what: 'reading' })
  const deletedAt = deletions(facts).get(body.blob)
  useEffect(() => {
    let live = true
    readKept(body).then(
      (next) => live && setRead(next),
      () => live && setRead({ what: 'damaged' }),
    )
    return () => {
      live = false
    }
  }, [body])
  const when = (at: string) => `${day(at, zone)}, ${clock(at, zone)}`
  return (
    <figure className={css.signed}>
      {deletedAt !== undefined ? (
        <p>{t('sign.deleted', { when: when(deletedAt) })}</p>
      ) : read.what === 'read' ? (
        <Sheet file={read.file} />
      ) : (
        <p role="status">{t(`sign.${read.what}`)}</p>
      )}
      <figcaption>
        <p>{t('sign.by', { signer: body.signer, when: when(fact.at), how: body.how ?? 'drawn' })}</p>
        {read.what === 'read' && (
          <>
            <p>
              {t(
                !read.bound
                  ? 'sign.words.broken'
                  : read.file.shown === shown
                    ? 'sign.words.same'
                    : 'sign.words.older',
              )}
            </p>
            <details className={formCss.more}>
              <summary>{t('sign.words')}</summary>
              <div className={css.shown}>
                {read.file.shown.split('\n').map((line) => (
                  <p key={line}>{line}</p>
                ))}
              </div>
            </details>
          </>
        )}
      </figcaption>
    </figure>
  )
}

async function readKept(body: Body<'signature-drawn'>): Promise<Read> {
  const kept = await keptPicture(body.blob)
  if ('missing' in kept) return { what: kept.missing }
  const file = readSignature(await kept.blob.text())
  if (file === null) return { what: 'damaged' }
  const bound = body.shown === undefined || (await sha256Of(bytesOf(file.shown))) === body.shown
  return { what: 'read', file, bound }
}

function Sheet({ file: { mark, signer } }: { readonly file: SignatureFile }) {
  return (
    <svg
      className={css.sheet}
      viewBox={`0 0 ${pad.width} ${pad.height}`}
      role="img"
      aria-label={t('sign.picture', { signer })}
    >
      {mark.how === 'drawn' ? (
        <path className={css.ink} d={mark.path} />
      ) : (
        <text x={pad.width / 2} y="120" textAnchor="middle" fontSize="44">
          {mark.name}
        </text>
      )}
    </svg>
  )
}
