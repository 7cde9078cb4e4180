import { type PolicyPack, packLabel, readPolicyPack } from '@shearline/jobfile'
import { useEffect, useRef, useState } from 'react'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { EditPack } from './EditPack.tsx'
import { forgetPack, keepPack, workBy } from './kept-packs.ts'
import { packText } from './pack-text.ts'
import css from './policy.module.css'
import { ReadPack } from './ReadPack.tsx'
import { saveAsFile } from './save-file.ts'
import { usePacks } from './usePacks.ts'

/** The packs this device knows: choose what new jobs begin with, change a copy, read and save them as files. */
export default function PolicyPage() {
  const { packs, own, usual, again } = usePacks()
  const [editing, setEditing] = useState<PolicyPack | null>(null)
  const [problem, setProblem] = useState('')
  const title = useRef<HTMLHeadingElement>(null)
  const edited = useRef(false)
  useEffect(() => {
    if (editing === null && edited.current) title.current?.focus()
    edited.current = editing !== null
  }, [editing])
  const then = (work: Promise<void>) => {
    work.then(again).then(
      () => setProblem(''),
      (error: unknown) => setProblem(problemWords(error)),
    )
  }
  const copyOf = (pack: PolicyPack): PolicyPack => ({
    ...pack,
    name: t('rules.own-suffix', { name: packText(pack.name) }),
    dated: new Date().toISOString().slice(0, 10),
  })
  if (editing !== null)
    return (
      <div className={css.page}>
        <EditPack
          pack={editing}
          onKeep={(pack) => {
            then(keepPack(pack))
            setEditing(null)
          }}
          onLeave={() => setEditing(null)}
        />
      </div>
    )
  return (
    <div className={css.page}>
      <h1 className={css.title} ref={title} tabIndex={-1}>
        {t('rules.page')}
      </h1>
      <p>{t('rules.page.what')}</p>
      <p className={css.law}>{t('rules.law')}</p>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <ul className={css.packs}>
        {packs.map((pack) => {
          const label = packLabel(pack)
          const ours = own.includes(pack)
          const name = packText(pack.name)
          return (
            <li key={label} className={css.pack} data-usual={label === usual}>
              <h2 className={css.subtitle}>{name}</h2>
              <p className={css.quiet}>
                {t('rules.where', { region: packText(pack.region), dated: pack.dated })}
              </p>
              {label === usual && <span className={css.usual}>{t('rules.usual')}</span>}
              <div className={formCss.foot}>
                {label !== usual && (
                  <button
                    type="button"
                    className={formCss.plain}
                    aria-label={t('rules.make-usual-named', { name })}
                    onClick={() => then(workBy(pack))}
                  >
                    {t('rules.make-usual')}
                  </button>
                )}
                <button
                  type="button"
                  className={formCss.plain}
                  aria-label={t(ours ? 'rules.edit-named' : 'rules.copy-named', { name })}
                  onClick={() => setEditing(ours ? pack : copyOf(pack))}
                >
                  {ours ? t('rules.edit') : t('rules.copy')}
                </button>
                <button
                  type="button"
                  className={formCss.plain}
                  aria-label={t('rules.save-named', { name })}
                  onClick={() =>
                    saveAsFile(
                      `${pack.name.replaceAll(/[^\p{L}\p{N}]+/gu, '-')}.json`,
                      new Blob([`${JSON.stringify(pack, null, 2)}\n`], { type: 'application/json' }),
                    )
                  }
                >
                  {t('rules.save')}
                </button>
                {ours && (
                  <button
                    type="button"
                    className={formCss.plain}
                    aria-label={t('rules.forget-named', { name })}
                    onClick={() => then(forgetPack(pack.name))}
                  >
                    {t('rules.forget')}
                  </button>
                )}
              </div>
            </li>
          )
        })}
      </ul>
      <ReadPack
        onRead={async (value) => {
          const read = readPolicyPack(value)
          if (read.ok) {
            await keepPack(read.pack)
            await again()
          }
          return read
        }}
      />
    </div>
  )
}
