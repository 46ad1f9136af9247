"""What the microphone hears of a putt: the strike, and what the ball then meets."""
