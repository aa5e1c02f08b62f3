"""A machine on four tyres as MuJoCo sees it: shared by time_runs.py and tipping_onset.py.

A rigid body (MuJoCo integrates its full rotations) carries each tyre as a light foot on a spring and
damper along the body's upright; the foot meets the ground in a hard contact with friction, which pushes
and never pulls. The rear axle is fixed to the body, or a body of its own on a hinge (the pin). The feet
weigh 20 kg each and belong to the masses given. Frame: x ahead, y left, z up, origin on the ground
under the middle of the front axle, as the machine stands on level ground. SI.
"""
import math
from dataclasses import dataclass, field

import mujoco
import numpy as np

G = 9.80665
FOOT = 20.0  # kg
RADIUS = 0.06  # of the foot's sphere, m


@dataclass
class Machine:
    mass: float  # of everything but a free rear axle and a moving load, feet on the body included, kg
    centre: tuple  # of that, m
    inertia: tuple  # about that centre: roll, pitch, yaw, kg·m²
    contacts: list  # front left, front right, rear left, rear right, m
    stiffness: list  # N/m
    damping_ratio: float
    axle: float = 0.0  # mass of a free rear axle with its feet, kg; 0: locked, part of the body
    axle_centre: tuple = (0.0, 0.0, 0.0)
    pin: float = 0.0  # height of the pin, m
    friction: float = 5.0
    ground: str = "pads"  # pads (each may be lowered) or plane
    rolls: list = field(default_factory=lambda: [False] * 4)  # wheels that roll freely
    extra: str = ""  # more in the body (a load)
    world: str = ""  # more in the world (a kerb)
    more: str = ""  # actuators
    extra_mass: float = 0.0  # of the load, for the spring preload only
    extra_at: tuple = (0.0, 0.0, 0.0)
    step: float = 0.0005


def static_forces(m: Machine, gravity=(0.0, 0.0, -G)):
    """Forces by which the springs are preloaded: a plane over the contacts (locked), or tripod and axle."""
    g = np.array(gravity)
    to_ground = lambda p: (np.array(p) - g * (p[2] / g[2]))[:2]
    body, load = m.mass, m.extra_mass
    centre = (np.array(m.centre) * body + np.array(m.extra_at) * load) / (body + load)
    if m.axle == 0.0:
        weight = (body + load) * -g[2]
        x = np.array([[1.0, c[0], c[1]] for c in m.contacts])
        c = to_ground(centre)
        solution = np.linalg.solve(x.T @ x, np.array([1.0, c[0], c[1]]) * weight)
        return x @ solution
    # The whole stands on both axles; the body hangs sideways on the pin.
    whole = body + load + m.axle
    total = (centre * (body + load) + np.array(m.axle_centre) * m.axle) / whole
    base = m.contacts[0][0] - m.contacts[2][0]
    front = whole * -g[2] * (to_ground(total)[0] - m.contacts[2][0]) / base
    pin = (body + load) * -g[2] - front
    half = m.contacts[0][1]
    # Sideways about a line along x at the height of the pin, force across shared as the weight.
    across = (body + load) * g[1]
    roll = (body + load) * -g[2] * centre[1] + across * (centre[2] - m.pin)
    front_across = -across * front / (front + pin)
    roll -= front_across * m.pin
    left = 0.5 * (front + roll / half)
    rear = pin + m.axle * -g[2]
    half_r = m.contacts[2][1]
    rear_roll = -(-across * (pin / (front + pin))) * m.pin + m.axle * g[1] * m.axle_centre[2]
    rear_left = 0.5 * (rear + rear_roll / half_r)
    return np.array([left, front - left, rear_left, rear - rear_left])


def _body_without_feet(m: Machine, feet):
    """Mass, centre and inertia of the rigid body so that with its feet it has those given."""
    mass = m.mass - FOOT * len(feet)
    first = np.array(m.centre) * m.mass
    for f in feet:
        first = first - FOOT * np.array([f[0], f[1], RADIUS])
    centre = first / mass
    inertia = np.diag(m.inertia).astype(float)

    def about(p):
        d = np.array(p) - np.array(m.centre)
        return np.dot(d, d) * np.eye(3) - np.outer(d, d)

    for f in feet:
        inertia -= FOOT * about([f[0], f[1], RADIUS])
    inertia -= mass * about(centre)
    return mass, centre, inertia


