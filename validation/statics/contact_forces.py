"""Wheel and pad forces over uneven ground with lift-off, by a frame on springs that only push.

Independent of the project: PyNiteFEA, a general structural library, solves a grid of beams far stiffer than
its contacts. Each contact is a spring between the grid and a base whose height is imposed; the weight acts at
a random centre. With a free rear axle the grid ends at the pin, on which a stiff axle turns: a bar along the
pin with its torsion released. The library's own compression-only springs drop all that pull at once and then
find nothing that stands, so here the one that pulls most is left out, the next solved, and in the end it is
checked that what stands pushes and what was left out hangs clear of its ground: with one spring each there is
only one such answer. The library's theory is that of small rotations; the weight is moved by its height times
the lean and solved again until it rests. Writes contact_forces.csv beside this file.

    pip install PyNiteFEA==3.2.0 numpy==2.4.6
    python contact_forces.py
"""
import csv
import pathlib
import random

from Pynite import FEModel3D

G = 9.80665
HERE = pathlib.Path(__file__).parent
# R1 of the reference data and machines invented for this: half tracks, base, pin, front pads.
MACHINES = [
    {"name": "R1", "front": (0.0, 1.0), "rear": (-3.0, 1.0), "pin": 0.7},
    {"name": "R1 on pads", "front": (0.45, 1.2), "rear": (-3.0, 1.0), "pin": 0.7},
    {"name": "narrow (invented)", "front": (0.0, 0.75), "rear": (-2.25, 0.75), "pin": 0.48},
    {"name": "long (invented)", "front": (0.0, 1.05), "rear": (-3.4, 0.95), "pin": 0.75},
]


def grid(place, heights, stiffness, mass, centre, axle, active):
    """Forces (N) and heights (m) of front left, front right, rear left, rear right; roll and pitch of the
    body, left side down and nose down; roll of the axle. Rad."""
    m = FEModel3D()
    m.add_material("hard", 1e15, 4e14, 0.25, 0.0)
    m.add_section("bar", 0.01, 1e-4, 1e-4, 2e-4)
    (fx, fy), (rx, ry) = place["front"], place["rear"]
    # The library's upright axis is y; z is to the right.
    at = [(fx, -fy), (fx, fy), (rx, -ry), (rx, ry)]
    for i, (x, z) in enumerate(at):
        m.add_node(f"c{i}", x, 0.0, z)
        if active[i]:
            m.add_node(f"g{i}", x, -1.0, z)
            m.def_support(f"g{i}", True, True, True, True, True, True)
            m.def_node_disp(f"g{i}", "DY", heights[i])
            m.add_spring(f"s{i}", f"g{i}", f"c{i}", stiffness[i])
    m.add_node("w", centre[0], 0.0, -centre[1])
    m.add_node_load("w", "FY", -mass * G)

    def beam(a, b):
        m.add_member(f"{a}-{b}", a, b, "hard", "bar")

    for i in range(2 if axle else 4):
        beam("w", f"c{i}")
    if axle:
        m.add_node("p", rx, 0.0, 0.0)
        m.add_node("r", rx + 0.5, 0.0, 0.0)
        beam("w", "r")
        m.add_member("pin", "r", "p", "hard", "bar")
        m.def_releases("pin", Rxj=True)
        beam("p", "c2")
        beam("p", "c3")
        m.add_node_load("p", "FY", -axle * G)
        m.def_support("p", False, False, False, False, True, False)
    # Held along the ground and against yaw, where no force arises.
    m.def_support("w", True, False, True, False, True, False)
    m.analyze(check_statics=False)
    one = "Combo 1"
    rise = [m.nodes[f"c{i}"].DY[one] for i in range(4)]
    # A spring that pushes.
    force = [stiffness[i] * (heights[i] - rise[i]) if active[i] else 0.0 for i in range(4)]
    roll = -(rise[0] - rise[1]) / (2 * fy)
    axle_roll = -(rise[2] - rise[3]) / (2 * ry)
    mid_front, mid_rear = (rise[0] + rise[1]) / 2, (rise[2] + rise[3]) / 2
    return force, rise, roll, (mid_rear - mid_front) / (fx - rx), axle_roll


