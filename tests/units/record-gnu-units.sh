#!/bin/sh
# Records what GNU Units says of every unit text of this library: run it where Debian's `units` is installed, from the
# root of the repository, after `tests/units/gnu-units.json` has a new row; fills in its answers.
set -eu
exec node tests/units/record-gnu-units.mjs
