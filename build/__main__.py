"""``python3 build COMMAND``: builds, serves, tests and measures Borrowline. Installs what it needs under .venv."""

from __future__ import annotations

import argparse
import sys

# Nothing is written beside the sources: byte-code goes to .venv, once that is there
sys.dont_write_bytecode = sys.pycache_prefix is None

import environment  # noqa: E402

COMMANDS = """commands:
  (none)   write the site to dist/
  serve    write it, serve it, and rebuild and reload when a file changes
  test     lint, types and every test; with arguments, pytest alone with those: test tests/site -k offline
  prove    tables of many simulated cases, each with its bound; with a name, that one alone; --list says which there are
  mutate   small wrong changes to the engine, and those that no test notices; with a folder of pycore, to that alone
  bench    a table of sizes and speeds, as ratios measured in one run; with a name, that part alone
  faults   a table of what is lost when the phone dies, a file is damaged, the network goes: an hour; with a name, that part
  picture  take the pictures of README and of the app's manifest anew"""


def main() -> int:
    parser = argparse.ArgumentParser(
        prog="python3 build",
        usage="python3 build [serve | test | prove | mutate | bench | faults | picture] [options]",
        description=__doc__,
        epilog=COMMANDS,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    commands = ["serve", "test", "prove", "mutate", "bench", "faults", "picture"]
    parser.add_argument("command", nargs="?", choices=commands, help=argparse.SUPPRESS)
    parser.add_argument("--port", type=int, default=8377, help="for serve (%(default)s)")
    parser.add_argument("--lan", action="store_true", help="for serve: to phones on the local network too, over https")
    parser.add_argument("--list", action="store_true", help="for prove: name the tables, make none")
    parser.add_argument("--sample", type=int, help="for mutate: so many by chance")
    parser.add_argument("--rounds", type=int, help="for faults: so many of each")
    parser.add_argument("--seed", type=int, default=1, help="for mutate: which (%(default)s)")
    options, rest = parser.parse_known_args()
    if rest and options.command not in ("test", "prove", "mutate", "bench", "faults"):
        parser.error("there is no " + " ".join(rest))
    try:
        environment.enter()
        sys.path.append(str(environment.ROOT))  # for the engine
        return run(options, rest)
    except environment.SetupError as error:
        print(error, file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        return 130


def run(options: argparse.Namespace, rest: list[str]) -> int:
    if options.command == "serve":
        import server

        return server.serve(options.port, options.lan)
    if options.command == "test":
        import check

        return check.run(rest)
    if options.command == "prove":
        import prove

        return prove.show_list() if options.list else prove.show(rest)
    if options.command == "mutate":
        import mutate

        return mutate.show(rest[0] if rest else "", options.sample, options.seed)
    if options.command == "bench":
        import bench.table

        return bench.table.show(rest)
    if options.command == "faults":
        import faults.table

        return faults.table.show(rest, options.rounds)
    if options.command == "picture":
        import picture

        return picture.take()
    import dist

    dist.build()
    dist.weigh()
    return 0


if __name__ == "__main__":
    sys.exit(main())
