#!/usr/bin/env bash
# Runs `./run test` of the last commit in an empty Debian 12, twice: with nothing installed, then again, when nothing may
# be installed any more. Needs root, debootstrap, git and the network, so `./run test` leaves it out.
#   tests/run/bare_machine.sh DIR [MIRROR [COMMAND…]]     COMMAND of ./run, `test` unless said otherwise
# DIR must be new or empty. It is left for a look; nothing stays mounted, so `rm -r DIR` ends it.
set -euo pipefail
dir=${1:?usage: bare_machine.sh DIR [MIRROR [COMMAND…]]}
mirror=${2:-http://deb.debian.org/debian}
command=("${@:3}")
[[ ${#command[@]} -gt 0 ]] || command=(test)
here=$(cd "$(dirname "$0")/../.." && pwd)

if [[ -e $dir && -n $(ls -A "$dir") ]]; then
  echo "$dir is not empty" >&2
  exit 1
fi
mkdir -p "$dir"
dir=$(cd "$dir" && pwd)
echo "== Debian 12, minimal, from $mirror"
debootstrap --variant=minbase bookworm "$dir" "$mirror" >"$dir.log" 2>&1 || { tail "$dir.log" >&2; exit 1; }
mv "$dir.log" "$dir/debootstrap.log"

# How this machine reaches the mirror (name server, proxy, a mirror whose dates are old) holds for the bare one too.
cp /etc/resolv.conf "$dir/etc/resolv.conf"
apt-config dump | grep -E '^Acquire::(https?|ftp|Check-)' >"$dir/etc/apt/apt.conf.d/90reach" || true

mkdir "$dir/srv/streetwright"
git -C "$here" archive HEAD | tar -x -C "$dir/srv/streetwright"

# try: the command inside, without terminal and stdin; /proc goes with the namespace it was mounted in
try() {
  local start=$SECONDS code=0
  unshare --mount bash -c 'mount -t proc proc "$0/proc" && exec chroot "$0" /usr/bin/env -i HOME=/var/empty CI=true \
    PATH=/usr/sbin:/usr/bin:/sbin:/bin ${http_proxy:+http_proxy="$http_proxy"} /srv/streetwright/run "$@"' \
    "$dir" "${command[@]}" <&- >"$dir/$1.log" 2>&1 || code=$?
  tail -n 3 "$dir/$1.log"
  echo "== $1 time: exit $code after $((SECONDS - start)) s, log $dir/$1.log"
  return "$code"
}

try first
try second
if grep -q '^Installing' "$dir/second.log"; then
  echo "the second run installed packages again" >&2
  exit 1
fi
