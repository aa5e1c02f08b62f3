"""Time runs of a machine on tyres: what sudden events do to it. See README.md for what the columns hold.

Independent of the project: MuJoCo integrates a rigid body on four spring-damper tyres (on_tyres.py).
Writes the files time_*.csv beside this file.

    pip install mujoco==4.0.0 numpy==2.4.6
    python time_runs.py
"""
import csv
import math
import pathlib
import random

import mujoco
import numpy as np

from on_tyres import G, RADIUS, Machine, Run

HERE = pathlib.Path(__file__).parent
GONE = math.cos(math.radians(60.0))


def machine(r, low=0.9, high=1.8, axle=False, **more):
    """A body of 8 to 14 t, track 1.6 to 2.1 m, base 2.6 to 3.2 m, centre `low` to `high` up."""
    mass = round(r.uniform(8000, 14000))
    half = round(r.uniform(0.8, 1.05), 3)
    base = round(r.uniform(2.6, 3.2), 3)
    centre = (round(-base * r.uniform(0.4, 0.6), 3), round(r.uniform(-0.05, 0.05), 3), round(r.uniform(low, high), 3))
    roll, pitch = r.uniform(0.65, 0.85), r.uniform(1.2, 1.6)
    inertia = tuple(round(mass * k * k) for k in (roll, pitch, pitch * r.uniform(1.0, 1.08)))
    k = [round(r.uniform(5e5, 1.5e6), -3)] * 2 + [round(r.uniform(5e5, 1.5e6), -3)] * 2
    damping = r.choice([0.02, 0.03, 0.05, 0.1])
    contacts = [(0.0, half), (0.0, -half), (-base, half), (-base, -half)]
    m = Machine(mass, centre, inertia, contacts, k, damping, **more)
    if axle:
        m.axle = round(r.uniform(700, 1300))
        m.axle_centre = (-base, 0.0, 0.55)
        m.pin = round(r.uniform(0.5, 0.75), 3)
        m.mass = mass - m.axle
    return m


def described(m, gravity=(0.0, 0.0, -G)):
    """The columns that every file begins with."""
    preload = Run(m, gravity).preload
    return {
        "body_mass_kg": m.mass, "centre_x_m": m.centre[0], "centre_y_m": m.centre[1], "centre_z_m": m.centre[2],
        "inertia_roll_kg_m2": m.inertia[0], "inertia_pitch_kg_m2": m.inertia[1], "inertia_yaw_kg_m2": m.inertia[2],
        "half_track_m": m.contacts[0][1], "rear_x_m": m.contacts[2][0],
        "front_tyre_n_per_m": m.stiffness[0], "rear_tyre_n_per_m": m.stiffness[2],
        "damping_ratio": m.damping_ratio,
        "free_axle_mass_kg": m.axle, "pin_height_m": m.pin, "axle_centre_z_m": m.axle_centre[2],
    } | {f"before_{w}_n": float(f) for w, f in zip(("front_left", "front_right", "rear_left", "rear_right"), preload)}


def write(name, rows):
    with open(HERE / name, "w", newline="") as f:
        out = csv.DictWriter(f, rows[0].keys())
        out.writeheader()
        for row in rows:
            out.writerow({k: (f"{v:.6g}" if isinstance(v, float) else v) for k, v in row.items()})
    print(name, len(rows), "rows")


def deg(a):
    return math.degrees(a)


def slope(left):
    """Gravity on ground that falls to the left by `left` rad."""
    return (0.0, G * math.sin(left), -G * math.cos(left))


# A wheel loses height.

def dropped(m, g, wheels, drop, sudden):
    """Runs a drop; slow: over 4 s with heavy damping. Attitudes before, at the peak and after, forces, tipped."""
    ratio = m.damping_ratio
    m.damping_ratio = ratio if sudden else 0.7
    sim = Run(m, g)
    m.damping_ratio = ratio
    for _ in range(1000):
        sim.step()
    before = sim.attitude()
    peak = list(before)
    least = sim.forces()
    most = least.copy()
    for k in range(12000 if sudden else 16000):
        share = 1.0 if sudden else min(1.0, k / 8000)
        for i in wheels:
            sim.data.mocap_pos[i, 2] = -0.5 - drop * share
        sim.step()
        a = sim.attitude()
        peak = [max(peak[0], a[0]), max(peak[1], a[1], key=lambda v: abs(v - before[1]))]
        f = sim.forces()
        least, most = np.minimum(least, f), np.maximum(most, f)
        if sim.upright() < GONE:
            return before, peak, a, least, most, True
    return before, peak, sim.attitude(), least, most, False


