/** @module What the practice car answers by code, in words. */
import { type Code, isCode } from '@shearline/jobfile'
import type { Exercise, Mark, Outcome } from '@shearline/practice-car'
import { say } from '../words/engine.ts'

/** What came of an action. */
export function outcomeWords({ code, values }: Outcome): string {
  return said(`practice.did.${code}`, values)
}

/** Why points were lost. */
export function markWords({ code, values }: Mark): string {
  return said(`practice.mark.${code}`, values)
}

/** Name and story of an exercise. */
export function exerciseWords({ id }: Exercise): { readonly title: string; readonly story: string } {
  return { title: said(`practice.${id}`), story: said(`practice.${id}.story`) }
}

/** The code itself when the catalogue has no words for it, so that nothing is hidden. */
function said(code: string, values: Outcome['values'] = {}): string {
  return isCode(code) ? say(code satisfies Code, values) : code
}
