"""The phone's axes against the rotations that the W3C composes them of (Device Orientation and Motion, section 4.1)."""

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from pycore.attitude import axes


@pytest.mark.parametrize("alpha", [0, 0.7, 3, -2])
@pytest.mark.parametrize("beta", [0, -1.2, 0.4, 2.9])
@pytest.mark.parametrize("gamma", [0, 1.1, -0.3])
def test_they_are_turned_about_z_then_x_then_y(alpha, beta, gamma):
    turned = Rotation.from_euler("ZXY", [alpha, beta, gamma]).as_matrix()
    assert np.array(axes(alpha, beta, gamma)) == pytest.approx(turned.T, abs=1e-12)