WHEELS = {"front-left": [0], "rear-left": [2], "both-left": [0, 2], "both-front": [0, 1]}


def wheel_drop(seed=41, count=40):
    r, rows = random.Random(seed), []
    for n in range(count):
        m = machine(r, axle=n % 4 == 3)
        wheels = ["front-left", "rear-left", "both-left"][n % 3]
        drop = round(r.uniform(0.03, 0.35), 3)
        left = math.radians(round(r.uniform(0.0, 9.0), 2)) if n % 2 else 0.0
        g = slope(left)
        before, _, after, _, _, slow = dropped(m, g, WHEELS[wheels], drop, False)
        _, peak, _, least, most, sudden = dropped(m, g, WHEELS[wheels], drop, True)
        change = 0.0 if slow else after[0] - before[0]
        rows.append(described(m, g) | {
            "slope_left_deg": deg(left), "wheels": wheels, "drop_m": drop,
            "slow_roll_deg": "" if slow else deg(change),
            "slow_pitch_deg": "" if slow else deg(after[1] - before[1]), "slow_tips": int(slow),
            "peak_roll_deg": "" if sudden else deg(peak[0] - before[0]),
            "peak_pitch_deg": "" if sudden else deg(peak[1] - before[1]), "sudden_tips": int(sudden),
            # Of a roll that is none, no ratio.
            "overshoot": "" if slow or sudden or abs(change) < math.radians(0.3) else (peak[0] - before[0]) / change,
            "least_right_side_n": min(least[1], least[3]), "greatest_wheel_n": max(most),
        })
    write("time_wheel_drop.csv", rows)


def wheel_drop_critical(seed=51, count=40):
    """The least drop that tips, between `stays` and `tips`; empty where 1 m does not."""
    r, rows = random.Random(seed), []
    for n in range(count):
        m = machine(r, low=1.2, high=2.2, axle=n % 4 == 3)
        wheels = list(WHEELS)[n % 3]
        left = math.radians(round(r.uniform(0.0, 12.0), 2))
        g = slope(left)
        tips = lambda drop: dropped(m, g, WHEELS[wheels], drop, True)[5]
        low, high = bisect(tips, 0.0, 1.0, 0.005)
        rows.append(described(m, g) | {"slope_left_deg": deg(left), "wheels": wheels,
                                       "stays_at_m": low, "tips_at_m": high})
    write("time_wheel_drop_critical.csv", rows)


def bisect(tips, low, high, fine):
    """Greatest that stays and least that tips; nothing for the latter if `high` does not."""
    if not tips(high):
        return high, ""
    while high - low > fine:
        middle = (low + high) / 2
        low, high = (low, middle) if tips(middle) else (middle, high)
    return low, high


# Lowering stopped.

STIFF = 2e8  # of the drive that lowers, N/m


