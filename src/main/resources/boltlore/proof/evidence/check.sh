#!/bin/sh
# Checks every statement of this folder again with a solver of your own:
#   sh check.sh SOLVER [ARGUMENT ...]
# The solver is called with the name of a DIMACS file behind its arguments. Its answer is its exit code, 10 for
# satisfiable and 20 for not, as in the SAT competitions. Prints what differs, and ends with 0 when nothing does.
set -u
if [ $# -eq 0 ]; then
    echo "Usage: sh check.sh SOLVER [ARGUMENT ...]" >&2
    exit 2
fi
command -v "$1" >/dev/null 2>&1 || { echo "There is no solver '$1' on this machine." >&2; exit 2; }
here=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd)
joined=$(mktemp "${TMPDIR:-/tmp}/joined.XXXXXX") || exit 2
trap 'rm -f "$joined"' EXIT INT TERM
checked=0
wrong=0
tab=$(printf '\t')
while IFS=$tab read -r number answer models statement meaning; do
    [ "$number" = number ] && continue
    # One header for both files: the highest variable and the number of clauses in them.
    awk '
        /^c/ || /^p/ { next }
        { count++; for (i = 1; i < NF; i++) { v = $i < 0 ? -$i : $i; if (v > top) top = v } body = body $0 "\n" }
        END { printf "p cnf %d %d\n%s", top, count, body }
    ' "$here/base.cnf" "$here/statements/$number.add" > "$joined"
    "$@" "$joined" >/dev/null 2>&1
    case $? in
        10) found=SAT ;;
        20) found=UNSAT ;;
        *) found="no answer" ;;
    esac
    checked=$((checked + 1))
    if [ "$found" != "$answer" ]; then
        wrong=$((wrong + 1))
        echo "$number $statement: expected $answer, found $found. $meaning"
    fi
done < "$here/statements.tsv"
echo "$checked statements checked, $wrong differ."
[ "$wrong" -eq 0 ]