class Run:
    """A MuJoCo model with its springs preloaded, so that it stands still from the first moment."""

    def __init__(self, m: Machine, gravity=(0.0, 0.0, -G), solref=(0.004, 1.0)):
        self.m = m
        forces = static_forces(m, gravity)
        self.preload = forces
        springs = forces - FOOT * G
        self.damping = []
        feet = [m.contacts[i] for i in range(4 if m.axle == 0.0 else 2)]
        mass, centre, inertia = _body_without_feet(m, feet)
        full = " ".join(f"{v:.9g}" for v in (inertia[0, 0], inertia[1, 1], inertia[2, 2],
                                             inertia[0, 1], inertia[0, 2], inertia[1, 2]))

        def foot(i, origin):
            k = m.stiffness[i]
            share = max(forces[i], 0.05 * sum(forces)) / G
            c = 2.0 * m.damping_ratio * math.sqrt(k * share)
            self.damping.append(c)
            x, y = m.contacts[i]
            wheel = f'<joint type="hinge" axis="0 1 0"/>' if m.rolls[i] else ""
            return f"""<body pos="{x - origin[0]} {y - origin[1]} {RADIUS - origin[2]}">
              <joint name="tyre{i}" type="slide" axis="0 0 1" stiffness="{k}" damping="{c}"
                springref="{-springs[i] / k}"/>
              {'<inertial pos="0 0 0" mass="' + str(FOOT / 2) + '" diaginertia="0.1 0.1 0.1"/><body>' if wheel else ""}
              {wheel}<geom name="foot{i}" type="sphere" size="{RADIUS}" mass="{FOOT / 2 if wheel else FOOT}"
                friction="{m.friction} 0 0" condim="3" contype="1" conaffinity="2"/>
              {'</body>' if wheel else ''}
            </body>"""

        rear = ""
        on_body = "".join(foot(i, (0, 0, 0)) for i in range(2))
        if m.axle == 0.0:
            on_body += "".join(foot(i, (0, 0, 0)) for i in (2, 3))
        else:
            at = (m.contacts[2][0], 0.0, m.pin)
            own = m.axle - 2 * FOOT
            height = (m.axle * m.axle_centre[2] - 2 * FOOT * RADIUS) / own
            side = m.axle * m.axle_centre[1] / own
            ahead = (m.axle * m.axle_centre[0] - 2 * FOOT * at[0]) / own
            rear = f"""<body name="axle" pos="{at[0]} {at[1]} {at[2]}">
              <joint name="pin" type="hinge" axis="1 0 0"/>
              <inertial pos="{ahead - at[0]} {side} {height - at[2]}" mass="{own}"
                diaginertia="{own * 0.4} {own * 0.1} {own * 0.4}"/>
              {foot(2, at)}{foot(3, at)}</body>"""
        if m.ground == "pads":
            ground = "".join(
                f'<body name="pad{i}" mocap="true" pos="{c[0]} {c[1]} -0.5"><geom type="box" size="0.6 0.6 0.5" '
                f'contype="2" conaffinity="1" friction="{m.friction} 0 0" condim="3"/></body>'
                for i, c in enumerate(m.contacts))
        else:
            ground = (f'<geom type="plane" size="50 50 1" contype="2" conaffinity="1" condim="3" '
                      f'friction="{m.friction} 0 0"/>')
        xml = f"""<mujoco>
          <option timestep="{m.step}" integrator="implicitfast" cone="elliptic" impratio="20"
            gravity="{gravity[0]} {gravity[1]} {gravity[2]}" iterations="100" tolerance="1e-12"/>
          <default><geom solref="{solref[0]} {solref[1]}" solimp="0.9 0.95 0.001"/></default>
          <worldbody>{ground}{m.world}
            <body name="machine"><freejoint name="free"/>
              <inertial pos="{centre[0]} {centre[1]} {centre[2]}" mass="{mass}" fullinertia="{full}"/>
              {on_body}{rear}{m.extra}
            </body>
          </worldbody>
          {m.more}
        </mujoco>"""
        self.model = mujoco.MjModel.from_xml_string(xml)
        self.data = mujoco.MjData(self.model)
        mujoco.mj_forward(self.model, self.data)
        joint = lambda n: mujoco.mj_name2id(self.model, mujoco.mjtObj.mjOBJ_JOINT, n)
        ids = [joint(f"tyre{i}") for i in range(4)]
        self.q = np.array([self.model.jnt_qposadr[i] for i in ids])
        self.v = np.array([self.model.jnt_dofadr[i] for i in ids])
        self.reference = -springs / np.array(m.stiffness)
        self.k = np.array(m.stiffness)
        self.c = np.array(self.damping)
        self.free = self.model.jnt_dofadr[joint("free")]
        self.body = mujoco.mj_name2id(self.model, mujoco.mjtObj.mjOBJ_BODY, "machine")

    def forces(self):
        """Force of each tyre on the ground, N: spring, damper and the foot's weight, never below nothing."""
        q, v = self.data.qpos[self.q], self.data.qvel[self.v]
        upright = self.data.xmat[self.body].reshape(3, 3)[:, 2]
        own = FOOT * -float(np.dot(self.model.opt.gravity, upright))
        return np.maximum(self.k * (q - self.reference) + self.c * v + own, 0.0)

    def step(self):
        mujoco.mj_step(self.model, self.data)

    def gravity(self, g):
        self.model.opt.gravity[:] = g

    def attitude(self):
        """Roll, left side down, and pitch, nose down, rad."""
        r = self.data.xmat[self.body].reshape(3, 3)
        return -math.asin(max(-1.0, min(1.0, r[2, 1]))), -math.asin(max(-1.0, min(1.0, r[2, 0])))

    def upright(self):
        """Cosine of the whole lean."""
        return self.data.xmat[self.body].reshape(3, 3)[2, 2]
