"""What is believed before the first putt, and what tells one skill from another."""

from math import exp, log, sqrt
from types import SimpleNamespace
from typing import Any

import pytest
from scipy.optimize import minimize
from scipy.stats import norm

from pycore.record.findings import READING, lines_suffice
from pycore.record.logged import Evidence
from pycore.record.player import Miss, fit_plain

Z = 1.959964  # 95 % of a normal spread; Abramowitz and Stegun, table 26.1


def evidence(strike, line=None):
    logged: Any = SimpleNamespace(line_error=line)
    return Evidence(logged, strike, None)


@pytest.mark.parametrize(
    ("skill", "bias", "presets", "factor"),
    [
        # what is assumed of a bias; the tour and amateur presets, between which a spread lies, known to a factor of e to 0.6
        ("start_line", 1.5, (1.0, 1.5), 0.6),
        ("pace", 0.15, (0.065, 0.085), 0.6),
    ],
)
def test_without_a_putt_a_skill_is_what_is_believed_of_it(engine_ask, skill, bias, presets, factor):
    found = engine_ask("findings", putts=[])["skills"][skill]
    assert (found["bias"], found["n"]) == (0, 0)
    assert (found["bias_low"], found["bias_high"]) == pytest.approx((-Z * bias, Z * bias), rel=1e-4)
    middle = sqrt(presets[0] * presets[1])
    assert found["sd"] == pytest.approx(middle, rel=1e-4)
    assert (found["sd_low"], found["sd_high"]) == pytest.approx((middle * exp(-Z * factor), middle * exp(Z * factor)), rel=1e-3)


@pytest.mark.parametrize("reads", [[0.6], [0.5, 0.9, 0.7]])
def test_a_few_reads_are_held_back_by_what_is_believed_of_a_reader(reads):
    """By SciPy: a bias is believed to be 0 within 0.5 of the break, a spread 0.2 to a factor of e^0.8."""

    def unlikely(place):
        bias, log_sd = place
        believed = norm.logpdf(bias, 0, 0.5) + norm.logpdf(log_sd, log(0.2), 0.8)
        return -believed - norm.logpdf(reads, bias, exp(log_sd)).sum()

    bias, log_sd = minimize(unlikely, [0.1, log(0.2)], method="Nelder-Mead", options={"xatol": 1e-7, "fatol": 1e-10}).x
    found = fit_plain(reads, READING)
    assert (found.bias.value, found.sd.value) == pytest.approx((bias, exp(log_sd)), rel=1e-3)


@pytest.mark.parametrize(("lines", "told"), [(9, False), (10, True)])
def test_ten_lines_tell_alignment_from_the_stroke(lines, told):
    found = [evidence(Miss(0.01, 0.0), line=0.01) for _ in range(lines)] + [evidence(Miss(0.01, 0.0))] * 30
    assert lines_suffice(found) == told
