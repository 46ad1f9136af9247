"""The catalogue: a drill is a file, and every file is whole."""

from pathlib import Path

import pycore.drills
from pycore.drills.drill import catalogue

FILES = sorted(Path(pycore.drills.__file__).parent.glob("*.toml"))


def test_every_file_is_a_drill(engine_ask):
    cards = engine_ask("drills")["drills"]
    assert [card["id"] for card in cards] == [file.stem for file in FILES]
    assert all(card["setup"] and card["cues"] and card["why"] for card in cards)


def test_what_the_session_rests_on():
    """Whatever is missing, there is a set-up, a last putt, and two drills to alternate; every drill leaves room to fit."""
    bare = [drill for drill in catalogue() if not drill.needs]
    for place in ("room", "green"):
        there = [drill for drill in bare if place in drill.places]
        assert sum(drill.role == "set_up" for drill in there) == 1
        assert sum(drill.role == "last" for drill in there) == 1
        assert sum(drill.role == "main" for drill in there) >= 2
    for drill in catalogue():
        least, most = (2, 3) if drill.role != "main" else (4, 6)
        assert drill.least <= least, drill.id
        assert drill.most >= most, drill.id


def test_laser_and_bent_backs_are_cautioned():
    for drill in catalogue():
        words = " ".join(drill.cautions)
        if "laser" in drill.needs:
            assert "Class 2" in words
            assert "maker" in words
        if drill.id in ("floor_line", "eye_line", "set_up_mirror", "tempo"):
            assert "physician" in words
