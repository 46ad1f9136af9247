"""What a phone that stands behind the ball saw of a putt: from the ball's places in a film back to how it was struck."""
