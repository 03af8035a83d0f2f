"""Friction factors and terminal velocities by the library fluids, for ComparedWithFluidsTest.

    python3 inputs.py 1000 > by-fluids.csv      writes the values that the test compares
    python3 inputs.py 1000000 times             prints what fluids takes, scalar and array form
"""

import random
import sys
import time

import fluids
import fluids.vectorized
import numpy
from fluids.drag import v_terminal
from fluids.friction import Churchill_1977

DENSITY = 2650.0
WATER = 998.2


def inputs(count):
    """Re 300 to 1e7 and e/D 1e-6 to 0.05; spheres of 0.2 to 5 mm in liquor of 1 to 20 mPa.s.

    Smaller ones fluids takes by the law of Stokes, below Re = 0.01.
    """
    even = random.Random(1977)
    for _ in range(count):
        yield (
            300 * (1e7 / 300) ** even.random(),
            1e-6 * (0.05 / 1e-6) ** even.random(),
            2e-4 * (5e-3 / 2e-4) ** even.random(),
            1e-3 * 20 ** even.random(),
        )


def write(rows):
    print(f"# fluids {fluids.__version__}: Churchill_1977; v_terminal by Haider_Levenspiel")
    print("# Re, e/D, Darcy friction factor, d in m, viscosity in Pa s, terminal velocity in m/s")
    for re, rough, d, mu in rows:
        f = Churchill_1977(re, rough)
        w = v_terminal(d, DENSITY, WATER, mu, "Haider_Levenspiel")
        print(f"{re!r},{rough!r},{f!r},{d!r},{mu!r},{w!r}")


def times(rows):
    re, rough, d, mu = (list(column) for column in zip(*rows))

    def report(what, call):
        start = time.process_time()
        call()
        print(f"{what}: {time.process_time() - start:.3f} s")

    for _ in range(3):
        report("friction, scalar", lambda: [Churchill_1977(a, b) for a, b in zip(re, rough)])
        report(
            "friction, array",
            lambda: fluids.vectorized.Churchill_1977(numpy.array(re), numpy.array(rough)),
        )
        report(
            "velocity, scalar",
            lambda: [v_terminal(a, DENSITY, WATER, b, "Haider_Levenspiel") for a, b in zip(d, mu)],
        )
        report(
            "velocity, array",
            lambda: fluids.vectorized.v_terminal(
                numpy.array(d), DENSITY, WATER, numpy.array(mu), "Haider_Levenspiel"
            ),
        )


if __name__ == "__main__":
    (times if "times" in sys.argv else write)(list(inputs(int(sys.argv[1]))))
