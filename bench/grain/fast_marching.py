# Fast marching over a six-finned section: port perimeter at given depths, and the time of the march alone.
# usage: fast_marching.py cells-per-radius repeats depth...   lengths in mm; prints JSON
import json
import sys
import time

import numpy
import skfmm

cells, repeats = int(sys.argv[1]), int(sys.argv[2])
depths = [float(w) for w in sys.argv[3:]]
R, bore, half, tip = 38.0, 10.0, 2.0, 22.0
h = R / cells
x = (numpy.arange(2 * cells + 2) - cells - 0.5) * h
X, Y = numpy.meshgrid(x, x, indexing="ij")
# The start is given exactly, as a signed distance: bore disc and fins at 0, 60, ... degrees.
phi = numpy.hypot(X, Y) - bore
for k in range(6):
    a = k * numpy.pi / 3
    u, v = numpy.cos(a) * X + numpy.sin(a) * Y, numpy.cos(a) * Y - numpy.sin(a) * X
    du, dv = numpy.abs(u - tip / 2) - tip / 2, numpy.abs(v) - half
    box = numpy.hypot(numpy.maximum(du, 0), numpy.maximum(dv, 0)) + numpy.minimum(numpy.maximum(du, dv), 0)
    phi = numpy.minimum(phi, box)
best = 1e9
for _ in range(repeats):
    start = time.perf_counter()
    d = skfmm.distance(phi, dx=h, order=2)
    best = min(best, time.perf_counter() - start)
inside = numpy.hypot(X, Y) <= R


def burned(w):
    return h * h * numpy.clip(0.5 + (w - d[inside]) / h, 0, 1).sum()


perimeter = [(burned(w + h) - burned(w - h)) / (2 * h) for w in depths]
print(json.dumps({"seconds": best, "perimeter": perimeter}))