def solve(place, heights, stiffness, mass, centre, axle):
    """Forces at rest, N; nothing where none is found."""
    lean = [0.0, 0.0]
    for _ in range(30):
        moved = (centre[0] + lean[0], centre[1] + lean[1])
        active = [True] * 4
        while True:
            if sum(active) < 3:
                return None
            force, rise, roll, pitch, axle_roll = grid(place, heights, stiffness, mass, moved, axle, active)
            worst = min((f, i) for i, f in enumerate(force) if active[i])
            if worst[0] >= 0.0:
                break
            if axle:
                return None
            active[worst[1]] = False
        if any(not active[i] and rise[i] < heights[i] - 1e-9 for i in range(4)):
            return None
        aside = 0.0
        if axle:
            (fx, _), (rx, _) = place["front"], place["rear"]
            aside = place["pin"] * (axle_roll - roll) * (fx - centre[0]) / (fx - rx)
        now = [centre[2] * pitch, centre[2] * roll + aside]
        if max(abs(a - b) for a, b in zip(now, lean)) < 1e-7:
            return force
        lean = now
    return None


def main():
    r = random.Random(61)
    rows = []
    n = left_out = 0
    while len(rows) < 200:
        place = MACHINES[n % 4]
        n += 1
        free = place["name"] != "R1 on pads" and n % 5 == 0
        mass = round(r.uniform(4000, 16000))
        (fx, fy), (rx, ry) = place["front"], place["rear"]
        centre = (round(rx + (fx - rx) * r.uniform(0.2, 0.85), 3), round(r.uniform(-0.4, 0.4) * fy, 3),
                  round(r.uniform(0.8, 1.6), 3))
        axle = round(r.uniform(400, 1200)) if free else 0.0
        front, rear = round(r.uniform(4e6, 3e7), -4), round(r.uniform(4e6, 3e7), -4)
        # Leans above some degrees are beyond small rotations; a free axle's most of all.
        reach = 0.01 if free else r.choice([0.002, 0.005, 0.02, 0.1])
        heights = [round(r.uniform(-reach, reach), 4) for _ in range(4)]
        forces = solve(place, heights, [front] * 2 + [rear] * 2, mass, centre, axle)
        if forces is None:  # it tips
            left_out += 1
            continue
        weight = (mass + axle) * G
        assert abs(sum(forces) - weight) < 1e-5 * weight, (forces, weight)
        rows.append({
            "machine": place["name"], "rear_axle": "free" if free else "locked",
            "front_x_m": fx, "front_half_m": fy, "rear_x_m": rx, "rear_half_m": ry, "pin_height_m": place["pin"],
            "mass_kg": mass, "centre_x_m": centre[0], "centre_y_m": centre[1], "centre_z_m": centre[2],
            "axle_mass_kg": axle, "front_n_per_m": front, "rear_n_per_m": rear,
            **{f"height_{w}_m": h for w, h in zip(("fl", "fr", "rl", "rr"), heights)},
            **{f"force_{w}_n": round(f, 1) for w, f in zip(("fl", "fr", "rl", "rr"), forces)},
            "gravity_m_per_s2": G,
        })
    with open(HERE / "contact_forces.csv", "w", newline="") as f:
        out = csv.DictWriter(f, rows[0].keys())
        out.writeheader()
        out.writerows(rows)
    lifted = [sum(row[f"force_{w}_n"] == 0.0 for w in ("fl", "fr", "rl", "rr")) for row in rows]
    print(len(rows), "rows,", left_out, "left out; contacts lifted:", {k: lifted.count(k) for k in set(lifted)})


if __name__ == "__main__":
    main()
