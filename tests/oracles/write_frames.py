"""Writes the frames of a candump log with python-can: write_frames.py LOG FILE... (.log, .csv, by their suffix)."""

import sys

from can.io import CanutilsLogReader, CanutilsLogWriter, CSVWriter

messages = list(CanutilsLogReader(sys.argv[1]))
for name in sys.argv[2:]:
    writer = CSVWriter(name) if name.endswith(".csv") else CanutilsLogWriter(name)
    for message in messages:
        writer.on_message_received(message)
    writer.stop()
