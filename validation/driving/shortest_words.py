"""Lengths of shortest Reeds-Shepp ways between 10,000 pairs of poses, by OMPL's ReedsSheppStateSpace.

Reference for `val_shortest_words` in crates/driving. Run with OMPL 2.0.1 (Python wheel `ompl`):

    python shortest_words.py > shortest_words.csv

Poses come from the SplitMix64 generator (Steele, Lea, Flood 2014) seeded with 1, which the test runs too:
x and y in [-10, 10) m, heading in [-pi, pi), start then end; every fourth pair lies within a tenth of
that, where words have most pieces. The radius is 1 m.
"""

import math

from ompl import base as ob

PAIRS = 10_000
MASK = (1 << 64) - 1


class SplitMix64:
    def __init__(self, seed):
        self.state = seed

    def next(self):
        self.state = (self.state + 0x9E3779B97F4A7C15) & MASK
        z = self.state
        z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
        z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
        return z ^ (z >> 31)

    def unit(self):
        return (self.next() >> 11) / (1 << 53)


def main():
    space = ob.ReedsSheppStateSpace(1.0)
    rng = SplitMix64(1)
    print("# Reeds-Shepp lengths (radius 1 m), ompl 2.0.1, shortest_words.py; m, rounded to 1e-7")
    for pair in range(PAIRS):
        size = 1.0 if pair % 4 == 3 else 10.0
        states = []
        for _ in range(2):
            x, y, h = rng.unit(), rng.unit(), rng.unit()
            s = space.allocState()
            s.setX((2 * x - 1) * size)
            s.setY((2 * y - 1) * size)
            s.setYaw((2 * h - 1) * math.pi)
            states.append(s)
        print(f"{space.distance(*states):.7f}")


main()
