"""Borrowline's engine: what a putt does on a tilted green. Standard library only, SI units, radians, pure functions."""