def lowering_machine(r, n, least_factor):
    m = machine(r, high=1.5)
    m.centre = (round(r.uniform(0.5, 0.62) * m.contacts[2][0], 3), 0.0, m.centre[2])
    at = round(r.uniform(1.6, 4.0), 3)
    # The load that tips the level machine, over a factor.
    tipping = m.mass * -m.centre[0] / at
    load = round(tipping / r.uniform(*least_factor))
    height = round(r.uniform(0.5, 5.0), 3)
    stop = r.choice([0.0, 0.05, 0.1, 0.2, 0.4])
    # A boom that gives: nine tenths of the load on a spring of this frequency, 0 where it does not.
    bends = 0.0 if n % 2 == 0 else round(r.uniform(1.0, 4.0), 2)
    give, carrier = "", load
    if bends:
        stiff = load * (2 * math.pi * bends) ** 2
        carrier = 0.1 * load
        give = (f'<body><joint name="bends" type="slide" axis="0 0 1" stiffness="{stiff}" '
                f'damping="{2 * 0.02 * math.sqrt(stiff * load)}" springref="{load * 0.9 * G / stiff}"/>'
                f'<inertial pos="0 0 0" mass="{load * 0.9}" diaginertia="200 200 200"/></body>')
    # Where it is when it is stopped.
    m.extra = (f'<body name="load" pos="{at} 0 {height}"><joint name="boom" type="slide" axis="0 0 1"/>'
               f'<inertial pos="0 0 0" mass="{carrier}" diaginertia="200 200 200"/>{give}</body>')
    m.extra_mass, m.extra_at = load, (at, 0.0, height)
    m.drive_damping = 2 * math.sqrt(STIFF * carrier)
    m.more = f'<actuator><position joint="boom" kp="{STIFF}" kv="{m.drive_damping}"/></actuator>'
    return m, at, load, height, stop, bends


def stopped(m, load, speed, stop):
    """The load already goes down at `speed`, nothing else moves; after 0.2 s it is stopped evenly in `stop`."""
    sim = Run(m)
    boom = mujoco.mj_name2id(sim.model, mujoco.mjtObj.mjOBJ_JOINT, "boom")
    start, dt = 0.2, m.step
    z = speed * start
    sim.data.qpos[sim.model.jnt_qposadr[boom]] = z
    sim.data.qvel[sim.model.jnt_dofadr[boom]] = -speed
    hung = G * load / STIFF
    front, rear, nose, most, tipped = 0.0, 1e12, -9.0, 0.0, False
    for k in range(int(8.0 / dt)):
        t = k * dt - start
        v = speed if t < 0.0 else max(0.0, speed * (1.0 - t / stop)) if stop > 0.0 else 0.0
        z -= v * dt
        sim.data.ctrl[0] = z + hung - m.drive_damping * v / STIFF
        sim.step()
        if t >= 0.0:
            f = sim.forces()
            front, rear = max(front, f[0] + f[1]), min(rear, f[2] + f[3])
            nose, most = max(nose, sim.attitude()[1]), max(most, sim.data.actuator_force[0])
            if sim.upright() < GONE:
                tipped = True
                break
    return front, rear, nose, most / (load * G), tipped


def stop_of_lowering(seed=42, count=40):
    r, rows = random.Random(seed), []
    for n in range(count):
        m, at, load, height, stop, bends = lowering_machine(r, n, (1.15, 3.0))
        speed = round(r.uniform(0.15, 1.2), 3)
        front, rear, nose, most, tipped = stopped(m, load, speed, stop)
        rows.append(described(m) | {
            "load_kg": load, "load_x_m": at, "load_z_at_stop_m": height, "speed_m_per_s": speed,
            "stopped_in_s": stop, "boom_frequency_hz": bends,
            "peak_front_n": "" if tipped else front, "least_rear_n": rear,
            "peak_pitch_deg": "" if tipped else deg(nose),
            "peak_boom_force_over_load_weight": "" if tipped else most, "tips": int(tipped),
        })
    write("time_stop_of_lowering.csv", rows)


def stop_of_lowering_critical(seed=52, count=30):
    """The least speed that tips when it is stopped, between `stays` and `tips`; empty where 6 m/s does not."""
    r, rows = random.Random(seed), []
    for n in range(count):
        m, at, load, height, stop, bends = lowering_machine(r, n, (1.02, 1.5))
        low, high = bisect(lambda v: stopped(m, load, v, stop)[4], 0.0, 6.0, 0.02)
        rows.append(described(m) | {
            "load_kg": load, "load_x_m": at, "load_z_at_stop_m": height, "stopped_in_s": stop,
            "boom_frequency_hz": bends, "stays_at_m_per_s": low, "tips_at_m_per_s": high,
        })
    write("time_stop_of_lowering_critical.csv", rows)


# Braking.

