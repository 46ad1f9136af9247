"""What small samples say, and how surely."""
