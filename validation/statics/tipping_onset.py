"""Onset of tipping as the ground is tilted slowly, in any direction, also aslant.

Independent of the project: MuJoCo (on_tyres.py). Gravity is turned slowly, ever slower as the wheels that
come free lose their load; the onset is where they carry nothing. Once on hard contacts, once on tyres.
`held_by` says which wheels keep the machine from rolling away along its length: with a free rear axle it
matters, since the axle hands the pull of its wheels on to the frame as a moment about the pin. Writes
tipping_onset.csv beside this file.

    pip install mujoco==4.0.0 numpy==2.4.6
    python tipping_onset.py
"""
import csv
import math
import pathlib
import random

import numpy as np

from on_tyres import G, Machine, Run

HERE = pathlib.Path(__file__).parent


def onset(m, azimuth):
    """Tilt in degrees and over which side; no tilt where it slides away before."""
    sim = Run(m)
    sim.model.opt.noslip_iterations = 20  # without it soft friction creeps and the machine yaws
    weight = (m.mass + m.axle) * G
    free = m.axle > 0.0
    sides = {"left": [1] if free else [1, 3], "right": [0] if free else [0, 2], "front": [2, 3], "rear": [0, 1]}
    for _ in range(2000):
        sim.step()
    tilt, f = 0.0, sim.forces()
    while tilt < math.radians(60.0):
        s, c = math.sin(tilt) * G, math.cos(tilt) * G
        sim.gravity((s * math.cos(azimuth), s * math.sin(azimuth), -c))
        sim.step()
        f += (sim.forces() - f) * (m.step / 0.1)  # the feet tremble a little: a mean over a tenth of a second
        over, least = min(((o, sum(f[i] for i in w)) for o, w in sides.items()), key=lambda e: e[1])
        if least < 3e-4 * weight:
            moved = sim.data.xpos[sim.body]
            return (None if math.hypot(moved[0], moved[1]) > 0.03 else math.degrees(tilt)), over
        share = least / weight
        tilt += math.radians(2.0 if share > 0.05 else 0.5 if share > 0.015 else 0.06) * m.step
    return None, ""


def main():
    r = random.Random(71)
    rows = []
    for n in range(96):
        free = n % 3 != 2 or n >= 72
        half, base = round(r.uniform(0.85, 1.05), 3), round(r.uniform(2.6, 3.2), 3)
        mass = round(r.uniform(8000, 14000))
        centre = (round(-base * r.uniform(0.15, 0.6), 3), round(r.uniform(-0.15, 0.15), 3), round(r.uniform(1.0, 2.0), 3))
        contacts = [(0.0, half), (0.0, -half), (-base, half), (-base, -half)]
        held = ["all", "front", "rear"][n // 3 % 3] if free else "all"
        inertia = (mass * 0.55, mass * 1.9, mass * 2.0)
        tyres = [round(r.uniform(6e5, 1.5e6), -3)] * 2 + [round(r.uniform(6e5, 1.5e6), -3)] * 2
        # Friction as of dry concrete and a little more: far above it a wheel that comes free still jams the frame.
        m = Machine(mass, centre, inertia, contacts, [1e7] * 4, 0.7, friction=1.2)
        m.rolls = {"all": [False] * 4, "front": [False, False, True, True], "rear": [True, True, False, False]}[held]
        if free:
            m.axle = round(r.uniform(800, 1200))
            m.axle_centre = (-base, 0.0, 0.6)
            m.pin = round(r.uniform(0.6, 0.8), 3)
            m.mass -= m.axle
            m.inertia = (m.mass * 0.55, m.mass * 1.9, m.mass * 2.0)
        azimuth = round(r.uniform(0.0, 360.0), 1) if n % 4 else r.choice([0.0, 90.0, 180.0, 270.0])
        if n >= 72:  # square to the line from the left front contact to the pin, where the frame tips soonest
            azimuth = round(90.0 + math.degrees(math.atan2(half, base)), 1)
        hard, over = onset(m, math.radians(azimuth))
        m.stiffness = tyres
        soft, soft_over = onset(m, math.radians(azimuth))
        if hard is None or soft is None:
            print("slides: left out", n)
            continue
        rows.append({
            "rear_axle": "free" if free else "locked", "held_by": held,
            "body_mass_kg": m.mass, "centre_x_m": centre[0], "centre_y_m": centre[1], "centre_z_m": centre[2],
            "half_track_m": half, "rear_x_m": -base, "free_axle_mass_kg": m.axle, "axle_centre_z_m": m.axle_centre[2],
            "pin_height_m": m.pin, "front_tyre_n_per_m": tyres[0], "rear_tyre_n_per_m": tyres[2],
            "azimuth_deg": azimuth, "hard_onset_deg": round(hard, 3), "hard_over": over,
            "tyres_onset_deg": round(soft, 3), "tyres_over": soft_over,
        })
        print(rows[-1])
    with open(HERE / "tipping_onset.csv", "w", newline="") as f:
        out = csv.DictWriter(f, rows[0].keys())
        out.writeheader()
        out.writerows(rows)


if __name__ == "__main__":
    main()
