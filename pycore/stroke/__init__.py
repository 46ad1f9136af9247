"""The stroke: its tempo, its length, its arc, and the one that was made."""
