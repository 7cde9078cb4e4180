/** @module The instructions inside a bundle: what it is, and the commands that check it without anything of ours. */
import { type Device, fromBase64Url, sha256OfBytes } from '../chain/index.ts'
import type { JobRecord } from '../record/index.ts'
import { keyName, names } from './layout.ts'
import { pemStart } from './pem.ts'

export interface ReadmeInput {
  readonly record: JobRecord
  readonly devices: readonly Device[]
  readonly packer: Device
  /** Blobs that facts name and that are not in the bundle, with the places of those facts. */
  readonly missing: readonly (readonly [sha256: string, facts: readonly number[]])[]
  readonly documents: number
  /** The verify page is packed too. */
  readonly page: boolean
}

/** A name people gave, as plain prose: nothing of it may pass for a heading or a command. */
function plain(name: string): string {
  return name
    .replace(/[^\p{L}\p{M}\p{N} .,'()-]/gu, ' ')
    .replace(/ +/g, ' ')
    .trim()
}

/** Whoever packed the bundle packed this page too: only one got elsewhere proves something against him. */
const pageRow = `
| \`${names.page}\` | a page that proves the zip or a document in a browser; to prove it against its packer, use one you got elsewhere |`

/** The text of README.md. It follows from its input alone. */
export function readmeText({ record, devices, packer, missing, documents, page }: ReadmeInput): string {
  const sealed = record.facts.some(({ kind }) => kind === 'document-sealed')
  const keys = devices.map(({ device, name, publicKey }) => {
    const fingerprint = sha256OfBytes(fromBase64Url(publicKey) ?? new Uint8Array(0))
    return `- ${device}, "${plain(name)}": ${fingerprint}`
  })
  const absent = missing.map(([sha256, facts]) => `- ${sha256}, named by fact ${facts.join(', ')}`)
  return `# The record of job ${record.job}

${record.facts.length} facts, ${documents === 0 ? 'no sealed document' : documents === 1 ? 'one sealed document' : `${documents} sealed documents`}, packed by ${packer.device}.
${sealed ? '' : '\nThe job is not sealed: nothing proves that no fact was left out.\n'}
| file | what it is |
| --- | --- |
| \`${names.facts}\` | every fact in order, one canonical JSON text (RFC 8785) a line |
| \`chain/DEVICE/NUMBER.signed\` | the text that device signed for its fact of that number; \`body\` in it is a SHA-256 |
| \`chain/DEVICE/NUMBER.body\` | the content that hash stands for; \`{"erased":"HASH"}\` when it was deleted in time |
| \`chain/DEVICE/NUMBER.sig\` | the Ed25519 signature (RFC 8032), 64 bytes |
| \`keys/DEVICE.pem\` | the device's public key; \`${names.devices}\` has their names |
| \`blobs/HASH\` | what facts name: recordings, photos, signatures; vehicle secrets only sealed with age |
| \`documents/HASH.pdf\` | handover documents, each with the record and a seal inside |
| \`${names.list}\`, \`${names.listSignature}\` | SHA-256 of every file, and the packer's signature over that list |${page ? pageRow : ''}

## Whose keys

Signatures prove that nothing was changed since these keys signed it. Whose keys they are, only the firm can tell:
compare these fingerprints (SHA-256 of the 32 key bytes) with the ones it gives you by another way.

${keys.join('\n')}
${absent.length === 0 ? '' : `\n## Not in here\n\nFacts name these files. They were deleted when their time was over, had not arrived, or are sealed vehicle secrets\nthat were not handed out.\n\n${absent.join('\n')}\n`}
## Check it yourself

You need a POSIX shell, unzip, openssl 3 and sha256sum. Put the zip alone into an empty folder, open a shell there and
enter these blocks in order. Whatever is wrong is said in a line that begins with WRONG; the last block gives the answer.

Unpack. A damaged zip is told here already:

\`\`\`sh
bad=0
wrong() { bad=1; printf 'WRONG: %s\\n' "$*"; }
unzip -q -n ./*.zip || wrong 'the zip file was changed'
\`\`\`

Every file is the one that was packed, none was added:

\`\`\`sh
sha256sum --check --strict --quiet ${names.list} || wrong 'the files named above were changed or are missing'
listed=0
while read -r sum file; do listed=$((listed + 1)); done < ${names.list}
present=0
for file in * */* */*/*; do
  case $file in *.zip | ${names.list} | ${names.listSignature}) continue ;; esac
  if [ -f "$file" ]; then present=$((present + 1)); fi
done
[ "$present" -eq "$listed" ] || wrong "$present files are here, $listed were packed"
\`\`\`

The list is signed by the device that packed it:

\`\`\`sh
openssl pkeyutl -verify -pubin -inkey ${keyName(packer.device)} -rawin -in ${names.list} -sigfile ${names.listSignature} ||
  wrong '${names.list} is not the list that was signed'
\`\`\`

Every key belongs to its device: a device is named by the first 16 digits of its key's SHA-256:

\`\`\`sh
for key in keys/*.pem; do
  device=\${key#keys/} device=\${device%.pem}
  { read -r line; read -r line; } < "$key"
  print=$(printf '%s' "\${line#${pemStart}}" | openssl base64 -d -A | sha256sum)
  [ "$device" = "dev-\${print%"\${print#????????????????}"}" ] || wrong "$key is not the key of $device"
done
\`\`\`

Every fact is signed by its device, its content is the one that was signed, and it follows the device's fact before it
(numbers are missing where the device wrote for other jobs):

\`\`\`sh
chained=0
for folder in chain/*; do
  device=\${folder#chain/} before= last=0
  for signed in "$folder"/*.signed; do
    name=\${signed%.signed} chained=$((chained + 1))
    IFS= read -r text < "$signed"
    IFS= read -r body < "$name.body"
    openssl pkeyutl -verify -pubin -inkey "keys/$device.pem" -rawin -in "$signed" -sigfile "$name.sig" > /dev/null ||
      wrong "$signed is not signed by $device"
    case $body in
      '{"erased":"'????????????????????????????????????????????????????????????????'"}')
        sum=\${body#'{"erased":"'} sum=\${sum%'"}'} ;;
      *) sum=$(sha256sum < "$name.body") sum=\${sum%% *} ;;
    esac
    case $text in *'"body":"'"$sum"'",'*) ;; *) wrong "$name.body is not the content of $signed" ;; esac
    case $text in *'"device":"'"$device"'",'*) ;; *) wrong "$signed is not of $device" ;; esac
    number=\${text##*'"seq":'} number=\${number%%,*}
    previous=\${text##*'"prev":'} previous=\${previous%%,*}
    [ "$folder/$(printf %08d "$number")" = "$name" ] || wrong "$signed has the number $number"
    if [ "$number" -eq 1 ]; then
      [ "$previous" = null ] || wrong "$signed says it is not the first"
    elif [ "$number" -eq $((last + 1)) ]; then
      [ "$previous" = "\\"$before\\"" ] || wrong "$signed does not follow the fact before it"
    fi
    before=$(sha256sum < "$signed") before=\${before%% *} last=$number
  done
done
\`\`\`

\`${names.facts}\` says the same as these files, line by line:

\`\`\`sh
facts=0 seal=0
while IFS= read -r line; do
  facts=$((facts + 1))
  device=\${line##*'"device":"'} device=\${device%%'"'*}
  number=\${line##*'"seq":'} number=\${number%%,*}
  kind=\${line##*'"kind":"'} kind=\${kind%%'"'*}
  name=chain/$device/$(printf %08d "$number")
  IFS= read -r text < "$name.signed"
  IFS= read -r body < "$name.body"
  sig=$(openssl base64 -A -in "$name.sig") sig=\${sig%==}
  while :; do
    case $sig in *+*) sig=\${sig%%+*}-\${sig#*+} ;; */*) sig=\${sig%%/*}_\${sig#*/} ;; *) break ;; esac
  done
  head=\${text%%'"body":"'*} tail=\${text#*'"body":"'} tail=\${tail#*'"'}
  [ "$line" = "$head\\"body\\":$body\${tail%,'"v":'*},\\"sig\\":\\"$sig\\",\\"v\\":\${tail##*,'"v":'}" ] ||
    wrong "${names.facts}, line $facts: not what $name.signed and its body say"
  if [ "$kind" = document-sealed ]; then seal=$facts sealbody=$body; fi
done < ${names.facts}
[ "$facts" -eq "$chained" ] || wrong "${names.facts} has $facts facts, chain has $chained"
\`\`\`

No fact was left out: the last seal counts the facts before it and holds the tree head (RFC 6962, 2.1) over the SHA-256
of their signed texts:

\`\`\`sh
raw() {
  hex=$1 out=
  while [ -n "$hex" ]; do
    rest=\${hex#??} byte=$((0x\${hex%"\${hex#??}"}))
    out="$out\\\\0$((byte / 64))$((byte / 8 % 8))$((byte % 8))" hex=$rest
  done
  printf '%b' "$out"
}
node() { sum=$({ printf '\\001'; raw "$1"; raw "$2"; } | sha256sum) sum=\${sum%% *}; }
stack= place=0
while IFS= read -r line; do
  place=$((place + 1))
  [ "$place" -lt "$seal" ] || break
  device=\${line##*'"device":"'} device=\${device%%'"'*}
  number=\${line##*'"seq":'} number=\${number%%,*}
  leaf=$(sha256sum < "chain/$device/$(printf %08d "$number").signed") leaf=\${leaf%% *}
  sum=$({ printf '\\000'; raw "$leaf"; } | sha256sum) sum=\${sum%% *} size=1
  while [ "\${stack%%:*}" = "$size" ]; do
    top=\${stack%% *} stack=\${stack#* } size=$((size * 2))
    node "\${top#*:}" "$sum"
  done
  stack="$size:$sum $stack"
done < ${names.facts}
sum=\${stack%% *} sum=\${sum#*:} stack=\${stack#* }
while [ -n "$stack" ]; do
  top=\${stack%% *} stack=\${stack#* }
  node "\${top#*:}" "$sum"
done
if [ "$seal" -eq 0 ]; then
  wrong 'the job is not sealed'
else
  case $sealbody in *'"count":'$((seal - 1))','*) ;; *) wrong "fact $seal (the seal) counts other facts than there are" ;; esac
  case $sealbody in *'"root":"'"$sum"'"'*) ;; *) wrong "fact $seal (the seal) was made over other facts" ;; esac
  [ "$seal" -eq "$facts" ] || echo "$((facts - seal)) facts were recorded after the last seal"
fi
\`\`\`

Every kept file has the content it is named by:

\`\`\`sh
for file in blobs/* documents/*; do
  [ -f "$file" ] || continue
  sum=$(sha256sum < "$file") sum=\${sum%% *} name=\${file##*/}
  [ "\${name%.pdf}" = "$sum" ] || wrong "$file is not what its name says"
done
\`\`\`

The answer:

\`\`\`sh
if [ "$bad" -eq 0 ]; then echo 'Everything holds.'; else echo 'Something is WRONG: see above.'; fi
[ "$bad" -eq 0 ]
\`\`\`
`
}
