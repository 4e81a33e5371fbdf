// duties: what a car is put through, shipped and of a build's own.
#include <nlohmann/json.hpp>

#include "cli/load.hpp"
#include "cli/page.hpp"
#include "cli/run.hpp"
#include "quantity/print.hpp"

namespace sw::cli {
namespace {

using Json = nlohmann::ordered_json;

Json curve_json(const FieldInfo& f, const Curve& c) {
  Json points = Json::array();
  const std::string_view unit_x = f.unit_x.empty() && !f.kind_x->units.empty() ? f.kind_x->units[0] : f.unit_x;
  for (std::size_t i = 0; i < c.x.size(); ++i)
    points.push_back({print_exact(c.x[i], *f.kind_x, unit_x), print_exact(c.y[i], *f.kind, unit_of(f))});
  return points;
}

/// A value as a build would write it; null where there is none.
Json leaf_json(const Leaf& leaf) {
  const FieldInfo& f = *leaf.field;
  if (f.type == FieldType::text) {
    const std::string& text = *f.access.text(leaf.owner);
    return text.empty() ? Json(nullptr) : Json(text);
  }
  if (f.type == FieldType::names) {
    const auto& names = *f.access.names(leaf.owner);
    return names.empty() ? Json(nullptr) : Json(names);
  }
  if (f.type == FieldType::curve) {
    const auto& curve = *f.access.curve(leaf.owner);
    return curve ? curve_json(f, *curve) : Json(nullptr);
  }
  const auto value = f.access.get ? f.access.get(leaf.owner) : std::nullopt;
  if (!value) return nullptr;
  if (f.type == FieldType::yes_no) return *value != 0;
  if (f.type == FieldType::choice) return std::string(f.choices[static_cast<std::size_t>(*value)]);
  if (f.type == FieldType::quantity) return print_exact(*value, *f.kind, unit_of(f));
  return *value;
}

std::string duties_json(const DutySet& set, const Build& build) {
  Json all = Json::array();
  for (auto& [name, duty] : set.duty) {
    Json one{{"key", name}, {"from", build.duty.find(name) ? "build" : "shipped"}};
    each_leaf(Duty::fields(), &duty, "", [&](const Leaf& leaf) {
      if (Json value = leaf_json(leaf); !value.is_null()) one[leaf.path] = std::move(value);
    });
    all.push_back(std::move(one));
  }
  return Json{{"duties", std::move(all)}}.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string line_of(const Duty& duty) {
  std::string text = clean(duty.title);
  auto add = [&](const std::string& more) { text += (text.empty() ? "" : " · ") + together(more); };
  if (duty.duration)
    add(print(duty.duration->si, kind::time,
              duty.duration->si > 2 * 86400 ? "day"
              : duty.duration->si > 120     ? "min"
                                            : "s"));
  if (duty.ambient) add(print(duty.ambient->si, kind::temperature, "degC"));
  if (!duty.after.empty()) add("after " + clean(duty.after));
  return text;
}

}  // namespace

int run_duties_command(const Args& args, Console& console) {
  Loaded loaded;
  if (args.operands.empty()) {
    loaded.duties = duties_of(loaded.opened.build, from_disk());
  } else {
    loaded = load(args.operands.front(), from_disk());
    if (const int code = tell_faults(loaded, args.has("--json"), console); code != exit_code::good) return code;
  }
  const Build& build = loaded.opened.build;
  if (args.has("--json")) {
    console.out += duties_json(*loaded.duties, build);
    return exit_code::good;
  }
  static constexpr int name_columns = 16;
  Page page(console.look);
  for (auto& [name, duty] : loaded.duties->duty)
    page.text(
        pad(touch(clean(name)), name_columns) + " " + line_of(duty) + (build.duty.find(name) ? " · of this build" : ""),
        0, name_columns + 1);
  console.out += page.take();
  return exit_code::good;
}

}  // namespace sw::cli
