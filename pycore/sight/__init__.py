"""The line where the eye has it: in a picture, and on the ground."""
