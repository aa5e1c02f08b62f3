"""Reference values for bearing, effective areas, mats on springs and settlement, made outside the project.

    python -m venv venv && venv/bin/pip install groundhog==0.15.0 scipy==1.17.1 plotly jinja2
    venv/bin/python validation/ground/bearing/outside.py

Writes the tables beside it. groundhog follows API RP 2GEO (2011), which follows Hansen (1970) with other shape and
depth factors; each row therefore holds the factors too, so that the part both have in common can be compared.
"""
import csv
import warnings
from pathlib import Path

import numpy as np
from scipy import integrate
from scipy.sparse import lil_matrix
from scipy.sparse.linalg import spsolve

warnings.filterwarnings("ignore")
from groundhog.shallowfoundations import capacity as cap  # noqa: E402

HERE = Path(__file__).parent
rng = np.random.default_rng(20270412)


def write(name, rows):
    with open(HERE / name, "w", newline="") as f:
        w = csv.DictWriter(f, fieldnames=list(rows[0]), lineterminator="\n")
        w.writeheader()
        for row in rows:
            w.writerow({k: f"{v:.10g}" for k, v in row.items()})


def drained(n):
    rows = []
    while len(rows) < n:
        b = rng.uniform(0.3, 3.0)
        l = b * rng.uniform(1.0, 6.0)
        phi = rng.uniform(20.0, 45.0)
        gamma = rng.uniform(7.0, 12.0)
        q = rng.choice([0.0, rng.uniform(0.0, 20.0)])
        v = rng.uniform(20.0, 400.0)
        h = rng.choice([0.0, v * np.tan(np.radians(phi)) * rng.uniform(0.0, 0.7)])
        slope = rng.choice([0.0, rng.uniform(0.0, 0.8 * phi)])
        # On the surface, so without depth factors. What lies beside counts with N_q, as Hansen has it; groundhog takes
        # N_q - 1 there, since it gives the net pressure.
        r = cap.verticalcapacity_drained_api(
            vertical_effective_stress=q, effective_friction_angle=phi, effective_unit_weight=gamma,
            effective_length=l, effective_width=b, load_inclination=np.degrees(np.arctan2(h, v)),
            ground_surface_inclination=slope)
        if not np.isfinite(r["qu [kPa]"]):
            continue
        ultimate = r["qu [kPa]"] + q * r["K_q [-]"]
        rows.append(dict(width_m=b, length_m=l, friction_deg=phi, unit_weight_kn_m3=gamma, overburden_kpa=q,
                         vertical_kn=v, horizontal_kn=h, slope_deg=slope, n_q=r["N_q [-]"], n_gamma=r["N_gamma [-]"],
                         ultimate_kpa=ultimate))
    return rows


def undrained(n):
    rows = []
    while len(rows) < n:
        b = rng.uniform(0.3, 3.0)
        l = b * rng.uniform(1.0, 6.0)
        c = rng.uniform(10.0, 200.0)
        q = rng.choice([0.0, rng.uniform(0.0, 30.0)])
        h = rng.choice([0.0, b * l * c * rng.uniform(0.0, 0.9)])
        slope = rng.choice([0.0, rng.uniform(0.0, 30.0)])
        r = cap.verticalcapacity_undrained_api(
            effective_length=l, effective_width=b, su_base=c, base_depth=0.0, skirted=False, base_sigma_v=q,
            horizontal_load=h, ground_surface_inclination=slope, bearing_capacity_factor=np.pi + 2.0)
        if not np.isfinite(r["qu [kPa]"]):
            continue
        # Hansen's shape factor 0.2 instead of 0.18.
        k = r["K_c [-]"] + r["s_c [-]"] * (0.2 / 0.18 - 1.0)
        rows.append(dict(width_m=b, length_m=l, strength_kpa=c, overburden_kpa=q, horizontal_kn=h, slope_deg=slope,
                         i_c=r["i_c [-]"], ultimate_kpa=(np.pi + 2.0) * c * k + q))
    return rows


def areas(n):
    rows = []
    for _ in range(n):
        b, l = rng.uniform(0.3, 3.0, 2)
        e = rng.uniform(0.0, 0.45, 2) * [b, l]
        r = cap.effectivearea_rectangle_api(length=l, width=b, eccentricity_length=e[1], eccentricity_width=e[0])
        radius = rng.uniform(0.2, 1.5)
        off = radius * rng.uniform(0.0, 0.9)
        c = cap.effectivearea_circle_api(foundation_radius=radius, eccentricity=off)
        rows.append(dict(width_m=b, length_m=l, e_width_m=e[0], e_length_m=e[1], area_m2=r["effective_area [m2]"],
                         radius_m=radius, e_m=off, round_area_m2=c["effective_area [m2]"],
                         round_width_m=c["effective_width [m]"], round_length_m=c["effective_length [m]"]))
    return rows


