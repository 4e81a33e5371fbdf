#include "cli/load.hpp"

#include "cli/page.hpp"
#include "cli/proof_json.hpp"
#include "cli/run.hpp"

namespace sw::cli {

Loaded load(const std::string& file, const OpenText& open_text) {
  Loaded loaded;
  loaded.opened = open(file, open_text);
  if (!loaded.opened.incomplete) loaded.duties = duties_of(loaded.opened.build, open_text);
  return loaded;
}

int tell_faults(const Loaded& loaded, bool json, Console& console) {
  const auto& files = loaded.opened.files;
  Diagnostics all = loaded.opened.faults;
  if (loaded.duties)
    for (auto& d : loaded.duties->faults.all()) all.fault(d.place, d.path, d.problem, d.hint);
  all.sort();
  Page page(console.err_look);
  std::size_t count = 0;
  for (auto& d : all.all()) {
    const bool fault = d.severity == Severity::fault;
    count += fault;
    if (!fault || !json) page.line(say(d, files));
  }
  if (!json && count > 1) page.line(std::to_string(count) + " faults; nothing was computed.");
  if (json && count > 0) console.out += faults_json(all, files);
  console.err += page.take();
  return count > 0 ? exit_code::bad_input : exit_code::good;
}

std::optional<std::size_t> find_duty(const DutySet& set, std::string_view name, Console& console) {
  std::vector<std::string_view> names;
  for (std::size_t i = 0; i < set.duty.size(); ++i) {
    if (set.duty.entries[i].first == name) return i;
    names.push_back(set.duty.entries[i].first);
  }
  const auto near = nearest(name, names);
  complain(console, "there is no duty \"" + std::string(name) + "\"",
           near.empty() ? "streetwright duties BUILD lists them" : "did you mean " + std::string(near) + "?");
  return std::nullopt;
}

std::string car_title(const Build& build) {
  const Leaf leaf = find_leaf(build_fields(), &build, "vehicle.title");
  return leaf.field && leaf.field->access.text ? *leaf.field->access.text(leaf.owner) : std::string();
}

}  // namespace sw::cli
