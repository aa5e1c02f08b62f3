#!/usr/bin/env python3
"""Writes the levels of the demo site to examples/demo-job/survey/levels.csv.

The site is invented: a plot of 60 m by 50 m that falls to the south and west. A levelled yard in the
middle, a bank of 12 % below it, a road in the south, a strip of 10 % along the west boundary, and
natural ground of 8 % behind the building. Levels every 2.5 m with up to 8 mm of scatter, as level
points taken by hand have. Same seed, same file. Run from anywhere: python3 validation/demo/levels.py
"""
import random
from pathlib import Path

SEED = 20270412
STEP = 2.5


def height(east, north):
    """Height of the invented ground, m."""
    if north <= 13.5:  # road and hardstanding, falls 0.5 % to the south
        z = 99.02 - 0.005 * (13.5 - north)
    elif north < 21.5:  # bank
        z = 99.02 + 0.12 * (north - 13.5)
    elif north <= 35.0:  # yard and building platform, falls 0.5 % to the south
        z = 99.98 + 0.005 * (north - 21.5)
    else:  # natural ground
        z = 100.0475 + 0.08 * (north - 35.0)
    if east < 9.0 and north > 13.5:  # strip along the west boundary
        z -= 0.10 * (9.0 - east)
    return z


def main():
    scatter = random.Random(SEED)
    out = Path(__file__).resolve().parents[2] / "examples/demo-job/survey/levels.csv"
    rows = ["point,east,north,height,remark"]
    number = 0
    for j in range(21):
        for i in range(25):
            number += 1
            east, north = i * STEP, j * STEP
            z = height(east, north) + scatter.uniform(-0.008, 0.008)
            remark = "invented by validation/demo/levels.py" if number == 1 else ""
            rows.append(f"{number},{east:.2f},{north:.2f},{z:.3f},{remark}")
    out.write_text("\n".join(rows) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
