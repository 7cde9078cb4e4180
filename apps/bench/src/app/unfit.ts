/** @module A form that is not sent says why, whatever its fields are made of. */

/**
 * Lets the browser say of each field that is empty or out of range what is wrong with it, and lead to the first one. A field
 * under a closed fold cannot take the focus, and a number field of the form library keeps the browser silent: in both cases
 * a press on the form's button would seem to do nothing.
 */
export function sayWhatIsUnfit(): void {
  addEventListener(
    'invalid',
    (event) => {
      if (!(event.target instanceof Element)) return
      for (let fold = event.target.closest('details'); fold !== null; ) {
        fold.open = true
        fold = fold.parentElement?.closest('details') ?? null
      }
      // The form library marks its field as wrong, and would then keep the browser from saying why.
      event.preventDefault = () => undefined
    },
    { capture: true },
  )
}