def factors():
    rows = []
    for phi in np.arange(20.0, 50.5, 0.5):
        rows.append(dict(friction_deg=phi, n_q=cap.nq_frictionangle_sand(phi)["Nq [-]"],
                         n_gamma_vesic=cap.ngamma_frictionangle_vesic(phi)["Ngamma [-]"],
                         n_gamma_meyerhof=cap.ngamma_frictionangle_meyerhof(phi)["Ngamma [-]"]))
    return rows


def beam(force, length, width, ei, k, n=400):
    """Free beam on springs by finite differences of second order: settlement of middle and ends, moment in the middle."""
    h = length / n
    # Unknowns: settlements at -2..n+2; two fictitious points at each end.
    a = lil_matrix((n + 5, n + 5))
    rhs = np.zeros(n + 5)
    for i in range(n + 1):
        j = i + 2
        a[i, j - 2:j + 3] = np.array([1, -4, 6, -4, 1]) * ei / h**4
        a[i, j] += k * width
    rhs[n // 2] = force / h
    # No moment and no shear at the ends.
    for row, j in ((n + 1, 2), (n + 2, n + 2)):
        a[row, j - 1], a[row, j], a[row, j + 1] = 1 / h**2, -2 / h**2, 1 / h**2
    for row, j in ((n + 3, 2), (n + 4, n + 2)):
        a[row, j - 2], a[row, j - 1], a[row, j + 1], a[row, j + 2] = (np.array([-1, 2, -2, 1]) / h**3)
    y = spsolve(a.tocsc(), rhs)
    m = n // 2 + 2
    moment = -ei * (y[m - 1] - 2 * y[m] + y[m + 1]) / h**2
    # The force acts at a point: its kink is spread over one step there.
    return y[m], y[2], moment


def beams(n):
    rows = []
    for _ in range(n):
        force, length, width = rng.uniform(20e3, 200e3), rng.uniform(0.8, 5.0), rng.uniform(0.3, 1.5)
        k = 10 ** rng.uniform(6.5, 8.0)
        # From stiff to soft: λ·l from 0.6 to 8.
        lam = rng.uniform(0.6, 8.0) / length
        ei = k * width / (4 * lam**4)
        middle, ends, moment = beam(force, length, width, ei, k)
        rows.append(dict(force_n=force, length_m=length, width_m=width, ei_nm2=ei, k_pa_m=k, middle_m=middle,
                         ends_m=ends, moment_nm=moment))
    return rows


def strain_settlement(q, l, b, e, nu, top, bottom, at):
    """Settlement between two depths under an evenly pressed rectangle: Boussinesq's vertical displacement of point
    forces (Boussinesq 1885), integrated over the rectangle; top less bottom."""
    def uz(z):
        def point(y, x):
            r2 = (x - at[0])**2 + (y - at[1])**2 + z * z
            r = np.sqrt(r2)
            return (1 + nu) / (2 * np.pi * e) * (z * z / r2 + 2 * (1 - nu)) / r
        xs = sorted({-l / 2, l / 2, *([at[0]] if abs(at[0]) < l / 2 else [])})
        ys = sorted({-b / 2, b / 2, *([at[1]] if abs(at[1]) < b / 2 else [])})
        total = 0.0
        for x0, x1 in zip(xs, xs[1:]):
            for y0, y1 in zip(ys, ys[1:]):
                total += integrate.dblquad(point, x0, x1, y0, y1, epsabs=1e-16, epsrel=1e-7)[0]
        return q * total
    deep = uz(bottom) if np.isfinite(bottom) else 0.0
    return uz(top) - deep


def settlements(n):
    rows = []
    for i in range(n):
        l, b = rng.uniform(0.3, 3.0, 2)
        e, nu, q = rng.uniform(5e6, 1e8), rng.uniform(0.0, 0.5), rng.uniform(2e4, 3e5)
        top = 0.0 if i % 2 else rng.uniform(0.1, 2.0)
        bottom = np.inf if i % 3 == 0 else top + rng.uniform(0.3, 6.0)
        at = (0.0, 0.0) if i % 4 == 0 else (rng.uniform(-3, 3), rng.uniform(-3, 3))
        s = strain_settlement(q, l, b, e, nu, top, bottom, at)
        rows.append(dict(pressure_pa=q, length_m=l, width_m=b, modulus_pa=e, poisson=nu, top_m=top,
                         bottom_m=bottom, x_m=at[0], y_m=at[1], settlement_m=s))
    return rows


if __name__ == "__main__":
    write("drained.csv", drained(150))
    write("undrained.csv", undrained(150))
    write("areas.csv", areas(100))
    write("factors.csv", factors())
    write("beams.csv", beams(40))
    write("settlements.csv", settlements(36))
