"""The same putt on a green of another speed."""