def braking(seed=43, count=40):
    r, rows = random.Random(seed), []
    for n in range(count):
        m = machine(r, axle=n % 4 == 3)
        base = -m.contacts[2][0]
        m.centre = (round(-base * r.uniform(0.15, 0.55), 3), 0.0, m.centre[2])
        speed = round(r.uniform(0.5, 8.0), 2)
        slows = round(r.uniform(0.5, 6.0), 2)
        builds = r.choice([0.0, 0.1, 0.3])
        down = math.radians(round(r.uniform(0.0, 8.0), 2)) if n % 3 == 0 else 0.0
        lasts = speed / slows
        g0 = np.array([G * math.sin(down), 0.0, -G * math.cos(down)])

        def run(sudden):
            ratio = m.damping_ratio
            m.damping_ratio = ratio if sudden else 0.7
            sim = Run(m, tuple(g0))
            m.damping_ratio = ratio
            for _ in range(500):
                sim.step()
            least, most, nose, back = 1e12, 0.0, -9.0, 1e12
            tipped = False
            dt = m.step
            for k in range(int((lasts + builds + 5.0) / dt) if sudden else 30000):
                t = k * dt
                if not sudden:
                    a = slows * min(1.0, t / 10.0)
                elif t < lasts + builds:
                    # The same change of speed with the brake's force building up and released at once.
                    a = slows * (min(1.0, t / builds) if builds else 1.0)
                    if builds and t > lasts + builds / 2:
                        a = 0.0
                else:
                    a = 0.0
                sim.gravity(g0 + np.array([a, 0.0, 0.0]))
                sim.step()
                f = sim.forces()
                least, most = min(least, f[2] + f[3]), max(most, f[0] + f[1])
                back = min(back, f[0] + f[1])
                nose = max(nose, sim.attitude()[1])
                if sim.upright() < GONE:
                    tipped = True
                    break
            return f[2] + f[3], least, most, nose, back, tipped

        slow, _, _, _, _, slow_tips = run(False)
        _, least, most, nose, back, tipped = run(True)
        rows.append(described(m, g0) | {
            "slope_down_deg": deg(down), "speed_m_per_s": speed, "deceleration_m_per_s2": slows,
            "builds_up_in_s": builds, "lasts_s": lasts,
            "steady_rear_n": "" if slow_tips else slow, "steady_tips": int(slow_tips),
            "least_rear_n": least, "peak_front_n": "" if tipped else most, "least_front_n": "" if tipped else back,
            "peak_pitch_deg": "" if tipped else deg(nose), "tips": int(tipped),
        })
    write("time_braking.csv", rows)


def pulled_critical(seed=53, count=40):
    """Braking or swerving all at once: the least acceleration that tips if it lasts so long, in m/s²."""
    r, rows = random.Random(seed), []
    for n in range(count):
        side = n % 2 == 1
        m = machine(r, low=1.2, axle=n % 4 == 3)
        base = -m.contacts[2][0]
        m.centre = (round(-base * r.uniform(0.15, 0.55), 3), 0.0, m.centre[2])
        builds = r.choice([0.0, 0.1, 0.3, 1.0])
        lasts = round(r.uniform(0.5, 4.0), 2)

        def tips(a):
            sim = Run(m)
            for k in range(int((lasts + 5.0) / m.step)):
                t = k * m.step
                now = a * (min(1.0, t / builds) if builds else 1.0) if t < lasts else 0.0
                sim.gravity((0.0, now, -G) if side else (now, 0.0, -G))
                sim.step()
                if sim.upright() < GONE:
                    return True
            return False

        low, high = bisect(tips, 0.0, 15.0, 0.02)
        rows.append(described(m) | {"way": "side" if side else "front", "builds_up_in_s": builds, "lasts_s": lasts,
                                    "stays_at_m_per_s2": low, "tips_at_m_per_s2": high})
    write("time_pulled_critical.csv", rows)


# Tripping at a kerb.

