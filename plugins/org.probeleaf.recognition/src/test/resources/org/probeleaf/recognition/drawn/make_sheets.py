#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: The Probeleaf authors
"""Draws the sheets in this folder anew: see README.md.

usage: make_sheets.py FOLDER-WITH-node_modules
"""
import json
import os
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))

# Each part: designator, symbol of the skin or None for a box, value, pins with their nets.
SHEETS = {
    "divider-chain": [
        ("R1", "r_v", "10k", {"A": "in", "B": "a"}), ("R2", "r_v", "4k7", {"A": "a", "B": "b"}),
        ("R3", "r_v", "2k2", {"A": "b", "B": "c"}), ("C1", "c_v", "100n", {"A": "a", "B": "c"}),
        ("C2", "c_v", "10n", {"A": "b", "B": "c"}), ("U1", None, None, {"P1": "in", "P2": "a", "P3": "b", "P4": "c"}),
    ],
    "ladder": [
        ("L1", "l_v", "10u", {"A": "p", "B": "q"}), ("C1", "c_v", "1u", {"A": "q", "B": "z"}),
        ("L2", "l_v", "22u", {"A": "q", "B": "r"}), ("C2", "c_v", "1u", {"A": "r", "B": "z"}),
        ("L3", "l_v", "22u", {"A": "r", "B": "s"}), ("R1", "r_v", "50", {"A": "s", "B": "z"}),
        ("U1", None, None, {"P1": "p", "P2": "z"}), ("U2", None, None, {"P1": "s", "P2": "z", "P3": "r"}),
    ],
    "chips-in-a-row": [
        ("U1", None, None, {"P1": "a", "P2": "b", "P3": "c", "P4": "d"}),
        ("U2", None, None, {"P1": "c", "P2": "d", "P3": "e", "P4": "f"}),
        ("U3", None, None, {"P1": "e", "P2": "f", "P3": "g", "P4": "h"}),
        ("R1", "r_v", "330", {"A": "a", "B": "g"}), ("R2", "r_v", "330", {"A": "b", "B": "h"}),
    ],
    "star": [
        ("U1", None, None, {"P1": "m", "P2": "n", "P3": "o", "P4": "x", "P5": "y", "P6": "z"}),
        ("R1", "r_v", "1k", {"A": "x", "B": "m"}), ("R2", "r_v", "1k", {"A": "y", "B": "m"}),
        ("R3", "r_v", "1k", {"A": "z", "B": "m"}), ("C1", "c_v", "47p", {"A": "x", "B": "n"}),
        ("C2", "c_v", "47p", {"A": "y", "B": "n"}), ("C3", "c_v", "47p", {"A": "z", "B": "o"}),
    ],
    "loop": [
        ("U1", None, None, {"P1": "e", "P2": "f", "P3": "a"}), ("R1", "r_v", "100", {"A": "a", "B": "b"}),
        ("C1", "c_v", "2u2", {"A": "b", "B": "f"}), ("U2", None, None, {"P1": "b", "P2": "f", "P3": "c", "P4": "d"}),
        ("R2", "r_v", "6k8", {"A": "c", "B": "e"}), ("R3", "r_v", "6k8", {"A": "d", "B": "e"}),
    ],
}


def main():
    package = os.path.join(sys.argv[1], "node_modules", "netlistsvg")
    for name, parts in SHEETS.items():
        numbers = {}
        cells = {}
        truth = {}
        for ref, symbol, value, pins in parts:
            half = (len(pins) + 1) // 2
            for net in pins.values():
                numbers.setdefault(net, len(numbers) + 2)
            cells[ref] = {
                "type": symbol or ref,
                "port_directions": {p: "input" if i < half else "output" for i, p in enumerate(pins)},
                "connections": {p: [numbers[net]] for p, net in pins.items()},
                "attributes": {"value": value or ""},
            }
            for p, net in pins.items():
                truth.setdefault(net, []).append([ref, p])
        with tempfile.TemporaryDirectory() as d:
            source = os.path.join(d, "n.json")
            picture = os.path.join(d, "s.svg")
            json.dump({"modules": {"m": {"ports": {}, "cells": cells}}}, open(source, "w"))
            subprocess.run(["node", package + "/bin/netlistsvg.js", source, "-o", picture, "--skin",
                            package + "/lib/analog.svg"], check=True)
            subprocess.run(["rsvg-convert", "-f", "pdf", "-o", os.path.join(HERE, name + ".pdf"), picture], check=True)
        nets = [{"name": n, "pins": p} for n, p in sorted(truth.items()) if len(p) > 1]
        with open(os.path.join(HERE, name + ".json"), "w") as f:
            json.dump({"nets": nets}, f, indent=1)
            f.write("\n")


main()
