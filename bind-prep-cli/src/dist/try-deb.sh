#!/bin/sh
# Tries a Debian package: lintian has nothing to say, it installs into an empty system in a folder, checks a document
# there, and is gone whole once it is removed. What is not installed here is left out with a word.
# usage: try-deb.sh PACKAGE.deb PDF
set -eu
package=$1
pdf=$2

fail() {
    echo "try-deb: $1" >&2
    exit 1
}

if command -v lintian >/dev/null; then
    # no bug of Debian's list is closed by it; classes for a Java newer than lintian stand in jars of several releases
    lintian --fail-on error,warning --suppress-tags initial-upload-closes-no-bugs,unknown-java-class-version "$package" ||
        fail 'lintian has errors or warnings'
    echo 'try-deb: lintian has no errors or warnings'
else
    echo 'try-deb: lintian is not installed, so it was not asked'
fi

if ! command -v dpkg >/dev/null; then
    echo 'try-deb: dpkg is not installed, so the package was not installed'
    exit 0
fi
system=$(mktemp -d)
trap 'rm -rf "$system"' EXIT
trap 'exit 1' INT TERM HUP
mkdir -p "$system/root/var/lib/dpkg/info" "$system/root/var/lib/dpkg/updates"
: >"$system/root/var/lib/dpkg/status"
: >"$system/root/var/lib/dpkg/available"
# Java comes from this system, and no script of the package runs, as it has none
manage() {
    dpkg --root="$system/root" --log="$system/log" --force-not-root --force-depends --force-bad-path "$@" >>"$system/said" 2>&1 ||
        { cat "$system/said" >&2; fail "dpkg $* failed"; }
}
present() {
    (cd "$system/root" && find . -path ./var -prune -o ! -type d -print | sort)
}

manage --install "$package"
present >"$system/installed"
for file in usr/bin/bind-prep usr/share/man/man1/bind-prep.1.gz usr/share/bash-completion/completions/bind-prep \
    usr/share/doc/bind-prep/copyright; do
    grep -qx "./$file" "$system/installed" || fail "$file is missing"
done
[ "$(readlink "$system/root/usr/bin/bind-prep")" = ../share/bind-prep/bin/bind-prep ] || fail 'the link leaves the system'
XDG_CACHE_HOME=$system/cache "$system/root/usr/bin/bind-prep" check "$pdf" >"$system/answer" || fail 'the installed command fails'
grep -q '^Good to print and bind' "$system/answer" || fail 'the installed command says something else'
if command -v bash >/dev/null; then
    bash -n "$system/root/usr/share/bash-completion/completions/bind-prep" || fail 'bash cannot read the completion'
fi

manage --purge bind-prep
[ -z "$(present)" ] || fail "left behind: $(present)"
echo "try-deb: installed $(wc -l <"$system/installed" | tr -d ' ') files, checked a document, removed them all"
