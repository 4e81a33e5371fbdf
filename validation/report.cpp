#include "report.hpp"

#include <cmath>
#include <cstdio>
#include <stdexcept>

#include "words.hpp"

namespace sw::validation {

std::string fill(std::string_view text, std::initializer_list<std::string> figures) {
  std::string out;
  auto next = figures.begin();
  for (std::size_t hole; (hole = text.find("{}")) != std::string_view::npos; text.remove_prefix(hole + 2)) {
    if (next == figures.end()) throw std::logic_error("fewer figures than holes: " + std::string(text));
    out.append(text.substr(0, hole)).append(*next++);
  }
  if (next != figures.end()) throw std::logic_error("more figures than holes: " + std::string(text));
  return out.append(text);
}

std::string num(double x, int decimals) {
  if (!std::isfinite(x)) return "–";
  char buffer[48];
  std::snprintf(buffer, sizeof buffer, "%.*f", decimals, x);
  return buffer;
}

std::string off(double x, int decimals, std::string_view unit) {
  if (!std::isfinite(x)) return "–";
  return (x > 0 ? "+" : "") + num(x, decimals) + (unit.empty() ? "" : " ") + std::string(unit);
}

std::string off_share(double computed, double measured) { return off(100 * (computed / measured - 1), 0, "%"); }

std::string table(const std::vector<std::vector<std::string>>& rows) {
  std::string out;
  for (std::size_t r = 0; r < rows.size(); ++r) {
    for (auto& cell : rows[r]) out += "| " + cell + " ";
    out += "|\n";
    if (r > 0) continue;
    for (std::size_t c = 0; c < rows[r].size(); ++c) out += "|---";
    out += "|\n";
  }
  return out;
}

std::string page(const Report& report, const std::string& date) {
  std::string out = fill(words::opening, {date});
  std::vector<std::vector<std::string>> rows = {{"study", "figure", "measured", "computed", "off by"}};
  for (auto& h : report.headlines) rows.push_back({h.study, h.figure, h.measured, h.computed, h.off});
  out += table(rows) + words::conclusion;
  for (auto& s : report.sections) {
    out += "\n## " + s.title + "\n\n" + s.text;
    for (auto& p : s.plots) out += "\n![" + p.title + "](validation/" + p.name + ".svg)\n";
  }
  return out + words::sources;
}

}  // namespace sw::validation
