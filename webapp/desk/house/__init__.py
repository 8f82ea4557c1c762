"""The house at the desk: people, phones, instruments, ranges and limits, settings."""
