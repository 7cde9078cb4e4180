/** @module How to check the document with openssl and a shell, without anything of ours. */
import { pemStart } from '../../bundle/pem.ts'
import type { Block } from './blocks.ts'
import { list, type Pen, paragraph, subheading } from './pen.ts'

/**
 * The commands, one a line: POSIX shell, openssl 3 and coreutils or their like. They take the seal's line out of the
 * file, prove its signature (Ed25519, RFC 8032, with the key in the form of RFC 8410), and hold against it every
 * byte before the seal's update and every line of that update. Each line fits the width of a page.
 */
export const commandLines: readonly string[] = [
  `export LC_ALL=C; f=document.pdf`,
  `s=$(grep -a '^{"manifest":{' "$f" | tail -n 1); printf '%s\\n' "$s" > line`,
  `m=\${s#\\{\\"manifest\\":}; m=\${m%,\\"signature\\":\\"*}; printf %s "$m" > manifest`,
  `g=\${s##*\\"signature\\":\\"}; g=\${g%%\\"*}`,
  `k=\${m##*\\"publicKey\\":\\"}; k=\${k%%\\"*}; k=$(printf %s "$k=" | tr _- /+)`,
  `printf %s "${pemStart}$k" | openssl base64 -d -A > key`,
  `printf %s "$g==" | tr _- /+ | openssl base64 -d -A > sig`,
  `w=\${m##*\\"whole\\":\\{\\"bytes\\":}; n=\${w%%,*}; h=\${w##*\\"sha256\\":\\"}; h=\${h%%\\"*}`,
  `r=\${w#*\\"rest\\":\\"}; r=\${r%%\\"*}; i='/ID \\[<[0-9a-f]*> <[0-9a-f]*>\\]'`,
  `tail -c +$((n + 1)) "$f" > end`,
  `openssl pkeyutl -verify -pubin -keyform DER -inkey key -rawin -in manifest -sigfile sig &&`,
  `test "$s" = "{\\"manifest\\":$m,\\"signature\\":\\"$g\\"}" &&`,
  `test "$(head -c "$n" "$f" | sha256sum | cut -c 1-64)" = "$h" &&`,
  `test "$(grep -axvFf line end | grep -axv "$i" | sha256sum | cut -c 1-64)" = "$r" &&`,
  `echo 'It holds. The key fingerprint is:' &&`,
  `printf %s "$k" | openssl base64 -d -A | sha256sum`,
]

/** What to do, the commands, and what they do not show. */
export function byHand({ say }: Pen): readonly Block[] {
  return [
    subheading(say('doc.by-hand')),
    paragraph(say('doc.by-hand-how')),
    {
      kind: 'table',
      columns: [{ text: say('doc.by-hand-commands'), share: 1, mono: true, leftToRight: true }],
      rows: commandLines.map((line) => [line]),
      whole: true,
    },
    list([say('doc.by-hand-answer'), say('doc.by-hand-limits')]),
  ]
}
