// The process around a command line: streams, signals, exit code.
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>

#include "cli/run.hpp"

namespace {

/// 0, or what went wrong.
int write_all(int fd, std::string_view text) {
  while (!text.empty()) {
    const ssize_t n = write(fd, text.data(), text.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return errno;
    text.remove_prefix(static_cast<std::size_t>(n));
  }
  return 0;
}

void show_progress(std::string_view line) {
  write_all(STDERR_FILENO, "\r\x1b[K");
  write_all(STDERR_FILENO, line);
}

}  // namespace

int main(int count, char** words) {
  namespace cli = sw::cli;
  // A reader that goes away (`| head`) is told by write(), not by a signal.
  std::signal(SIGPIPE, SIG_IGN);
  cli::Console console;
  if (isatty(STDERR_FILENO) == 1) console.progress = show_progress;
  int code = cli::run({words + (count > 0 ? 1 : 0), words + count}, cli::surroundings(STDOUT_FILENO),
                      cli::surroundings(STDERR_FILENO), console);
  // Nobody reads any more: that is no fault, and the verdict still stands in the exit code.
  const int fault = write_all(STDOUT_FILENO, console.out);
  if (fault != 0 && fault != EPIPE)
    code = cli::gravest(code, cli::complain(console, std::string("cannot write the output: ") + std::strerror(fault)));
  write_all(STDERR_FILENO, console.err);
  return code;
}
