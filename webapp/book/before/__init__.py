"""What does an entry see of the past? The view of the fold just before it, the context that its reading needs, the
instrument corrections in force, the limits of the checks, the draws that a plan names."""
