#include "cli/progress.hpp"

#include <cstdio>

#include "cli/page.hpp"

namespace sw::cli {

Progress::~Progress() {
  if (shown_) console_.progress({});
}

void Progress::operator()(double share, const std::string& what) {
  const auto now = std::chrono::steady_clock::now();
  if (!console_.progress || now - started_ < std::chrono::seconds(1) || now - last_ < std::chrono::milliseconds(100))
    return;
  last_ = now;
  shown_ = true;
  char percent[16];
  std::snprintf(percent, sizeof percent, "%3.0f %%  ", 100 * share);
  std::string line = percent + clean(what);
  console_.progress(line.substr(0, static_cast<std::size_t>(console_.err_look.width - 1)));
}

}  // namespace sw::cli
