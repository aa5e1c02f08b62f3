"""Ground of clouds whose classes are hidden, by the cloth-simulation-filter package (Zhang, W. et al.
2016, Remote Sensing 8(6), 501), as a witness of our morphological filter.

  python3 validation/clouds/cloth.py

Writes cloth.csv here. Cloth cells 0.5 m, rigidness 2, slope smoothing off, class threshold 0.5 m:
the package's own values for towns, from memory. Type I: share of class 2 that was not taken. Type
II: share of all other points that was taken; type II sure: of classes 3 to 6 only, since
unclassified points are often ground. rms: heights of 0.5 m cells, taken ground less class 2.
Needs: pip install "laspy[lazrs]" numpy cloth-simulation-filter
"""

import importlib.metadata
import pathlib

import CSF
import laspy
import numpy as np

HERE = pathlib.Path(__file__).parent
DATA = HERE.parent.parent.parent / "shared" / "data" / "pointcloud"
BLOCK = [f"montpellier_block/tile_{t}.laz" for t in (
    "77050_627755", "77050_627760", "77055_627755", "77055_627760", "77060_627755", "77060_627760")]
SETS = {
    "delft": ["delft_ahn3_west.laz", "delft_ahn3_east.laz"],
    "montpellier": BLOCK,
    "stbarth": ["stbarth_building_site_100m.laz"],
    "hillside": ["hillside_370m_extrabytes.laz"],
}


def means(points):
    cell = np.floor(points[:, :2] / 0.5).astype(np.int64)
    keys, inverse = np.unique(cell[:, 0] * 4_000_000_000 + cell[:, 1], return_inverse=True)
    return dict(zip(keys.tolist(), (np.bincount(inverse, weights=points[:, 2]) / np.bincount(inverse)).tolist()))


with open(HERE / "cloth.csv", "w") as out:
    version = importlib.metadata.version("cloth-simulation-filter")
    out.write(f"# cloth-simulation-filter {version}, see cloth.py; shares in %, rms in m\n")
    out.write("cloud,points,type_i,type_ii,type_ii_sure,rms\n")
    for name, files in SETS.items():
        clouds = [laspy.read(DATA / f) for f in files]
        points = np.vstack([np.column_stack([np.asarray(c.x), np.asarray(c.y), np.asarray(c.z)]) for c in clouds])
        classes = np.concatenate([np.asarray(c.classification) for c in clouds])
        csf = CSF.CSF()
        csf.params.bSloopSmooth = False
        csf.params.cloth_resolution = 0.5
        csf.params.rigidness = 2
        csf.params.class_threshold = 0.5
        csf.setPointCloud(points - points.min(axis=0))
        taken_list, rest = CSF.VecInt(), CSF.VecInt()
        csf.do_filtering(taken_list, rest, False)  # False: do not write its cloth beside us
        taken = np.zeros(len(points), bool)
        taken[np.array(taken_list)] = True
        truth, sure = classes == 2, (classes >= 3) & (classes <= 6)
        ours, theirs = means(points[truth]), means(points[taken])
        gaps = np.array([theirs[k] - z for k, z in ours.items() if k in theirs])
        share = lambda part, whole: 100 * part.sum() / max(whole.sum(), 1)
        out.write(f"{name},{len(points)},{share(truth & ~taken, truth):.2f},{share(~truth & taken, ~truth):.2f},"
                  f"{share(sure & taken, sure):.2f},{np.sqrt((gaps ** 2).mean()):.3f}\n")
        out.flush()
