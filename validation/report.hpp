#pragma once
// What the studies found: lines of the headline table, sections of the page, plots.
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "plot.hpp"

namespace sw::validation {

struct Headline {
  std::string study, figure, measured, computed, off;
};

struct Section {
  std::string title, text;
  std::vector<Plot> plots;
};

struct Report {
  std::vector<Headline> headlines;
  std::vector<Section> sections;
};

/// `{}` replaced in order.
std::string fill(std::string_view text, std::initializer_list<std::string> figures);
/// So many decimals; a dash where it is no number.
std::string num(double x, int decimals = 0);
/// With its sign, for what is off.
std::string off(double x, int decimals = 0, std::string_view unit = {});
/// Computed over measured, as a signed share.
std::string off_share(double computed, double measured);

/// A Markdown table; the first row is its head.
std::string table(const std::vector<std::vector<std::string>>& rows);

/// The whole page.
std::string page(const Report& report, const std::string& date);

}  // namespace sw::validation
