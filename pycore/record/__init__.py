"""The record: from where balls finished back to how they were struck, and what each fault costs."""
