#include "field/tree.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

namespace sw {

const Node* Node::find(std::string_view key) const {
  if (type != Type::table) return nullptr;
  for (auto& e : entries)
    if (e.key == key) return &e.value;
  return nullptr;
}

Node* Node::find(std::string_view key) {
  if (type != Type::table) return nullptr;
  for (auto& e : entries)
    if (e.key == key) return &e.value;
  return nullptr;
}

const Node* find_node(const Node& root, std::string_view path) {
  const Node* at = &root;
  while (at && !path.empty()) {
    const auto dot = path.find('.');
    at = at->find(path.substr(0, dot));
    path = dot == std::string_view::npos ? std::string_view() : path.substr(dot + 1);
  }
  return at;
}

void Diagnostics::fault(Place place, std::string path, std::string problem, std::string hint) {
  list_.push_back({Severity::fault, place, std::move(path), std::move(problem), std::move(hint)});
}

void Diagnostics::warn(Place place, std::string path, std::string problem, std::string hint) {
  list_.push_back({Severity::warning, place, std::move(path), std::move(problem), std::move(hint)});
}

bool Diagnostics::any_fault() const {
  return std::any_of(list_.begin(), list_.end(), [](auto& d) { return d.severity == Severity::fault; });
}

void Diagnostics::sort() {
  auto rank = [](const Diagnostic& d) { return std::tie(d.place.file, d.place.line, d.place.column, d.path); };
  std::stable_sort(list_.begin(), list_.end(), [&](auto& a, auto& b) { return rank(a) < rank(b); });
}

namespace {

/// Keys and texts of the user's stand in messages; a control character among them must not reach the terminal.
std::string without_controls(const std::string& text) {
  static constexpr char digits[] = "0123456789abcdef";
  std::string out;
  out.reserve(text.size());
  for (char c : text) {
    auto byte = static_cast<unsigned char>(c);
    if (byte >= 0x20 && byte != 0x7f) {
      out += c;
    } else {
      out += "\\x";
      out += digits[byte >> 4];
      out += digits[byte & 15];
    }
  }
  return out;
}

/// Edit distance in which two neighbours changed over count once: the commonest slip of the fingers.
std::size_t distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before(b.size() + 1), last(b.size() + 1), now(b.size() + 1);
  std::iota(last.begin(), last.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    now[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      now[j] = std::min({last[j] + 1, now[j - 1] + 1, last[j - 1] + (a[i - 1] != b[j - 1])});
      bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) now[j] = std::min(now[j], before[j - 2] + 1);
    }
    before.swap(last);
    last.swap(now);
  }
  return last[b.size()];
}

}  // namespace

std::string say(const Diagnostic& d, const std::vector<std::string>& files) {
  std::string line;
  if (d.place.file >= 0 && static_cast<std::size_t>(d.place.file) < files.size()) {
    line = files[static_cast<std::size_t>(d.place.file)];
    if (d.place.known()) line += ":" + std::to_string(d.place.line) + ":" + std::to_string(d.place.column);
    line += ": ";
  }
  if (d.severity == Severity::warning) line += "warning: ";
  if (!d.path.empty()) line += d.path + ": ";
  line += d.problem;
  if (!d.hint.empty()) line += "; " + d.hint;
  return without_controls(line);
}

std::string_view nearest(std::string_view given, const std::vector<std::string_view>& names) {
  constexpr std::size_t longest = 80;  // nothing longer is a slip of the fingers, and the search is quadratic
  if (given.size() > longest) return {};
  std::size_t best = given.size() / 3 + 1;
  std::string_view found;
  for (auto name : names) {
    if (name.size() > given.size() + best || given.size() > name.size() + best) continue;
    if (std::size_t d = distance(given, name); d < best) best = d, found = name;
  }
  return found;
}

}  // namespace sw
