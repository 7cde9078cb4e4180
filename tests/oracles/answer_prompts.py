"""Runs a program on a terminal of its own and types the same line at every prompt.

usage: answer_prompts.py LINE PROGRAM ARGUMENT...

age asks for passphrases on the controlling terminal only, so a pipe does not do. Exits with the program's code.
"""

import os
import pty
import sys

line, program = sys.argv[1], sys.argv[2:]
child, terminal = pty.fork()
if child == 0:
    os.execvp(program[0], program)

heard = b""
while True:
    try:
        said = os.read(terminal, 4096)
    except OSError:  # Linux: the other side closed the terminal
        break
    if not said:
        break
    heard += said
    # Every prompt of age 1.1 ends in a colon or a closing bracket and a colon, then a blank.
    if heard.endswith(b": "):
        os.write(terminal, line.encode() + b"\n")
        heard = b""
sys.stderr.buffer.write(heard)
_, status = os.waitpid(child, 0)
sys.exit(os.waitstatus_to_exitcode(status))
