"""Reads CAN recordings with python-can and scapy and prints what they saw as JSON, for the tests beside this file.

Standard input: a list of {"file", "by", "ids"}; standard output: a list of {"frames", "messages", "error"}.
A frame is "SECONDS.MICROS ID[x] [F][R][E] HEX", a message "SECONDS.MICROS ID HEX" with the time of its last frame.
"""

import json
import sys


def stamp(seconds):
    return f"{float(seconds):.6f}"


def frame(time, can_id, extended, marks, data):
    name = f"{can_id:08X}x" if extended else f"{can_id:03X}"
    return " ".join([stamp(time), name, marks or "-", bytes(data).hex()])


def with_python_can(job, frames):
    from can.io import CanutilsLogReader

    for message in CanutilsLogReader(job["file"]):
        marks = ("F" if message.is_fd else "") + ("R" if message.is_remote_frame else "")
        marks += "E" if message.is_error_frame else ""
        frames.append(
            frame(message.timestamp, message.arbitration_id, message.is_extended_id, marks, message.data or b"")
        )


def with_scapy(job, frames, messages):
    from scapy.config import conf
    from scapy.layers.can import CAN, CANFD, CandumpReader
    from scapy.utils import rdpcap

    conf.contribs["CAN"] = {"swap-bytes": False, "remove-padding": True}
    packets = CandumpReader(job["file"]) if job["by"] == "scapy log" else rdpcap(job["file"])
    seen = []
    for packet in packets:
        if not isinstance(packet, (CAN, CANFD)):
            packet = packet[CANFD] if CANFD in packet else packet[CAN]
        flags = str(packet.flags)
        # Which class scapy picks says nothing about CAN FD; more than eight bytes do.
        marks = ("F" if len(packet.data) > 8 else "") + ("R" if "remote" in flags else "")
        marks += "E" if "error" in flags else ""
        frames.append(frame(packet.time, packet.identifier, "extended" in flags, marks, packet.data))
        if packet.identifier in job.get("ids", []):
            seen.append(packet)
    if not seen:
        return
    from scapy.contrib.isotp import ISOTPMessageBuilder

    for can_id in job["ids"]:
        builder = ISOTPMessageBuilder(use_ext_address=False)
        for packet in seen:
            if packet.identifier != can_id:
                continue
            builder.feed(packet)
            while len(builder):
                message = builder.pop()
                name = f"{can_id:08X}" if can_id > 0x7FF else f"{can_id:03X}"
                # Popped as soon as it is whole: the frame just fed is its last one.
                messages.append(" ".join([stamp(packet.time), name, bytes(message.data).hex()]))


def main():
    answers = []
    for job in json.load(sys.stdin):
        frames, messages, error = [], [], None
        try:
            if job["by"] == "python-can":
                with_python_can(job, frames)
            else:
                with_scapy(job, frames, messages)
        except Exception as problem:  # what ends a reading is part of the answer
            error = f"{type(problem).__name__}: {problem}"
        answers.append({"frames": frames, "messages": messages, "error": error})
    json.dump(answers, sys.stdout)


main()
