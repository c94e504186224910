"""`python -m noticeparse`."""

from noticeparse.cli import main

if __name__ == "__main__":
    main()
