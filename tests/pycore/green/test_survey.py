"""Surveys against a dense solve in numpy that knows the kernel but takes its derivatives numerically, and at the door."""

from cmath import phase
from math import degrees

import numpy as np
import pytest

from pycore.green.survey import _gain
from pycore.green.surveyed import Surveyed
from pycore.green.walked import walked
from pycore.putt.doubt import Doubt, read_sds
from pycore.putt.line_doubt import spread
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.stats.process import Kernel, Process
from tests import height_lines
from tests.invented_greens import MISPLACED, invented, walk

TEN_THOUSANDTH_OF_A_PERCENT = 1e-6
BESIDE_A_READING = 1e-4  # rise over run: a twelfth of a reading's spread
MILLIMETRE = 1e-3
STEP = 2e-3  # m; of the numerical derivatives


def kernel_of_heights(kernel, p, q):
    """Rasmussen and Williams 2006, eq. 4.9 and 4.17, sized by the gradient's variance; and a plane's, eq. 2.7."""
    r = np.hypot(*(p - q))
    plane = kernel.trend**2 * p @ q
    if kernel.kind == "matern":
        a = np.sqrt(5) * r / kernel.length
        return kernel.spread**2 * 3 * kernel.length**2 / 5 * (1 + a + a * a / 3) * np.exp(-a) + plane
    return kernel.spread**2 * kernel.length**2 * np.exp(-r * r / (2 * kernel.length**2)) + plane


def derivative(kernel, p, i, q, j):
    """d2k / dp_i dq_j by four points each way, to the fourth order."""
    weights = ((-2, 1 / 12), (-1, -2 / 3), (1, 2 / 3), (2, -1 / 12))
    e = np.eye(2) * STEP
    return sum(a * b * kernel_of_heights(kernel, p + m * e[i], q + n * e[j]) for m, a in weights for n, b in weights) / STEP**2


@pytest.mark.parametrize(("kind", "length"), [("squared_exponential", 4.0), ("matern", 6.0)])
def test_mean_and_spread_agree_with_a_dense_solve(kind, length):
    kernel = Kernel(kind, length, 0.015, 0.03)
    readings = invented(3).read(walk(3), np.random.default_rng(3))
    process = Process(kernel, readings, MISPLACED)
    rate = np.sqrt(5) / length if kind == "matern" else 1 / length
    noise = readings[0].sd ** 2 + 4 * (MISPLACED * kernel.spread * rate) ** 2
    places = [np.array([each.place.real, each.place.imag]) for each in readings]
    parts = [(place, i) for place in places for i in (0, 1)]
    covariance = np.array([[derivative(kernel, *one, *other) for other in parts] for one in parts]) + noise * np.eye(len(parts))
    values = np.array([v for each in readings for v in (each.gradient.real, each.gradient.imag)])
    for place in ([1.0, 1.5], [6.3, 5.1], [11.0, 2.0]):
        for i, way in ((0, 1), (1, 1j)):
            cross = np.array([derivative(kernel, np.array(place), i, *part) for part in parts])
            solved = np.linalg.solve(covariance, cross)
            own = derivative(kernel, np.array(place), i, np.array(place), i)
            [(mean, variance)] = process.tell([complex(*place)], [way])
            assert mean == pytest.approx(solved @ values, abs=TEN_THOUSANDTH_OF_A_PERCENT)
            assert variance**0.5 == pytest.approx((own - solved @ cross) ** 0.5, abs=TEN_THOUSANDTH_OF_A_PERCENT)


@pytest.fixture(scope="module")
def green():
    return walked(invented(1).read(walk(5), np.random.default_rng(1)), MISPLACED)


def test_the_relief_is_the_survey_and_a_true_field_of_heights(green):
    chance = np.random.default_rng(5)
    e = 1e-5
    for x, y in [*chance.uniform(0, 12, (20, 2)), *chance.uniform(-20, 30, (20, 2))]:
        _, gx, gy = green.relief.at(x, y)
        by_x = (green.relief.at(x + e, y)[0] - green.relief.at(x - e, y)[0]) / (2 * e)
        by_y = (green.relief.at(x, y + e)[0] - green.relief.at(x, y - e)[0]) / (2 * e)
        assert (gx, gy) == pytest.approx((by_x, by_y), abs=1e-8)
        if 0 <= x <= 12 and 0 <= y <= 12:
            assert abs(complex(gx, gy) - green.survey.tilt(complex(x, y)).downhill) < BESIDE_A_READING
    for seam in green.relief.xs:
        before, after = green.relief.at(seam - 1e-9, 5.3), green.relief.at(seam + 1e-9, 5.3)
        assert before == pytest.approx(after, abs=1e-8)


