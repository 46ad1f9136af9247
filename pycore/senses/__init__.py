"""The slope as the phone, the feet and the eye take it."""