def kerb(seed=44, count=40):
    r, rows = random.Random(seed), []
    for n in range(count):
        side = n % 2 == 0
        m = machine(r)
        m.friction = 0.0
        m.ground = "plane"
        if n % 5 == 0:
            # Hard tyres, heavily damped: the rigid body of the closed form.
            m.stiffness = [2e7] * 4
            m.damping_ratio = 0.5
        half, rear = m.contacts[0][1], m.contacts[2][0]
        give = [0.0, 0.0, 4e6, 1e6][n // 2 % 4]  # N/m of the kerb and the tyres' sides together; 0: rigid
        loses = r.choice([0.02, 0.1])
        face = (half if side else 0.0) + RADIUS + 0.02
        size, at = ("20 0.5 0.15", f"0 {face + 0.5} 0.0") if side else ("0.5 20 0.15", f"{face + 0.5} 0 0.0")
        joint = ""
        if give:
            joint = (f'<joint type="slide" axis="{"0 1 0" if side else "1 0 0"}" stiffness="{give}" '
                     f'damping="{2 * loses * math.sqrt(give * m.mass)}"/>')
        m.world = (f'<body pos="{at}">{joint}<geom type="box" size="{size}" mass="100" contype="2" conaffinity="1" '
                   f'condim="1" friction="0 0 0"/></body>')
        line = (half if side else 0.0, RADIUS)
        b = line[0] - (m.centre[1] if side else m.centre[0])
        h = m.centre[2] - line[1]
        about = m.inertia[0 if side else 1] + m.mass * (b * b + h * h)

        def tips(speed):
            sim = Run(m)
            sim.data.qvel[sim.free + (1 if side else 0)] = speed
            limit = math.atan2(b, h) + 0.25
            for k in range(10000):
                sim.step()
                roll, pitch = sim.attitude()
                # Not rolled but lifted: going over is measured by the body's own lean.
                if (roll if side else pitch) > limit:
                    return True
                if k > 2000 and abs(roll) + abs(pitch) < math.radians(0.5):
                    return False
            return False

        closed = math.sqrt(2 * G * about / (m.mass * h * h) * (math.hypot(h, b) - h))
        low, high = 0.0, 3.0 * closed
        while high - low > 0.004 * closed:
            middle = (low + high) / 2
            low, high = (low, middle) if tips(middle) else (middle, high)
        energy = math.sqrt(2 * G * (math.hypot(h, b) - h))
        rows.append(described(m) | {
            "way": "side" if side else "front", "line_height_m": RADIUS, "kerb_gives_n_per_m": give,
            "kerb_damping_ratio": loses if give else "",
            "stays_at_m_per_s": low, "tips_at_m_per_s": high,
            "rigid_inelastic_m_per_s": closed, "energy_m_per_s": energy,
        })
    write("time_kerb.csv", rows)


# Cornering.

def cornering(seed=45, count=30):
    r, rows = random.Random(seed), []
    for n in range(count):
        m = machine(r, axle=n % 3 == 2)
        hard = n % 2 == 0
        if hard:
            m.stiffness = [1e7] * 4
        m.damping_ratio = 0.7
        m.step = 0.0005
        half, rear = m.contacts[0][1], m.contacts[2][0]
        sim = Run(m)
        weight = (m.mass + m.axle) * G
        lifts = over = None
        f = sim.forces()
        k = 0
        while over is None:
            t = k * m.step
            a = 0.0 if t < 1 else 0.3 * (t - 1) if t < 7 else 1.8 + 0.06 * (t - 7)
            sim.gravity((0.0, a, -G))
            sim.step()
            # The feet tremble a little: a mean over a tenth of a second.
            f += (sim.forces() - f) * (m.step / 0.1)
            if t > 0.9 and lifts is None and min(f[1], f[3]) < 1e-4 * weight:
                lifts = a
            if t > 0.9 and (f[1] + (0.0 if m.axle else f[3])) < 2e-4 * weight:
                over = a
            k += 1
        rows.append(described(m) | {
            "tyres": "hard" if hard else "as given",
            "first_wheel_lifts_m_per_s2": lifts, "tips_m_per_s2": over, "roll_then_deg": deg(sim.attitude()[0]),
        })
    write("time_cornering.csv", rows)


if __name__ == "__main__":
    wheel_drop()
    wheel_drop_critical()
    stop_of_lowering()
    stop_of_lowering_critical()
    braking()
    pulled_critical()
    kerb()
    cornering()