def test_a_roll_feels_the_slope_of_those_heights_in_its_own_axes(green):
    """Also off the inner grid on one side or both."""
    chance = np.random.default_rng(6)
    origin, line, share, plane, e = complex(4, 3), np.exp(0.7j), 0.6, complex(0.01, -0.02), 1e-5
    downhill = green.relief.downhill(origin, complex(line), share, plane)

    def drop(x, y):
        place = origin + complex(x, y) * line
        return share * green.relief.at(place.real, place.imag)[0] + x * plane.real + y * plane.imag

    for x, y in [*chance.uniform(-4, 7, (60, 2)), *chance.uniform(-20, 20, (20, 2))]:
        by_x, by_y = (drop(x + e, y) - drop(x - e, y)) / (2 * e), (drop(x, y + e) - drop(x, y - e)) / (2 * e)
        assert downhill(x, y) == pytest.approx((by_x, by_y), abs=1e-8)


@pytest.mark.parametrize("unit", [0.01, 0.0254])
def test_height_lines_keep_their_height_and_never_cross(green, unit):
    lines = green.contours(unit)
    heights = {level / unit for level, _ in lines}
    assert len(heights) > 4
    assert all(height == pytest.approx(round(height)) for height in heights)
    assert height_lines.farthest(lines, lambda x, y: -green.relief.at(x, y)[0]) < MILLIMETRE
    assert height_lines.crossed(lines) == 0


def points(readings):
    return [
        {
            "x_m": each.place.real,
            "y_m": each.place.imag,
            "slope_percent": 100 * abs(each.gradient),
            "fall_deg": (90 - degrees(phase(each.gradient))) % 360,
            "sd_percent": 0.12,
        }
        for each in readings
    ]


POINTS = points(invented(2).read(walk(4), np.random.default_rng(2)))


@pytest.mark.parametrize("i", [0, 5, 10])
def test_a_wild_reading_is_named_and_not_those_beside_it(engine_ask, i):
    wild = {**POINTS[i], "slope_percent": POINTS[i]["slope_percent"] + 5}
    assert engine_ask("survey", points=[*POINTS[:i], wild, *POINTS[i + 1 :]])["suspects"] == [i]


def test_a_reading_the_wrong_way_round_makes_the_rest_no_less_known(engine_ask):
    """As known as without it, to a tenth; half as known again before it was left out."""
    at = [[x, y] for x in (2, 5, 8) for y in (3, 7, 10)]
    i = max(range(len(POINTS)), key=lambda j: POINTS[j]["slope_percent"])
    turned = {**POINTS[i], "fall_deg": POINTS[i]["fall_deg"] + 180}
    rest = [*POINTS[:i], *POINTS[i + 1 :]]
    found, without = (
        engine_ask("survey", points=each, at=at)["at"] for each in ([*POINTS[:i], turned, *POINTS[i + 1 :]], rest)
    )
    for one, other in zip(found, without, strict=True):
        assert one["sd_percent"] == pytest.approx(other["sd_percent"], rel=0.1)
        assert one["slope_percent"] == pytest.approx(other["slope_percent"], abs=0.1)


def test_no_reading_is_named_where_all_fit(engine_ask):
    assert engine_ask("survey", points=POINTS)["suspects"] == []


def test_two_at_one_place_that_disagree_are_named(engine_ask):
    other = {**POINTS[5], "fall_deg": POINTS[5]["fall_deg"] + 180, "slope_percent": 4}
    assert 16 in engine_ask("survey", points=[*POINTS, other])["suspects"]


def test_all_in_a_row_leave_the_rest_open(engine_ask):
    row = [each for each in POINTS if each["y_m"] == POINTS[0]["y_m"]]
    near, far = engine_ask("survey", points=row, at=[[6, 1.5], [6, 11]])["at"]
    assert far["sd_percent"] > 2 * near["sd_percent"]
    assert far["sd_percent"] > 0.8


@pytest.mark.parametrize("count", [1, 2, 121])
def test_too_few_and_too_many(refused, count):
    reply = refused("survey", points=[POINTS[0]] * count)
    assert (reply["field"], reply["low"], reply["high"]) == ("points", 3, 120)


