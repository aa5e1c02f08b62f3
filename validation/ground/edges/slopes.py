"""Factor of safety of random slopes with a strip of load, by the package pyslope (simplified Bishop).

Writes slopes.csv beside this file: each slope, the worst circle that pyslope's search found with its factor, five more
of its circles with theirs, and the time of its search. Lengths in m, kN/m³, kPa, degrees. Circles are given from the
crest: x into the ground behind it, z up.

    pip install pyslope==1.4.0 numpy==2.4.6
    python slopes.py
"""
import os
import pathlib
import random
import time

os.environ["TQDM_DISABLE"] = "1"
import pyslope  # noqa: E402

SLICES, ITERATIONS = 100, 2000
rng = random.Random(20)
out = [f"# made by slopes.py with pyslope 1.4.0, {SLICES} slices, {ITERATIONS} circles",
       "height,batter,gamma1,c1,phi1,bottom1,gamma2,c2,phi2,from,to,pressure,water,kind,cx,cz,radius,factor,seconds"]
done = 0
while done < 40:
    h = round(rng.uniform(1.5, 6), 2)
    batter = round(h * rng.uniform(0.5, 2), 2)
    undrained = done % 4 == 3
    def soil():
        g = round(rng.uniform(16, 21), 1)
        return (g, round(rng.uniform(15, 45), 1), 0) if undrained else \
               (g, round(rng.uniform(2, 12), 1), round(rng.uniform(18, 36), 1))
    top, low = soil(), soil()
    bottom = round(h * rng.uniform(0.3, 0.9), 2)
    a = round(rng.uniform(0.2, h), 2)
    b = round(a + rng.uniform(0.3, 2), 2)
    q = round(rng.uniform(10, 60), 1)
    water = round(h * rng.uniform(0.4, 0.9), 2) if done % 3 == 0 and not undrained else None
    s = pyslope.Slope(height=h, angle=None, length=batter)
    s.set_materials(*(pyslope.Material(unit_weight=g, cohesion=c, friction_angle=phi, depth_to_bottom=depth)
                      for (g, c, phi), depth in ((top, bottom), (low, 6 * h))))
    s.set_udls(pyslope.Udl(magnitude=q, offset=a, length=round(b - a, 2)))
    if water is not None:
        s.set_water_table(water)
        s.update_water_analysis_options(auto=False, H=1)
    s.update_analysis_options(slices=SLICES, iterations=ITERATIONS, tolerance=1e-6, max_iterations=100)
    start = time.perf_counter()
    try:
        s.analyse_slope()
    except (TypeError, ValueError, IndexError, ZeroDivisionError):  # a corner of its search grid fell off its model
        continue
    seconds = time.perf_counter() - start
    found = [c for c in s._search if c["FOS"] and c["FOS"] > 0]
    if not found:
        continue
    crest = s.get_top_coordinates()
    row = f"{h},{batter},{top[0]},{top[1]},{top[2]},{bottom},{low[0]},{low[1]},{low[2]},{a},{b},{q},{'' if water is None else water}"
    picked = [("worst", found[0])] + [("circle", found[len(found) * k // 6]) for k in range(1, 6)]
    for kind, c in picked:
        out.append(f"{row},{kind},{crest[0] - c['c_x']:.6f},{c['c_y'] - crest[1]:.6f},{c['radius']:.6f},"
                   f"{c['FOS']:.6f},{seconds:.3f}")
    done += 1
pathlib.Path(__file__).with_suffix(".csv").write_text("\n".join(out) + "\n")
