"""Wheel and pad forces over uneven ground with lift-off, by a frame on compression-only springs.

Independent of the project: PyNiteFEA, a general structural library. The machine is a grid of beams a
million times stiffer than its contacts; each contact is a compression-only spring between the grid and a
base whose height is imposed; the weight acts at a random centre. With a free rear axle the frame's grid
ends at the pin, below which a stiff axle hangs in a joint released about the fore-aft axis. Small
rotations: the library's linear theory. Writes contact_forces.csv beside this file.

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


def solve(place, heights, stiffness, mass, centre, axle):
    """Forces on front left, front right, rear left, rear right, N."""
    m = FEModel3D()
    m.add_material("hard", 1e15, 4e14, 0.25, 0.0)
    m.add_section("bar", 0.01, 1e-4, 1e-4, 2e-4)
    (fx, fy), (rx, ry) = place["front"], place["rear"]
    at = [(fx, fy), (fx, -fy), (rx, ry), (rx, -ry)]
    for i, (x, y) in enumerate(at):
        m.add_node(f"c{i}", x, 0.0, y)  # the library's own upright axis is y
        m.add_node(f"g{i}", x, -1.0, y)
        m.def_support(f"g{i}", True, True, True, True, True, True)
        m.def_node_disp(f"g{i}", "DY", heights[i])
        m.add_spring(f"s{i}", f"g{i}", f"c{i}", stiffness[i], comp_only=True)
    m.add_node("w", centre[0], 0.0, centre[1])
    m.add_node_load("w", "FY", -mass * G)

    def beam(a, b):
        m.add_member(f"{a}-{b}", a, b, "hard", "bar")

    if axle == 0.0:
        for i in range(4):
            beam("w", f"c{i}")
        fixed = "w"
    else:
        m.add_node("p", rx, 0.0, 0.0)
        m.add_node("q", rx, 0.0, 0.0001)  # axle side of the pin
        beam("w", "c0")
        beam("w", "c1")
        m.add_node("r", rx - 0.001, 0.0, 0.0)
        beam("w", "r")
        # A bar along the pin, without torsion at its far end: the joint.
        m.add_member("pin", "r", "p", "hard", "bar")
        m.def_releases("pin", Rxj=True)
        beam("p", "c2")
        beam("p", "c3")
        m.add_node_load("p", "FY", -axle * G)
        del m.nodes["q"]
        fixed = "w"
    # Held along the ground and against yaw, where no force arises.
    m.def_support(fixed, True, False, True, False, True, False)
    m.analyze(check_statics=False, max_iter=100)
    combo = "Combo 1"
    return [-m.springs[f"s{i}"].axial(combo) if m.springs[f"s{i}"].active[combo] else 0.0 for i in range(4)]


def main():
    r = random.Random(61)
    rows = []
    n = 0
    while len(rows) < 200:
        place = MACHINES[n % 4]
        n += 1
        free = place["name"] != "R1 on pads" and n % 5 == 0
        mass = round(r.uniform(4000, 16000))
        (fx, fy), (rx, ry) = place["front"], place["rear"]
        centre = (round(rx + (fx - rx) * r.uniform(0.15, 0.9), 3), round(r.uniform(-0.55, 0.55) * fy, 3),
                  round(r.uniform(0.8, 1.6), 3))
        axle = round(r.uniform(400, 1200)) if free else 0.0
        k = [round(r.uniform(4e6, 3e7), -4)] * 2 + [round(r.uniform(4e6, 3e7), -4)] * 2
        # A lift of a contact by heights is of the order of weight over stiffness; most grounds stay within it.
        reach = 0.1 if free else r.choice([0.002, 0.005, 0.02, 0.1])
        heights = [round(r.uniform(-reach, reach), 4) for _ in range(4)]
        try:
            forces = solve(place, heights, k, mass, centre, axle)
        except Exception as e:  # the library finds no rest: not a case
            print("left out:", type(e).__name__, str(e)[:80])
            continue
        weight = (mass + axle) * G
        if abs(sum(forces) - weight) > 1e-4 * weight:
            print("left out: weight", sum(forces), weight)
            continue
        rows.append({
            "machine": place["name"], "rear_axle": "free" if free else "locked",
            "front_x_m": fx, "front_half_m": fy, "rear_x_m": rx, "rear_half_m": ry, "pin_height_m": place["pin"],
            "mass_kg": mass, "centre_x_m": centre[0], "centre_y_m": centre[1], "centre_z_m": centre[2],
            "axle_mass_kg": axle, "front_n_per_m": k[0], "rear_n_per_m": k[2],
            **{f"height_{w}_m": h for w, h in zip(("fl", "fr", "rl", "rr"), heights)},
            **{f"force_{w}_n": round(f, 1) + 0.0 for w, f in zip(("fl", "fr", "rl", "rr"), forces)},
            "gravity_m_per_s2": G,
        })
    with open(HERE / "contact_forces.csv", "w", newline="") as f:
        out = csv.DictWriter(f, rows[0].keys())
        out.writeheader()
        out.writerows(rows)
    lifted = [sum(row[f"force_{w}_n"] < 1.0 for w in ("fl", "fr", "rl", "rr")) for row in rows]
    print(len(rows), "rows; contacts lifted:", {k: lifted.count(k) for k in set(lifted)})


if __name__ == "__main__":
    main()
