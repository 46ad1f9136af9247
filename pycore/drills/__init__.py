"""Practice: what there is to drill, the figures that a drill needs, and the plan of a session."""
