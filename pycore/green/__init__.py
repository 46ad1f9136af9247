"""The green: its shape and its speed."""
