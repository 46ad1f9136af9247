"""The putt: how it rolls, what the hole takes, and where to start it."""