def test_a_ball_off_the_surveyed_part(refused):
    reply = refused("read", survey={"points": POINTS, "ball": [30, 3], "hole": [6, 6]}, stimp_ft=10, past_m=0.3)
    assert (reply["code"], reply["field"]) == ("off_survey", "survey.ball")
    assert reply["value"] == pytest.approx(30 - max(each["x_m"] for each in POINTS))
    assert "the ball lies 19.5 m outside the outermost readings" in reply["message"]


def test_a_survey_stands_in_place_of_a_slope(refused):
    survey = {"points": POINTS, "ball": [3, 3], "hole": [6, 6]}
    assert refused("read", survey=survey, distance_m=3, stimp_ft=10, past_m=0.3)["field"] == "survey"


def test_a_read_on_an_even_green_is_that_of_its_plane(engine_ask):
    even = [{**each, "slope_percent": 2, "fall_deg": 90} for each in POINTS]
    survey = {"points": even, "ball": [5, 3], "hole": [5, 7]}
    surveyed = engine_ask("read", survey=survey, stimp_ft=10, past_m=0.3)
    plane = engine_ask("read", distance_m=4, slope_percent=2, fall_deg=90, stimp_ft=10, past_m=0.3)
    assert surveyed["aim_deg"] == pytest.approx(plane["aim_deg"], abs=0.02)
    assert surveyed["launch_mps"] == pytest.approx(plane["launch_mps"], rel=1e-3)
    assert 0.05 < surveyed["aim_sd_deg"] < 2
    assert plane["aim_sd_deg"] is None
    stations = engine_ask("survey_stations", survey=survey)
    assert stations["distance_m"] == pytest.approx(4)
    assert all(each["slope_percent"] == pytest.approx(2, abs=0.02) for each in stations["stations"])


def test_slopes_of_a_kept_putt_lie_and_fall_on_the_map_as_on_the_putt(engine_ask, refused):
    """A putt to the right on the map: what falls to its right falls down the map, what falls along it to the right."""
    slopes = [{"at_m": 0.9, "slope_percent": 2, "fall_deg": 90}, {"slope_percent": 1, "fall_deg": 0, "sd_percent": 0.15}]
    putt = {"ball": [2, 3], "hole": [5, 3], "distance_m": 3.6, "slopes": slopes}
    first, whole = engine_ask("survey_points", **putt)["points"]
    assert (first["x_m"], first["y_m"], first["fall_deg"]) == pytest.approx((2.75, 3, 180))
    assert (whole["x_m"], whole["y_m"], whole["fall_deg"], whole["sd_percent"]) == pytest.approx((3.5, 3, 90, 0.15))
    # and the green that has them all along a putt's line is read as the putt is
    places = [{"at_m": at, "slope_percent": 2, "fall_deg": 70} for at in (0, 1.2, 2.4, 3.6)]
    points = [
        point
        for aside in (-1, 0, 1)
        for point in engine_ask(
            "survey_points",
            ball=[2 + 0.8 * aside, 3 - 0.6 * aside],
            hole=[4.16 + 0.8 * aside, 5.88 - 0.6 * aside],
            distance_m=3.6,
            slopes=places,
        )["points"]
    ]
    speed = {"stimp_ft": 10, "past_m": 0.3}
    surveyed = engine_ask("read", survey={"points": points, "ball": [2, 3], "hole": [4.16, 5.88]}, **speed)
    assert surveyed["aim_deg"] == pytest.approx(
        engine_ask("read", distance_m=3.6, slope_percent=2, fall_deg=70, **speed)["aim_deg"], abs=0.1
    )
    assert refused("survey_points", **{**putt, "hole": [2, 3]})["field"] == "hole"
    assert refused("survey_points", **{**putt, "distance_m": 0.6})["field"] == "slopes[0].at_m"


@pytest.mark.parametrize("fall", [20, 110, 200, 300])
def test_a_plane_falls_everywhere_the_way_that_was_read(engine_ask, fall):
    even = [{"x_m": x, "y_m": y, "slope_percent": 2, "fall_deg": fall, "sd_percent": 0.12} for x, y in walk(4)]
    told = engine_ask("survey", points=even, at=[[3, 4], [7.5, 8]])
    for tilt in (*told["at"], *(each for each in told["grid"] if 2 < each["x_m"] < 10 and 2 < each["y_m"] < 10)):
        assert tilt["fall_deg"] == pytest.approx(fall, abs=0.2)
        assert tilt["slope_percent"] == pytest.approx(2, abs=0.05)


