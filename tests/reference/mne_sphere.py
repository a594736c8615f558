"""The field of a coil in a sphere by reciprocity, with MNE-Python's sphere model: what magnetic flux a unit current
dipole sends through the coil's turns. Run by mne_sphere_test.cpp with Debian's python3; reads standard input, mm:

    sphere X Y Z
    turn CENTRE ALONG ACROSS RADIUS          (ten numbers; the current runs from ALONG to ACROSS)
    point X Y Z

and writes for each point minus the flux for a dipole along x, y and z, V/m for 1 A/us.
"""
import sys
import warnings

warnings.filterwarnings("ignore")  # parts of MNE-Python that are left out
import numpy as np
from mne.forward import _compute_forward

RADII, AROUND = 40, 240  # of each disc: Gauss and Legendre's radii, each with evenly spaced places

sphere, turns, points = None, [], []
for line in sys.stdin:
    name, *numbers = line.split()
    numbers = np.array([float(n) for n in numbers])
    if name == "sphere":
        sphere = numbers / 1000
    elif name == "turn":
        turns.append((numbers[:3] / 1000, numbers[3:6], numbers[6:9], numbers[9] / 1000))
    elif name == "point":
        points.append(numbers / 1000)

at, weight = np.polynomial.legendre.leggauss(RADII)
at, weight = (at + 1) / 2, weight / 2
angle = 2 * np.pi * np.arange(AROUND) / AROUND
places, ways, areas = [], [], []
for centre, along, across, radius in turns:
    for share, w in zip(at, weight):
        r = share * radius
        places.append(centre + r * (np.outer(np.cos(angle), along) + np.outer(np.sin(angle), across)))
        ways.append(np.tile(np.cross(along, across), (AROUND, 1)))
        areas.append(np.full(AROUND, w * radius * r * 2 * np.pi / AROUND))
places, ways, areas = np.concatenate(places), np.concatenate(ways), np.concatenate(areas)
one_coil = (places, ways, areas, np.zeros(len(places), int))

flux = _compute_forward._sphere_field(np.array(points), one_coil, {"r0": sphere})
for x, y, z in -1e6 * flux.reshape(-1, 3):
    print(repr(float(x)), repr(float(y)), repr(float(z)))
