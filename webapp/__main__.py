"""`python -m webapp` is the command line."""

from webapp.cli import main

if __name__ == "__main__":  # The server's worker process imports this module again under another name.
    main()