def test_what_a_reading_teaches_is_what_it_takes_off_all_variances():
    """The trace of S - S H' (H S H' + noise)^-1 H S, of a reading of two parts of a normal vector (numpy)."""
    chance = np.random.default_rng(8)
    root = chance.normal(size=(8, 8))
    doubt, noise = root @ root.T, 0.3
    for i in (0, 4):
        read = doubt[[i, i + 1]]
        left = doubt - read.T @ np.linalg.inv(read[:, [i, i + 1]] + noise * np.eye(2)) @ read
        gain = _gain(doubt[i].tolist(), doubt[i + 1].tolist(), i, noise)
        assert gain == pytest.approx(np.trace(doubt) - np.trace(left))


@pytest.mark.parametrize("side", ["left", "right", "none"])
def test_putts_found_are_as_wanted(engine_ask, side):
    want = {"distance_m": [2, 4], "slope_percent": [0.5, 3], "break": side, "way": None}
    putts = engine_ask("find_putts", survey={"points": POINTS}, want=want, hole=None)["putts"]
    assert 0 < len(putts) <= 10
    assert [each["sd_percent"] for each in putts] == sorted(each["sd_percent"] for each in putts)
    for each in putts:
        assert 2 <= each["distance_m"] <= 4
        assert 0.5 <= each["slope_percent"] <= 3
        survey = {"points": POINTS, "ball": each["ball"], "hole": each["hole"]}
        aim = engine_ask("read", survey=survey, stimp_ft=9, past_m=0.3)["aim_deg"]
        assert (side == "left" and aim < 0) or (side == "right" and aim > 0) or (side == "none" and abs(aim) < 3)


def test_ways_of_putts_found(engine_ask):
    for way, within in (("down", (0, 45)), ("across", (45, 135)), ("up", (135, 180))):
        want = {"distance_m": [2, 3], "slope_percent": [0.5, 4], "way": way}
        for each in engine_ask("find_putts", survey={"points": POINTS}, want=want, hole=[6, 6])["putts"]:
            assert within[0] <= abs((each["fall_deg"] + 180) % 360 - 180) <= within[1]
            assert each["hole"] == [6, 6]


def test_the_window_and_the_best_pace_know_what_the_survey_leaves_open(engine_ask):
    """Read at four corners alone, the same green is holed less often than read at 36 places; a told doubt comes on top."""
    putt = {"ball": [5, 4], "hole": [7, 7.5]}
    even = [{"x_m": x, "y_m": y, "slope_percent": 2, "fall_deg": 90, "sd_percent": 0.12} for x, y in walk(6)]
    sure = {"points": even, **putt}
    unsure = {"points": [{**even[corner], "sd_percent": 0.6} for corner in (0, 5, 30, 35)], **putt}
    for ask, fields in (("window", {"stimp_ft": 10, "past_m": 0.3}), ("best_pace", {"stimp_ft": 10})):
        known, open_ = (engine_ask(ask, survey=each, **fields)["make_probability"] for each in (sure, unsure))
        assert open_ < 0.9 * known, ask
    told = {"stimp_ft": 10, "past_m": 0.3, "tilt_sd_percent": 0.6}
    assert (
        engine_ask("window", survey=sure, **told)["make_probability"]
        < 0.9 * engine_ask("window", survey=sure, stimp_ft=10, past_m=0.3)["make_probability"]
    )


def test_the_spread_of_a_putts_one_tilt_is_that_of_its_read():
    """Turning the whole green by that spread moves the aim as far as the survey lets it be off, on the average over greens."""
    shares = []
    for number in range(4):
        chance = np.random.default_rng(number)
        found = walked(invented(number).read(walk(5), chance), MISPLACED)
        for ball, hole in ((3 + 3j, 6 + 5j), (9 + 8j, 6 + 6j), (4 + 9j, 7 + 9j)):
            line = (hole - ball) / abs(hole - ball)
            surface = Surveyed(found.relief, ball, line)
            putt = Putt(abs(hole - ball), surface, 10.0, 0.3)
            if solved := solve(putt):
                sds = read_sds(putt, solved, Doubt(found.mean_sd(ball, hole)))
                assert sds
                shares.append(sds[0] / spread(putt, solved, surface, found.survey).aim)
    assert np.mean(shares) == pytest.approx(1, abs=0.1)
    assert all(0.7 < share < 1.5 for share in shares)
